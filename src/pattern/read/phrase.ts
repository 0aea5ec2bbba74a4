import { sizeListsIn, type PrintedList } from './size-list-at';

/** A sentence with its size lists taken out: `⟦0⟧` stands for the first of them. */
export interface Phrase {
  readonly text: string;
  readonly lists: readonly PrintedList[];
  /** Where the sentence begins and ends in its line. */
  readonly from: number;
  readonly to: number;
}

const often: Readonly<Record<string, number>> = { once: 1, twice: 2, thrice: 3 };

/** The sentences of a line. A full stop after a number or an abbreviation of one letter ends none. */
export function phrasesOf(line: string, decimal: '.' | ','): Phrase[] {
  const found: Phrase[] = [];
  const ends = /(?:[.!?](?=\s+[\p{Lu}*(])|[.;]\s*$|;\s+(?=(?:work|dec|inc|bind|cast)\b))/giu;
  let from = 0;
  const add = (to: number): void => {
    const sentence = line.slice(from, to);
    if (/[\p{L}\d]/u.test(sentence)) found.push(phraseOf(sentence, from, decimal));
    from = to;
  };
  for (const end of line.matchAll(ends)) add(end.index + end[0].length);
  add(line.length);
  return found;
}

function phraseOf(sentence: string, from: number, decimal: '.' | ','): Phrase {
  const lists = [...sizeListsIn(sentence, decimal)];
  let text = '';
  let at = 0;
  lists.forEach((list, index) => {
    text += `${sentence.slice(at, list.from)}⟦${index}⟧`;
    at = list.to;
  });
  text += sentence.slice(at);
  // "once", "twice" and "every other row" are numbers too.
  text = text.replace(/\b(once|twice|thrice)\b/giu, (word) => {
    lists.push(literal(often[word.toLowerCase()]!));
    return `⟦${lists.length - 1}⟧ times`;
  });
  text = text.replace(
    /\b(every|each)\s+(?:other|alternate|2nd|second)\s+(row|round|rnd)/giu,
    (_all, word: string, row: string) => {
      lists.push(literal(2));
      return `${word} ⟦${lists.length - 1}⟧ ${row}`;
    },
  );
  return {
    text: text.replace(/\s+/gu, ' ').trim(),
    lists: lists.map((list) => ({ ...list, from: list.from + from, to: list.to + from })),
    from: from + (sentence.length - sentence.trimStart().length),
    to: from + sentence.trimEnd().length,
  };
}

function literal(value: number): PrintedList {
  return { values: [value], from: 0, to: 0, step: 1, units: [] };
}
