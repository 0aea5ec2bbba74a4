import { joinWithAnd } from '../../format';
import type { PartRead, PrintedKind, PrintedPart, PrintedPattern } from '../verify';
import type { PatternSource } from '../source';
import { asRead, type Expected } from './expected';
import { garmentOf, type Garment } from './garment';
import { makingUpMeant } from './joined';
import { matched } from './match';
import { measurementsMeant } from './measured';
import { comparePiece, type PieceWrong, type ReadPiece } from './piece';
import { gaugeMeant, materialsMeant } from './supplies';
import { abbreviationsMeant, cautionsMeant, notesMeant } from './terms-meant';

/** A pattern as it was read: the statements of every part, and of a piece what following it comes to in each size. */
export interface ReadPattern {
  readonly printed: PrintedPattern;
  readonly parts: readonly ReadPart[];
}

export type ReadPart = ReadPiece | { readonly kind: 'other'; readonly read: PartRead };

/** Whether a block of a part is in a person's own words. */
export type InOwnWords = (part: number, block: number) => boolean;

export interface Compared {
  readonly wrong: readonly Wrong[];
  /** What nothing can be said of: no reader knows it, or nothing in the notebook is known to be its like. */
  readonly unknown: readonly { readonly part: number; readonly block: number; readonly text: string }[];
}

export interface Wrong extends PieceWrong {
  /** Undefined where the pattern as a whole is meant. */
  readonly part?: number;
  readonly size?: number;
}

const headings: Readonly<Record<Exclude<PrintedKind, 'piece' | 'gauge'>, string>> = {
  cautions: 'Before you begin',
  materials: 'Materials',
  measurements: 'Finished measurements',
  abbreviations: 'Terms and abbreviations',
  notes: 'Notes',
  'making up': 'Making up',
};
const order: readonly PrintedKind[] = [
  'cautions',
  'materials',
  'gauge',
  'measurements',
  'abbreviations',
  'notes',
  'piece',
  'making up',
];

/**
 * What compares the statements of a text with what they should be. What they should be is worked out of the notebook and
 * its results, by nothing that had a part in writing the text.
 */
export function compareStatements(
  source: PatternSource,
): (read: ReadPattern, inOwnWords: InOwnWords) => Compared {
  const garment = garmentOf(source);
  const known: Partial<Record<PrintedKind, readonly Expected[]>> = {
    cautions: cautionsMeant(garment),
    gauge: gaugeMeant(garment),
    measurements: measurementsMeant(garment, 'alone'),
    'making up': makingUpMeant(garment),
  };
  let drawn: readonly Expected[] | undefined;
  const piece = comparePiece(garment);
  return (read, inOwnWords) => {
    const { printed } = read;
    const whole = wholeWrong(garment, read);
    const sameSizes = printed.sizes.length === garment.sizes.length;
    const unknown: { part: number; block: number; text: string }[] = [];
    const wrong: Wrong[] = [];
    read.parts.forEach((part, at) => {
      const own = (block: number): boolean => inOwnWords(at, block);
      if (part.kind === 'piece') {
        if (!sameSizes) return;
        const found = piece(part, printed.parts[at]!, own);
        wrong.push(...found.wrong.map((one) => ({ ...one, part: at })));
        unknown.push(
          ...found.unread.map((block) => ({ part: at, block, text: textAt(printed.parts[at]!, block) })),
        );
        return;
      }
      const meant = hasSchematic(part.read)
        ? (drawn ??= measurementsMeant(garment, 'with its schematic'))
        : (known[printed.parts[at]!.kind] ?? meantFromText(garment, printed, printed.parts[at]!.kind));
      const found = matched(part.read.statements, withoutOwn(meant, part.read, own), garment.sizes.length);
      wrong.push(
        ...found.wrong.map(({ statement, size, problem }) => ({
          part: at,
          problem,
          ...(size === undefined ? {} : { size }),
          ...(statement ? { block: statement.at.block } : {}),
        })),
      );
      unknown.push(
        ...part.read.unread.map(({ text, at: { block } }) => ({ part: at, block, text })),
        ...found.unknown.map(({ of, at: { block } }) => ({ part: at, block, text: of })),
      );
    });
    return { wrong: [...whole, ...missingParts(garment, known, printed), ...wrong], unknown };
  };
}

const hasSchematic = ({ statements }: PartRead): boolean =>
  statements.some(({ name }) => name === 'measurement of the schematic');

const textAt = ({ blocks }: PrintedPart, at: number): string => {
  const block = blocks[at];
  return block && 'text' in block ? block.text : '';
};

/** The lines of the pieces, and all their sentences with those of the making up. */
function instructionsOf({ parts }: PrintedPattern): { lines: string[]; sentences: string[] } {
  const texts = (kinds: readonly PrintedKind[], of: readonly string[]): string[] =>
    parts
      .filter(({ kind }) => kinds.includes(kind))
      .flatMap(({ blocks }) =>
        blocks.flatMap((block) => (block.kind !== 'table' && of.includes(block.kind) ? [block.text] : [])),
      );
  return {
    lines: texts(['piece'], ['line']),
    sentences: texts(['piece', 'making up'], ['line', 'paragraph']),
  };
}

function meantFromText(garment: Garment, printed: PrintedPattern, kind: PrintedKind): readonly Expected[] {
  const { lines, sentences } = instructionsOf(printed);
  if (kind === 'materials') return materialsMeant(garment, sentences);
  return kind === 'notes' ? notesMeant(garment, lines) : abbreviationsMeant(garment, lines);
}

/** What a person has put in words that cannot be read is neither right nor missing. */
function withoutOwn(
  meant: readonly Expected[],
  { unread, statements }: PartRead,
  own: (block: number) => boolean,
): readonly Expected[] {
  let theirs = unread.filter(({ at }) => own(at.block)).length;
  if (theirs === 0) return meant;
  const inWords = (one: Expected): boolean =>
    statements.some(({ name, of }) => name === one.name && asRead(of) === one.of);
  return meant.filter((one) => one.anyTimes || inWords(one) || theirs-- <= 0);
}

/** Title, sizes, headings, and the order of the parts. */
function wholeWrong({ source, sizes, pieces }: Garment, { printed, parts }: ReadPattern): Wrong[] {
  const wrong: Wrong[] = [];
  const { title, settings } = source.notebook;
  if (asRead(printed.title) !== asRead(title))
    wrong.push({ problem: `It is called “${printed.title}”, and the notebook “${title}”.` });
  const [texts, meant] = [printed.sizes.map(asRead), sizes.map(({ label }) => asRead(label))];
  if (texts.join('\t') !== meant.join('\t')) {
    wrong.push({
      problem: `It is written for ${joinWithAnd(texts) || 'no size'}, and the notebook works out in ${joinWithAnd(meant) || 'none'}.`,
    });
  }
  const cells = parts.flatMap((part) => (part.kind === 'piece' ? [part.cell] : []));
  for (const { cell } of pieces) {
    const times = cells.filter((id) => id === cell.id).length;
    if (times !== 1)
      wrong.push({ problem: `“${cell.label}” ${times === 0 ? 'is not written.' : 'is written twice.'}` });
  }
  const due = pieces.map(({ cell: { id } }) => id).filter((id) => cells.includes(id));
  if (cells.join('\t') !== due.join('\t'))
    wrong.push({ problem: 'The pieces stand in another order than in the notebook.' });
  const kinds = printed.parts.map(({ kind }) => order.indexOf(kind));
  if (kinds.some((kind, at) => at > 0 && kind < kinds[at - 1]!))
    wrong.push({ problem: 'Its parts stand in another order.' });
  printed.parts.forEach(({ kind, heading }, part) => {
    const read = parts[part]!;
    const is =
      kind === 'piece'
        ? pieces.find(({ cell: { id } }) => read.kind === 'piece' && id === read.cell)?.cell.label
        : kind === 'gauge'
          ? settings.terms === 'US'
            ? 'Gauge'
            : 'Tension'
          : headings[kind];
    if (is === undefined || asRead(heading) === asRead(is)) return;
    wrong.push({ part, problem: `It is headed “${heading}”, and should be “${is}”.` });
  });
  return wrong;
}

function missingParts(
  garment: Garment,
  known: Partial<Record<PrintedKind, readonly Expected[]>>,
  printed: PrintedPattern,
): Wrong[] {
  if (garment.pieces.length === 0) return [];
  return order.flatMap((kind): Wrong[] => {
    if (kind === 'piece') return [];
    const times = printed.parts.filter((part) => part.kind === kind).length;
    if (times > 1) return [{ problem: `“${kind}” stands there twice.` }];
    const meant = known[kind] ?? meantFromText(garment, printed, kind);
    if (times === 1 || meant.every(({ anyTimes }) => anyTimes)) return [];
    return [{ problem: `The part “${kind}” is missing.` }];
  });
}
