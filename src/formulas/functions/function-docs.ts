/** What a person is told of a function: a sentence on what it gives, and an example that can be worked. */
export interface FunctionDocs {
  readonly about: string;
  readonly example: string;
}

/** For each function of a family, by its name, what is told of it. */
export type DocsOf<Family extends readonly { readonly name: string }[]> = Readonly<
  Record<Family[number]['name'], FunctionDocs>
>;
