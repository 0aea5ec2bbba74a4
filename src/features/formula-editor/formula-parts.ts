/** What a stretch of a formula looks like, whether or not the formula can be read whole. */
export type PartKind =
  'name' | 'function' | 'number' | 'text' | 'open' | 'close' | 'separator' | 'space' | 'other';

export interface FormulaPart {
  readonly kind: PartKind;
  readonly text: string;
  readonly start: number;
}

const wholes = {
  '.': /(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][-+]?\d+)?/y,
  ',': /(?:\d+(?:,\d*)?|,\d+)(?:[eE][-+]?\d+)?/y,
};
const parts: readonly (readonly [PartKind, RegExp])[] = [
  ['space', /\s+/y],
  ['text', /"(?:[^"]|"")*"?/y],
  ['name', /[\p{L}_][\p{L}\p{M}\p{N}_]*/uy],
  ['open', /\(/y],
  ['close', /\)/y],
];

/**
 * The parts of a formula that is still being typed: unlike `readFormula`, which reads a whole formula or says why not,
 * it takes whatever stands there. The parts cover the text without gaps, in one pass.
 *
 * @example partsOf('= MAX(bu', '.').map(({ text }) => text) // ['=', ' ', 'MAX', '(', 'bu']
 */
export function partsOf(text: string, decimal: '.' | ','): FormulaPart[] {
  const found: FormulaPart[] = [];
  for (let start = 0; start < text.length;) {
    const part = partAt(text, start, decimal);
    if (part.kind === 'open') markCalled(found);
    found.push(part);
    start += part.text.length;
  }
  return found;
}

function partAt(text: string, start: number, decimal: '.' | ','): FormulaPart {
  const whole = matched(wholes[decimal], text, start);
  if (whole) return { kind: 'number', text: whole, start };
  for (const [kind, pattern] of parts) {
    const part = matched(pattern, text, start);
    if (part) return { kind, text: part, start };
  }
  const character = String.fromCodePoint(text.codePointAt(start)!);
  const separates = character === ';' || (character === ',' && decimal === '.');
  return { kind: separates ? 'separator' : 'other', text: character, start };
}

function matched(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}

/** The word before a bracket is a function, with a space between them too. */
function markCalled(found: FormulaPart[]): void {
  const at = found.at(-1)?.kind === 'space' ? found.length - 2 : found.length - 1;
  const word = found[at];
  if (word?.kind === 'name') found[at] = { ...word, kind: 'function' };
}
