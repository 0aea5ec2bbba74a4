import { CraftError, numberParam } from '../../craft';

/**
 * What a word of a formula stands for.
 *
 * @throws CraftError naming the words there are, where it is none of them
 * @example chosen('MOTIFS', 'flat', { flat: 1, round: 2 }) // 1
 */
export function chosen<T>(name: string, word: string, meanings: Readonly<Record<string, T>>): T {
  if (Object.hasOwn(meanings, word)) return meanings[word] as T;
  const words = Object.keys(meanings).map((known) => `"${known}"`);
  const last = words.pop()!;
  throw new CraftError('not-a-choice', '{name} takes {words} or {last}; "{word}" is none of them.', {
    name,
    words: words.join(', '),
    last,
    word: word.slice(0, 40),
  });
}

/**
 * One of several results, by its number from 1.
 *
 * @param what what they are, as a sentence names one and several of them
 * @throws CraftError naming how many there are, where the number is none of theirs
 * @example nth([75, 73, 70], 2, ['row', 'rows']) // 73
 */
export function nth<T>(list: readonly T[], number: number, what: readonly [one: string, several: string]): T {
  const found = list[number - 1];
  if (found !== undefined) return found;
  const [one, several] = what;
  throw new CraftError(
    'not-that-many',
    'There {there, plural, one {is # {one}} other {are # {several}}}, counted from 1: there is no number {number}.',
    { there: list.length, one, several, number: numberParam(number) },
  );
}
