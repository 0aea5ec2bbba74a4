import type { Phrase } from './phrase';
import type { PrintedList } from './size-list-at';

/** What a sentence tells to do; numbers are the lists as printed, not yet by size. */
export type Instruction =
  | { readonly do: 'start'; readonly count: PrintedList; readonly chain: boolean }
  | { readonly do: 'pick up'; readonly count: PrintedList }
  | { readonly do: 'ratio'; readonly pick: number; readonly of: number }
  | { readonly do: 'go on'; readonly count: PrintedList; readonly piece: string | undefined }
  | { readonly do: 'even'; readonly rows: PrintedList; readonly fabric: string; readonly from?: number }
  | {
      readonly do: 'until';
      readonly length: PrintedList;
      readonly from: 'here' | 'start';
      readonly fabric: string;
    }
  | {
      readonly do: 'taper';
      readonly way: 'dec' | 'inc';
      readonly each: PrintedList;
      readonly ends: 1 | 2;
      /** The edge it is shaped at, where the pattern names it. */
      readonly edge?: 'neck' | 'armhole';
      readonly next: boolean;
      readonly runs: readonly {
        readonly every: PrintedList | 1;
        readonly times: PrintedList;
        readonly more: boolean;
      }[];
    }
  | { readonly do: 'evenly'; readonly way: 'dec' | 'inc'; readonly by: PrintedList }
  | {
      readonly do: 'each repeat';
      readonly way: 'dec' | 'inc';
      readonly by: PrintedList;
      readonly repeats: PrintedList | undefined;
    }
  | {
      readonly do: 'leave' | 'add';
      readonly stitches: PrintedList;
      readonly at: 'start' | 'end' | 'both';
      readonly rows: number;
    }
  | { readonly do: 'part'; readonly side: PrintedList; readonly middle: PrintedList; readonly held: boolean }
  | {
      /** Stitches left or added at the ends of the row that comes next. */
      readonly do: 'ends';
      readonly add: boolean;
      readonly start: PrintedList | undefined;
      readonly end: PrintedList | undefined;
      /** Whether it tells that row too, which is then even. */
      readonly even: boolean;
    }
  | { readonly do: 'end'; readonly held: boolean; readonly count: PrintedList | undefined }
  | { readonly do: 'round' }
  | { readonly do: 'fabric'; readonly fabric: string };

export interface ReadInstruction {
  readonly instruction: Instruction | undefined;
  /** The count the sentence says it ends on. */
  readonly says: PrintedList | undefined;
}

const L = '⟦(\\d+)⟧';
const sts = '(?:(?:sts?|stitch(?:es)?)\\b)';
const row = '(?:(?:rows?|rounds?|rnds?)\\b)';

const compiled = new Map<string, RegExp>();

/** Compiled once, since every sentence is tried against every form. */
function form(source: string, flags: string): RegExp {
  const key = `${flags} ${source}`;
  let found = compiled.get(key);
  if (!found) compiled.set(key, (found = new RegExp(source, flags)));
  found.lastIndex = 0;
  return found;
}

type ReadList = (index: string | undefined) => PrintedList;

/** Reads a sentence of an instruction. What it does not know is undefined: nothing is taken for what it might be. */
export function instructionIn(phrase: Phrase): ReadInstruction {
  const readList: ReadList = (index) => phrase.lists[Number(index)]!;
  const count = countAtEnd(phrase.text, readList);
  const text = count.rest;
  return { instruction: readers.map((read) => read(text, readList)).find(Boolean), says: count.says };
}

/** A count at the end: "[86 sts]", "(86 sts)", "— 86 sts", "86 sts remain". */
function countAtEnd(text: string, readList: ReadList): { says: PrintedList | undefined; rest: string } {
  const forms = [
    form(
      `[\\[(]\\s*${L}\\s*(?:${sts}|sc|hdc|dc|tr)?(?:\\s*(?:rem(?:ain(?:ing)?)?|left|in all))?\\s*[\\])]\\s*\\.?$`,
      'iu',
    ),
    form(
      `\\s*(?:[-–—=:,]|there (?:are|will be))\\s*${L}\\s*${sts}(?:\\s*(?:rem(?:ain(?:ing)?)?|left|now|on (?:the )?needles?|in all|total))*\\.?$`,
      'iu',
    ),
    form(`[\\s,;-]*(?:until|to)?\\s*${L}\\s*${sts}\\s*(?:rem(?:ain)?|are left|left)\\.?$`, 'iu'),
  ];
  for (const one of forms) {
    const found = one.exec(text);
    if (found && found.index > 0)
      return { says: readList(found[1]), rest: text.slice(0, found.index).trim() };
  }
  return { says: undefined, rest: text };
}

type Reader = (text: string, readList: ReadList) => Instruction | undefined;

const wayOf = (word: string): 'dec' | 'inc' => (/^d/iu.test(word) ? 'dec' : 'inc');

const readers: readonly Reader[] = [
  // Picking up, going on, starting
  (text, readList) => {
    const found = form(
      `pick(?:ing)? up (?:and (?:knit|k|work) )?${L} ${sts}? ?(?:for|in|along|over) (?:every|each) ${L} ${row}`,
      'iu',
    ).exec(text);
    if (!found) return undefined;
    const [pick, of] = [readList(found[1]).values, readList(found[2]).values];
    return pick.length === 1 && of.length === 1 && pick[0] && of[0]
      ? { do: 'ratio', pick: pick[0], of: of[0] }
      : undefined;
  },
  (text, readList) => {
    const found = form(
      `^(?:about )?${L} ${sts}? ?(?:for|in|along|over|to) (?:every|each) ${L} ${row}`,
      'iu',
    ).exec(text);
    const [pick, of] = [found && readList(found[1]).values, found && readList(found[2]).values];
    return pick?.length === 1 && of?.length === 1 && pick[0] && of[0]
      ? { do: 'ratio', pick: pick[0], of: of[0] }
      : undefined;
  },
  (text, readList) => {
    const found = form(
      `pick(?:ing)? up (?:and (?:knit|k|work) )?(?:a total of )?${L}(?: ${sts}|$)`,
      'iu',
    ).exec(text);
    return found ? { do: 'pick up', count: readList(found[1]) } : undefined;
  },
  (text, readList) => {
    // What becomes of the others is no part of what is taken.
    const taken = text.replace(
      /, leaving the (?:others?|rest|[^,]* in the middle) (?:on |unworked).*$/iu,
      '',
    );
    const found = form(
      `^(?:with [^⟦]*,? )?(?:take up|return|put|place|slip|rejoin (?:the )?yarn to|join (?:the )?yarn to|work on|on) (?:the )?(?:held |first |next |remaining |other )*${L} (?:held |remaining )?${sts}(?: of (?:the )?${L} ${sts})?(?:(?: left| held)?(?: at the end)? of (?:the )?([\\p{L}][\\p{L} ,]*?))?(?: back)?(?: (?:on|onto|to) (?:the |a )?(?:working )?needles?)?\\.?$`,
      'iu',
    ).exec(taken);
    if (!found || /holder|waste/iu.test(taken)) return undefined;
    return { do: 'go on', count: readList(found[1]), piece: found[3]?.trim() };
  },
  (text, readList) => {
    const found = form(
      `\\b(cast[- ]on|co|ch|chain|make a (?:foundation )?chain of|foundation (?:sc|hdc|dc|ch)) ${L}(?! ?sp\\b)`,
      'iu',
    ).exec(text);
    if (!found || found.index > 40 || /\bbeg|\b(?:start|end) of\b|\bskip\b|\bin next\b/iu.test(text))
      return undefined;
    // Stitches that a row is begun or ended with start no piece.
    if (form(`^(?:on the )?(?:next|same) ${row}`, 'iu').test(text)) return undefined;
    return { do: 'start', count: readList(found[2]), chain: /^(?:ch|chain|make)/iu.test(found[1]!) };
  },
  // Parting the last row, or the row before the neck
  (text, readList) => {
    const found = form(
      `${L} (?:${sts} )?(?:for|at|each side for|in)? ?(?:each |the |first |one )?shoulder`,
      'iu',
    ).exec(text);
    const middle = form(`${L} (?:${sts} )?(?:for|at|in|of)? ?(?:the )?(?:back )?neck`, 'iu').exec(text);
    return found && middle
      ? { do: 'part', side: readList(found[1]), middle: readList(middle[1]), held: false }
      : undefined;
  },
  (text, readList) => {
    const found = form(
      `work (?:across )?${L} ${sts},?(?: then| and)? (?:place|put|slip|leave|bind off|cast off) (?:the )?(?:next |cent(?:er|re) )*${L} ${sts}`,
      'iu',
    ).exec(text);
    return found
      ? { do: 'part', side: readList(found[1]), middle: readList(found[2]), held: true }
      : undefined;
  },
  // Stitches left or added
  (text, readList) => {
    const found = form(
      `\\b(bind off|cast off|bo|(?:sl st|ss)(?: across)?|leave|skip|cast on|add(?: a foundation of)?|ch)(?: (?:the )?(?:next|first))? ${L} ?(?:${sts})?(?: unworked)?,? (?:at|in|on) (?:the )?(beg(?:inning)?|start|end|each end|both ends|each side|both sides)(?: and (end))? of (?:each of )?(?:the )?(?:next|every|following) (?:${L} )?(?:RS |WS )?${row}`,
      'iu',
    ).exec(text);
    if (!found) return undefined;
    const [, verb, stitches, where, also, rows] = found;
    const many = rows === undefined ? 1 : readList(rows).values;
    if (typeof many !== 'number' && (many.length !== 1 || !many[0] || many[0] > 12)) return undefined;
    const at = also || /each|both/iu.test(where!) ? 'both' : /^end/iu.test(where!) ? 'end' : 'start';
    return {
      do: /^(?:cast on|add|ch)/iu.test(verb!) ? 'add' : 'leave',
      stitches: readList(stitches),
      at,
      rows: typeof many === 'number' ? many : many[0]!,
    };
  },
  (text, readList) => {
    const even = form(`^next ${row}(?: \\([RW]S\\))?: `, 'iu').test(text) && /\bwork even\b/iu.test(text);
    const begun = /^on the (?:next|same) (?:row|round),.* as follows(?:, that (?:row|round) included)?\.?$/iu;
    if (!even && !begun.test(text)) return undefined;
    const add = /add a foundation of|cast on/iu.test(text);
    const verb = add
      ? '(?:add a foundation of|cast on)'
      : '(?:(?:sl st|ss) across|(?:bind|cast) off) the first';
    const start = form(
      !add ? `${verb} ${L} ${sts}` : even ? `: ${verb} ${L} ${sts}` : `${L} ${sts} at the start`,
      'iu',
    ).exec(text);
    const end = form(
      !add
        ? `leav(?:e|ing) the last ${L} ${sts}`
        : even
          ? `then ${verb} ${L} ${sts}`
          : `${L} ${sts} at the end`,
      'iu',
    ).exec(text);
    if (!start && !end) return undefined;
    return {
      do: 'ends',
      add,
      start: start ? readList(start[1]) : undefined,
      end: end ? readList(end[1]) : undefined,
      even,
    };
  },
  // Shaping over rows
  (text, readList) => {
    const found = form(
      `^(?:[^⟦]{0,40}?[:,] )?(dec|inc)\\w* ${L} ?(?:${sts})? (?:at |on )?(?:the )?(each end|both ends|each side(?: of (?:the )?marker)?|both sides|(?:(?:neck|armhole|shaped|side|front) )?edge|neck|armhole|beg(?:inning)?|start|end|marker|same edge|evenly(?: around| across)?)(.*)$`,
      'iu',
    ).exec(text);
    if (!found) return undefined;
    const [, word, each, where, rest] = found as unknown as [string, string, string, string, string];
    const next = /\b(?:of|on|at)? ?(?:the )?next (?:RS )?(?:row|round|rnd)\b/iu.test(rest);
    const runs = [
      ...rest.matchAll(
        form(
          `(?:every|each) (?:(?:foll(?:owing)?|RS) )?(?:${L} )?(?:foll(?:owing)? )?(?:RS )?(?:row|round|rnd)(?: ?(?:a )?(?:total of )?(?:for )?${L}( more)? ?(more )?(?:times?|rows?|rounds?|rnds?))?`,
          'giu',
        ),
      ),
    ];
    const read = runs.map(([whole, every, times, more, more2]) => ({
      every: every === undefined ? (/RS/u.test(whole) ? literal2 : (1 as const)) : readList(every),
      times: times === undefined ? undefined : readList(times),
      more: Boolean(more ?? more2),
    }));
    if (read.some(({ times }) => times === undefined) || (read.length === 0 && !next)) return undefined;
    if (read.length === 0 && /^evenly/iu.test(where)) return undefined;
    return {
      do: 'taper',
      way: wayOf(word),
      each: readList(each),
      ends: /each|both/iu.test(where) ? 2 : 1,
      ...(/neck/iu.test(where) ? { edge: 'neck' } : /armhole/iu.test(where) ? { edge: 'armhole' } : {}),
      next,
      runs: read as { every: PrintedList | 1; times: PrintedList; more: boolean }[],
    };
  },
  (text, readList) => {
    const found = form(`\\b(dec|inc)\\w* ${L} ?(?:${sts})? evenly`, 'iu').exec(text);
    return found ? { do: 'evenly', way: wayOf(found[1]!), by: readList(found[2]) } : undefined;
  },
  (text, readList) => {
    const found = form(
      `\\b(dec|inc)\\w* ${L} ?(?:${sts})? (?:in|inside) each (?:of (?:the )?${L} )?(?:rep(?:eat)?s?|motifs?|patterns?|wedges?)`,
      'iu',
    ).exec(text);
    if (!found) return undefined;
    return {
      do: 'each repeat',
      way: wayOf(found[1]!),
      by: readList(found[2]),
      repeats: found[3] ? readList(found[3]) : undefined,
    };
  },
  // Lengths and rows
  (text, readList) => {
    const found = form(
      `^(?:[^⟦]*?\\b)?(?:work|knit|continue|cont|work even)?(?: (?:even|straight|in|as)\\b)? ?([^⟦]*?)(?:until|for|to) (?:(?:the )?(?:piece|work|back|front|body|sleeve|it|total length|length)[\\p{L} ]*?(?:measures?|is)? )?${L}(?: (?:from|above|after) (.*))?$`,
      'iu',
    ).exec(text.replace(/\.$/u, ''));
    if (!found || !form('until|measures|for', 'iu').test(text)) return undefined;
    const list = readList(found[2]);
    if (list.units.length === 0 && !/measures/iu.test(text)) return undefined;
    const from =
      found[3] && /here|last|marker|underarm|armhole|dec|shaping|rib|split|divid/iu.test(found[3])
        ? 'here'
        : 'start';
    return {
      do: 'until',
      length: list,
      from: /measures|until/iu.test(text) ? from : 'here',
      fabric: fabricIn(text),
    };
  },
  (text, readList) => {
    const found = form(
      `^(?:[^⟦]{0,30}: )?(?:then )?(?:work|knit|k|purl|sc|continue|cont|rep|repeat)\\b([^⟦]*?)(?: for)?(?: a further)? ${L} (?:more )?(?:rows?|rounds?|rnds?)\\b(.*)$`,
      'iu',
    ).exec(text);
    // Rows of which some are shaped, and rows that repeat others, are not even.
    if (
      !found ||
      /⟦|shap|dec|inc|as follows|of these/iu.test(found[3]!) ||
      /\brows? ?$|shap/iu.test(found[1]!)
    )
      return undefined;
    if (/\b(?:rep|repeat)\b/iu.test(text) && /last/iu.test(text)) return undefined;
    return { do: 'even', rows: readList(found[2]), fabric: fabricIn(text) };
  },
  (text, readList) => {
    const found = form(
      `^(?:rows?|rounds?|rnds?) ${L} ?(?:-|–|—|to|through) ?${L}(?: \\([RW]S\\))?: (?:work even|work in|knit|purl|sc in each|continue)(?!.*(?:dec|inc|tog))`,
      'iu',
    ).exec(text);
    if (!found) return undefined;
    const [first, last] = [readList(found[1]).values, readList(found[2])];
    return first.length === 1 && first[0]
      ? { do: 'even', rows: last, from: first[0], fabric: fabricIn(text) }
      : undefined;
  },
  // Ending
  (text, readList) => {
    const found = form(
      `^(?:knit(?:ting)?: )?(bind off|cast off|bo|fasten off|do not bind off|do not fasten off|leave|place|slip|put|keep)\\b(.*)$`,
      'iu',
    ).exec(text);
    if (!found) return undefined;
    const held = /^(?:do not|leave|place|slip|put|keep)/iu.test(found[1]!);
    if (held && !/holder|needle|waste yarn|open|sts|fasten|spare/iu.test(text)) return undefined;
    if (
      !held &&
      !/^fasten/iu.test(found[1]!) &&
      !/^\s*(?:all|⟦|rem|the rem|loosely|in |$|\.)/iu.test(found[2]!)
    )
      return undefined;
    const counted = form(L, 'u').exec(found[2]!);
    return { do: 'end', held, count: counted ? readList(counted[1]) : undefined };
  },
  (text) =>
    /\bjoin\b.*\b(?:in|into) (?:the |a )?(?:round|rnd|ring)|\bjoin with a sl st\b|\bmarker at the (?:start|beginning) of the (?:round|rnd)\b/iu.test(
      text,
    )
      ? { do: 'round' }
      : undefined,
  (text) => {
    const found = /^(?:work in|change to|switch to|in|with|using) ([^⟦.]*(?:⟦\d+⟧[^.]*)?)\.?$/iu.exec(text);
    return found
      ? {
          do: 'fabric',
          fabric: found[1]!
            .replace(/⟦\d+⟧/gu, '')
            .split(/,| with | on |\(/u)[0]!
            .trim(),
        }
      : undefined;
  },
];

const literal2: PrintedList = { values: [2], from: 0, to: 0, step: 1, units: [] };

function fabricIn(text: string): string {
  const found =
    /\bin ((?!the round\b|each\b|next\b|same\b|order\b)[\p{L}][\p{L}\d⟦⟧, -]*?)(?= (?:for|until|to)\b| ⟦|[.;]|$)/iu.exec(
      text,
    );
  const words = found?.[1]?.trim() ?? '';
  return /pattern|established|set|patt\b/iu.test(words) ? '' : words;
}
