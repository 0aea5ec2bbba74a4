import type { SideStatement } from '../verify';
import { asRead } from './expected';
import { edgeSays } from './edge-says';
import { headingsSay } from './headings-say';
import { holesSay } from './holes-say';
import type { Mismatch } from './mismatch';
import type { PieceMeant } from './piece-meant';

/** What a piece says against how it is meant. */
export interface PieceSays {
  readonly wrong: readonly Mismatch[];
  /** Lines of which nothing can be said: the words of a person. */
  readonly unread: readonly number[];
}

/** Whether the line at a place is in a person's words. */
export type InOwnWords = (line: number) => boolean;

type Of<K extends SideStatement['kind']> = Extract<SideStatement, { kind: K }>;
const all = <K extends SideStatement['kind']>(says: readonly SideStatement[], kind: K): Of<K>[] =>
  says.filter((message): message is Of<K> => message.kind === kind);

/**
 * What the text of a piece says beside its counts in one size, compared with how the piece is meant: how it begins and
 * ends, its headings and fabrics, its stitches, where it is shaped, and the edge that it is picked up along.
 */
export function pieceSays(
  says: readonly SideStatement[],
  meant: PieceMeant,
  inOwnWords: InOwnWords,
  unit: 'cm' | 'in',
): PieceSays {
  const { fabrics, words, note } = paragraphs(says, meant, inOwnWords);
  const ownWords = words.some(({ line }) => inOwnWords(line));
  return {
    wrong: [
      ...headingsSay(all(says, 'heading'), meant),
      ...fabricsWrong(fabrics, meant),
      ...noteWrong(note, meant, ownWords),
      ...roundWrong(all(says, 'round'), meant, ownWords),
      ...beginningWrong(all(says, 'begun'), meant),
      ...endWrong(all(says, 'end'), meant),
      ...all(says, 'stitches').flatMap((message) =>
        inOwnWords(message.line) ? [] : stitchesWrong(message, meant),
      ),
      ...all(says, 'position').flatMap((message) =>
        inOwnWords(message.line) ? [] : positionWrong(message, meant),
      ),
      ...firstRoundsWrong(says, meant, inOwnWords, ownWords),
      ...all(says, 'repeats').flatMap((message) => repeatsWrong(message, meant)),
      ...all(says, 'way of ends').flatMap((message) =>
        inOwnWords(message.line) ? [] : endsWrong(message, meant),
      ),
      ...holesSay(says, meant, inOwnWords, ownWords),
      ...(meant.edge ? edgeSays(says, meant.edge, unit) : []),
    ],
    unread: words.map(({ line }) => line),
  };
}

interface FabricStatement {
  readonly line: number;
  readonly row: number;
  readonly text: string;
}

/** The fabrics, the note and the other paragraphs of a piece. A person may have put a fabric in words of their own. */
function paragraphs(says: readonly SideStatement[], meant: PieceMeant, inOwnWords: InOwnWords) {
  const known = meant.stretches.map(({ fabric }) => fabric).filter((fabric) => fabric !== '');
  const fabrics: FabricStatement[] = [];
  const words: Of<'words'>[] = [];
  const note: number[] = [];
  for (const message of says) {
    if (message.kind !== 'fabric' && message.kind !== 'words') continue;
    const { line, row } = message;
    const whole = asRead(message.kind === 'fabric' ? message.whole : message.text);
    const within = known.find((fabric) => whole.includes(fabric));
    if (meant.note !== '' && whole === meant.note) note.push(line);
    else if (message.kind === 'fabric') fabrics.push({ line, row, text: asRead(message.text) });
    else if (inOwnWords(line) && within !== undefined) fabrics.push({ line, row, text: within });
    else words.push(message);
  }
  return { fabrics, words, note };
}

function fabricsWrong(fabrics: readonly FabricStatement[], { rows, stretches }: PieceMeant): Mismatch[] {
  const known = stretches.map(({ fabric }) => fabric);
  const unknown = fabrics.find(({ text }) => !known.includes(text));
  if (unknown) {
    return [
      {
        line: unknown.line,
        problem: `It is worked in “${unknown.text}”, and the notebook has no such fabric here.`,
      },
    ];
  }
  const twice = fabrics.find(
    ({ row, text }, at) => at > 0 && fabrics[at - 1]!.row === row && fabrics[at - 1]!.text === text,
  );
  if (twice) return [{ line: twice.line, problem: 'Its fabric is here twice.' }];
  for (const { number, stretch } of rows) {
    const { fabric } = stretches[stretch]!;
    if (fabric === '') continue;
    const message = fabrics.filter(({ row }) => row <= number).at(-1);
    if (message?.text === fabric) continue;
    return [
      {
        ...(message ? { line: message.line } : {}),
        problem: `Row ${number} is worked in “${message?.text ?? 'no fabric that is named'}”, and in the notebook in “${fabric}”.`,
      },
    ];
  }
  return [];
}

function noteWrong(note: readonly number[], meant: PieceMeant, ownWords: boolean): Mismatch[] {
  if (note.length > 1) return [{ line: note[1]!, problem: 'The note of the piece is here twice.' }];
  if (meant.note === '' || note.length === 1 || ownWords) return [];
  return [{ problem: `The note of the piece is missing or otherwise: “${meant.note}”` }];
}

function roundWrong(message: readonly Of<'round'>[], meant: PieceMeant, ownWords: boolean): Mismatch[] {
  const round = meant.plan.worked === 'round';
  const [first, more] = message;
  if (more) return [{ line: more.line, problem: 'The beginning of the round is told twice.' }];
  if (!round) {
    return first
      ? [{ line: first.line, problem: 'It is joined in the round, and the piece is worked flat.' }]
      : [];
  }
  if (!first) return ownWords ? [] : [{ problem: 'It does not say where the round begins.' }];
  const how = meant.begins.from === 'new' ? 'joined' : 'marked';
  if (first.how === how && first.row <= 2) return [];
  return [{ line: first.line, problem: 'Its round does not begin so in the notebook.' }];
}

function beginningWrong(message: readonly Of<'begun'>[], meant: PieceMeant): Mismatch[] {
  const [begun] = message;
  // That a piece does not begin, or begins twice, is found in following it.
  if (!begun) return [];
  const { begins, craft, whole, plan, rows } = meant;
  const wrong = (problem: string): Mismatch[] => [{ line: begun.line, problem }];
  const how =
    begins.from === 'new'
      ? craft === 'knitting'
        ? 'cast on'
        : 'chain'
      : begins.from === 'piece'
        ? begins.piece.ends === 'held'
          ? 'taken up'
          : 'last row'
        : begins.from;
  if (begun.how !== how) return wrong(`It begins with “${begun.how}”, and in the notebook with “${how}”.`);
  if (begins.from === 'piece') {
    const from = asRead(begins.piece.label);
    if (asRead(begun.from ?? '') !== from)
      return wrong(`It goes on from “${begun.from}”, and in the notebook from “${from}”.`);
    if (begun.of !== undefined && begun.of !== whole)
      return wrong(`“${from}” ends with ${whole} stitches, and not ${begun.of}.`);
    const isPart = begins.part && how === 'taken up' && whole !== undefined && whole > plan.start;
    if (isPart && begun.of === undefined) return wrong(`It does not say that ${from} has ${whole} stitches.`);
    const others = craft === 'knitting' ? 'on a holder' : 'unworked';
    if (isPart && begun.others !== others)
      return wrong(`The other stitches of ${from} are to be left ${others}.`);
    const { middle } = meant;
    if (begun.side && middle === undefined) return wrong(`${from} has no two sides in the notebook.`);
    if (middle !== undefined && begun.side?.middle !== middle)
      return wrong(`It does not leave the ${middle} stitches in the middle of ${from}.`);
    if (middle !== undefined && begun.side?.last !== plan.start)
      return wrong(`It does not leave the last ${plan.start} stitches of ${from} for the other side.`);
  }
  if (begun.facing === undefined) return [];
  // In knitting row 1 comes back over the stitches that were picked up, so the other side faced.
  const facing = rows[0]!.side === (craft === 'crochet' ? 'WS' : 'RS') ? 'wrong' : 'right';
  if (begun.facing !== facing) return wrong(`It is picked up with the ${facing} side facing.`);
  if (begun.atUnderarm !== (begins.from === 'armhole'))
    return wrong('It is begun at another place of its edge.');
  return [];
}

function endWrong(message: readonly Of<'end'>[], { end }: PieceMeant): Mismatch[] {
  const [one] = message;
  if (!one || one.how === end) return [];
  return [{ line: one.line, problem: `Its last stitches are ${one.how}, and in the notebook ${end}.` }];
}

function stitchesWrong({ line, row, names }: Of<'stitches'>, { rows, stretches }: PieceMeant): Mismatch[] {
  const worked = rows[row - 1];
  const meant = worked && stretches[worked.stretch]!.stitch[worked.side];
  // A first row goes with the start, whose fabric is that of the first stretch.
  const first = row === 1 && worked ? stretches[0]!.stitch[worked.side] : meant;
  const other = names.find((name) => name !== meant && name !== first);
  if (!worked || other === undefined) return [];
  return [{ line, problem: `Row ${row} is worked in ${other}, and in the notebook in ${meant}.` }];
}

/** Where a taper shapes so many stitches on a row: common practice, as the page draws it too. */
function positionOf(perRow: number, round: boolean, label: string): { each: number; where: string } {
  if (round) {
    if (perRow > 2) return { each: perRow, where: 'evenly' };
    return { each: 1, where: perRow === 1 ? 'at the marker' : 'at each side of the marker' };
  }
  if (perRow === 1) {
    const edge = /\bneck/iu.test(label) ? 'neck' : /\barmhole/iu.test(label) ? 'armhole' : 'shaped';
    return { each: 1, where: `at the ${edge} edge` };
  }
  return perRow % 2 === 0 ? { each: perRow / 2, where: 'at each end' } : { each: perRow, where: 'evenly' };
}

function positionWrong(message: Of<'position'>, { rows, plan, stretches }: PieceMeant): Mismatch[] {
  const at = rows[message.row - 1]?.stretch;
  const stretch = at === undefined ? undefined : plan.stretches[at];
  if (at === undefined || stretch?.kind !== 'taper') return [];
  const { each, where } = positionOf(stretch.perRow, plan.worked === 'round', stretches[at]!.label);
  if (message.each === each && message.where === where) return [];
  // Where both are edges that the trade names, they are compared as such.
  const named = /^at the (?:neck|armhole|side|underarm|hem) edge$/u;
  if (message.each === each && named.test(message.where) && named.test(where)) return [];
  return [
    {
      line: message.line,
      problem: `It shapes ${message.each} ${message.where || 'somewhere'}, and in the notebook ${each} ${where}.`,
    },
  ];
}

/** How the first round of a taper is worked: told once, where all its wedges are alike. */
function firstRoundsWrong(
  says: readonly SideStatement[],
  { rows, stretches }: PieceMeant,
  inOwnWords: InOwnWords,
  ownWords: boolean,
): Mismatch[] {
  const stated = all(says, 'first round');
  return all(says, 'taper').flatMap(({ line, row }): Mismatch[] => {
    const at = rows[row - 1]?.stretch;
    const due = at !== undefined && stretches[at]!.tellsFirstRound;
    const here = stated.filter((one) => one.row === row);
    if (due && here.length === 0 && !ownWords && !inOwnWords(line))
      return [{ line, problem: 'It does not say how the first of these rounds is worked.' }];
    const extra = here[due ? 1 : 0];
    if (!extra || inOwnWords(extra.line)) return [];
    return [{ line: extra.line, problem: 'It says how a first round is worked, and that is not told here.' }];
  });
}

function repeatsWrong(message: Of<'repeats'>, { rows, plan }: PieceMeant): Mismatch[] {
  const row = rows[message.row - 1];
  const stretch = row && plan.stretches[row.stretch];
  if (stretch?.kind === 'eachRepeat' && stretch.by === message.by && stretch.repeats === message.repeats)
    return [];
  const meant =
    stretch?.kind === 'eachRepeat'
      ? `${Math.abs(stretch.by)} in each of ${stretch.repeats} repeats`
      : 'otherwise';
  return [{ line: message.line, problem: `Row ${message.row} is shaped ${meant} in the notebook.` }];
}

/** What becomes of stitches at the ends of a row, by craft: common practice. That they are left or added is counted. */
const waysOfEnds = {
  knitting: { start: ['bound off', 'cast on'], end: ['held', 'cast on'] },
  crochet: { start: ['slipped', 'foundation'], end: ['unworked', 'foundation'] },
} as const;

function endsWrong({ line, at, by, row }: Of<'way of ends'>, { craft }: PieceMeant): Mismatch[] {
  const ways: readonly string[] = waysOfEnds[craft][at];
  if (ways.includes(by)) return [];
  return [
    {
      line,
      problem: `The stitches at the ${at} of row ${row} are ${by}, and should be ${joinWithOr(ways)}.`,
    },
  ];
}

const joinWithOr = (ways: readonly string[]): string => ways.join(' or ');
