/** What no sentence of a pattern may have, with what is wrong about it. */
const faults: readonly (readonly [RegExp, string])[] = [
  [/(?<![\d.,])0 (?:more )?times/u, '0 times'],
  [/every 1st(?! \()/u, 'every 1st row'],
  [/(?<![\d.,(]|\d )\b1 (?:sts|rows|rounds|times|row ends|repeats)\b/u, 'one of them is not several'],
  [/(?<![\d.,])0 (?:sts?|rows?|rounds?)\b/u, '0 of them'],
  [/undefined|NaN|null|\[object/u, 'no word'],
  [/ {2}|\s[.,;:]|\(\s|\s\)/u, 'a space too many'],
  [/[{}]/u, 'a slot without its number'],
  [/[^.:]$/u, 'no mark at its end'],
  [/\.\./u, 'two marks at its end'],
  [/(?:^|[.] )[a-z]/u, 'a sentence that begins small'],
  [/(?:sc|dc|hdc|tr|k|p) ?0\b/u, 'no stitches worked'],
];

/** What is wrong with a sentence of a pattern; undefined where nothing is. */
export function badGrammar(text: string): string | undefined {
  const fault = faults.find(([pattern]) => pattern.test(text));
  return fault && `${fault[1]}: ${text}`;
}
