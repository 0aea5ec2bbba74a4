/** Text as XML takes it: the five signs that mean something there, and nothing that no XML may hold. */
export function escaped(text: string): string {
  return withoutForbidden(text)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&apos;');
}

function withoutForbidden(text: string): string {
  return [...text]
    .filter((sign) => {
      const code = sign.codePointAt(0)!;
      if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd;
      return !(code >= 0xd800 && code <= 0xdfff) && code !== 0xfffe && code !== 0xffff;
    })
    .join('');
}

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** One element of SVG, its attributes escaped; those that are undefined are left out. */
export function element(name: string, attributes: Attributes, inside = ''): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? px(value) : escaped(value!)}"`)
    .join('');
  return inside === '' ? `<${name}${written}/>` : `<${name}${written}>${inside}</${name}>`;
}

/** A coordinate to a thousandth of a px: finer than any printer, and no longer than it need be. */
export function px(value: number): string {
  const rounded = Math.round(value * 1000) / 1000;
  return String(rounded === 0 ? 0 : rounded);
}

/** A person's text within a sentence of ours keeps its own direction (Unicode's first strong isolate). */
export function isolated(text: string): string {
  return `\u2068${text}\u2069`;
}
