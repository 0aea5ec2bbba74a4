/** What a person is told of a function: a sentence on what it gives, and an example that can be worked. */
export interface Told {
  readonly about: string;
  readonly example: string;
}

/** For each function of a family, by its name, what is told of it. */
export type ToldOf<Family extends readonly { readonly name: string }[]> = Readonly<
  Record<Family[number]['name'], Told>
>;
