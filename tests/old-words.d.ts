export function oldNames(): { readonly file: string; readonly name: string; readonly say: string }[];
