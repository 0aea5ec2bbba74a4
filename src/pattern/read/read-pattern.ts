import { contradictions } from './contradictions';
import { countedLines, isForSizes } from './counted-lines';
import { gaugeFor } from './gauge-for';
import { gaugeIn } from './gauge-in';
import { instructionIn } from './instruction';
import { logicalLines, type LogicalLine } from './lines';
import { measureIn, type MeasureContext } from './measure-in';
import { onlyBegun } from './only-begun';
import { phrasesOf } from './phrase';
import { PieceReader } from './piece-reader';
import { setInCaps } from './set-in-caps';
import { sizeListsIn, type LengthUnit } from './size-list-at';
import { sizesAsRows } from './sizes-as-rows';
import { sizesIn } from './sizes-in';
import { rowAsLine } from './table-row';
import type {
  ImportDiagnostic,
  PatternReading,
  ReadLine,
  StatedGauge,
  StatedMeasure,
  StatedYarn,
  TextRange,
} from './types';
import { workAs } from './work-as';
import { withoutSigns } from './without-signs';
import { yarnIn } from './yarn-in';

/** Headings under which no piece is worked. */
const notAPiece =
  /^(?:gauge|tension|materials?|yarn|notes?|abbreviations?|terms|needles|hooks?|notions|finishing|making up|special stitches|stitch guide|instructions|pattern)\b/iu;

export interface ReadAs {
  /** The mark before decimals, as the notebook's settings have it. */
  readonly decimal: '.' | ',';
}

/** Beyond this a text is no pattern, and would hold up the page. */
export const mostCharactersOfAPattern = 200_000;

/**
 * A printed pattern, read: gauge, sizes, measurements, yarn, and each piece as stretches, with every line marked as what
 * it was read as. What is not known is kept and marked so; nothing is taken for what it might be. Where the pattern
 * contradicts itself, a diagnostic says so at its place.
 */
export function readPattern(text: string, { decimal }: ReadAs): PatternReading {
  const diagnostics: ImportDiagnostic[] = [];
  const diagnostic = (one: ImportDiagnostic): void => void diagnostics.push(one);
  const printedLines = logicalLines(text.slice(0, mostCharactersOfAPattern)).map(withoutMarks);
  const lines = sizesAsRows(printedLines, diagnostic).map(rowAsLine);
  const sizes = sizesOf(lines, decimal, diagnostic);
  const read: ReadLine[] = [];
  const gauges: StatedGauge[] = [];
  const measures: StatedMeasure[] = [];
  let yarn: StatedYarn | undefined;
  let title = '';
  let heading: Pick<MeasureContext, 'on' | 'unit' | 'expected'> = {
    on: undefined,
    unit: undefined,
    expected: false,
  };
  const pieces = new PieceReader({
    sizes,
    gaugeFor: (fabric) => gaugeFor(gauges, fabric),
    report: diagnostic,
  });

  for (let at = 0; at < lines.length; at++) {
    const line = lines[at]!;
    const as: string[] = line.as === undefined ? [] : [line.as];
    const counted = readCounted(at, as);
    if (counted > 1) {
      for (const one of lines.slice(at, at + counted - 1)) {
        for (let row = 0; row < one.lines; row++) read.push({ line: one.line + row, text: '', as });
      }
      at += counted - 1;
    } else if (counted === 0 && line.text.trim() !== '') readLine(line, as);
    finish(lines[at]!, as);
  }
  function finish(line: LogicalLine, as: string[]): void {
    for (let at = 0; at < line.lines; at++) read.push({ line: line.line + at, text: '', as });
  }

  const printed = text.slice(0, mostCharactersOfAPattern).split(/\r\n|\r|\n/u);
  const pattern = {
    title: title || 'A pattern to adapt',
    craft: craftOf(text),
    sizes,
    gauges: joinedGauges(gauges),
    measures,
    pieces: pieces.pieces,
    yarn,
  };
  diagnostics.push(...onlyBegun(pattern, diagnostics), ...contradictions(pattern), ...setInCaps(pattern));
  if (text.length > mostCharactersOfAPattern) {
    diagnostics.push({
      range: { line: printed.length, from: 0, to: 0 },
      kind: 'unread',
      message: `Only the first ${mostCharactersOfAPattern} characters are read.`,
    });
  }
  if (
    !pattern.pieces.some(({ stretches }) => stretches.length > 0) &&
    measures.length === 0 &&
    gauges.length === 0 &&
    diagnostics.length === 0
  ) {
    diagnostics.push({
      range: { line: 1, from: 0, to: printed[0]!.length },
      kind: 'unread',
      message:
        'Nothing here reads as a pattern: paste one with a line of sizes, its gauge, its finished measurements and its instructions.',
    });
  }
  return {
    pattern,
    lines: read.map((line, at) => ({ ...line, text: printed[at] ?? '' })),
    diagnostics: diagnostics.sort((a, b) => a.range.line - b.range.line || a.range.from - b.range.from),
  };

  function readLine(line: LogicalLine, as: string[]): void {
    if (sizesIn(line)) {
      as.push('the sizes');
      return;
    }
    const only = /^in (?:cm|centimet(?:re|er)s|(in)|(inches))\b/iu.exec(line.text.trim());
    if (heading.expected && only) {
      heading = { ...heading, unit: (only[1] ?? only[2]) ? 'in' : 'cm' };
      as.push('the unit of what follows');
      return;
    }
    const same = workAs(
      line.text,
      pieces.pieces.map(({ label }) => label),
    );
    if (same) {
      readSame(line, same, as);
      return;
    }
    const gauge = gaugeIn(line, decimal);
    if (gauge) {
      gauge.diagnostics.forEach(diagnostic);
      if (!gauge.gauge) return;
      gauges.push(gauge.gauge);
      const { over } = gauge.gauge;
      as.push(
        over === 'another length'
          ? `a gauge over ${Math.round(gauge.gauge.overCm * 100) / 100} cm`
          : `a gauge over ${over}`,
      );
      return;
    }
    // Inside a piece a length is mostly part of an instruction; before the first piece it is a measurement.
    const before = [readYarn, readMeasure, readInstructions];
    const inside = [readInstructions];
    for (const accept of pieces.inPiece && !heading.expected ? inside : before) {
      if (accept(line, as)) return;
    }
    readHeading(line, as);
  }

  /**
   * Lines that the reader of the recount can follow and this one does not know: a row stitch by stitch, shaping told
   * for each size. How many lines were taken.
   */
  function readCounted(at: number, as: string[]): number {
    const line = lines[at]!;
    const { counts } = pieces;
    if (!counts || line.text.trim() === '' || counts.every((count) => count === null)) return 0;
    // Blank lines stand between them where a pattern was copied as Markdown.
    const forSizes = lines.findIndex(
      (one, next) => next > at && one.text.trim() !== '' && !isForSizes(one.text),
    );
    let many = (forSizes < 0 ? lines.length : forSizes) - at;
    while (many > 1 && lines[at + many - 1]!.text.trim() === '') many--;
    const isBySize = /as follows for your size/iu.test(line.text) && many > 1;
    const known = isBySize ? [] : phrasesOf(line.text, decimal).map((phrase) => instructionIn(phrase));
    const rowOf = /^\s*(?:next|same|rows?|rounds?|rnds?)\b/iu.test(line.text);
    if (!isBySize && (known.some(({ instruction }) => instruction) || !readsAsStitches(line.text))) return 0;
    const group = lines
      .slice(at, at + (isBySize ? many : 1))
      .map(({ text }) => text.trim())
      .filter((text) => text !== '');
    // A line of stitches alone is the next row.
    const wanted = isBySize || rowOf || /^work\b/iu.test(group[0]!) ? group : [`Next row: ${group[0]!}`];
    // How a row begins was told before "same row", and the counts have it already.
    const renamed = wanted.map((text) =>
      text
        .replace(/^(row|round|rnd)s? \d+(?= ?(?:\(|:))/iu, 'Next $1')
        .replace(/^same (?=(?:row|round|rnd)\b)/iu, 'Next '),
    );
    const rows = countedLines(renamed, counts, sizes);
    const range = line.range(line.text.length - line.text.trimStart().length, line.text.length);
    if ('problem' in rows) {
      diagnostic({
        range,
        kind: 'unread',
        message: `This line is kept as it stands, since it does not come out when it is counted. ${rows.problem}`,
      });
      return isBySize ? many : 1;
    }
    const what = pieces.counted(rows, range);
    if (what) as.push(what);
    return isBySize ? many : 1;
  }

  function readSame(line: LogicalLine, same: NonNullable<ReturnType<typeof workAs>>, as: string[]): void {
    const range = line.range(line.text.length - line.text.trimStart().length, line.text.length);
    if (same.label) pieces.heading(same.label);
    if (!same.more && pieces.sameAs(same.piece, range)) {
      as.push(`a piece like ${same.piece}`);
      return;
    }
    pieces.leave();
    diagnostic({
      range,
      kind: 'unread',
      message: `What is worked here as ${same.piece} is not read: write its lines out under a heading of its own, from its first stitches on.`,
    });
  }

  function readMeasure(line: LogicalLine, as: string[]): boolean {
    const found = measureIn(line, { sizes: sizes.length, decimal, ...heading });
    if (!found) return false;
    found.diagnostics.forEach(diagnostic);
    if (found.measure) {
      measures.push(found.measure);
      as.push(found.measure.on === 'body' ? 'a measurement of the body' : 'a finished measurement');
    }
    return true;
  }

  function readYarn(line: LogicalLine, as: string[]): boolean {
    // The grams come first; balls, where they follow, are the same yarn again.
    const found = yarn ? undefined : yarnIn(line, sizes.length, decimal);
    if (!found) return false;
    found.diagnostics.forEach(diagnostic);
    if (found.yarn) {
      yarn = found.yarn;
      as.push('yarn');
    }
    return true;
  }

  function readInstructions(line: LogicalLine, as: string[]): boolean {
    let { text: rest } = line;
    let offset = 0;
    const named =
      /^\s*(?!rows?\b|rounds?\b|rnds?\b|notes?\b|next\b|(?:do not |don.t )?(?:bind|cast|fasten) off\b)(\p{L}[\p{L}’' -]{1,40}(?:\([^)⟦]{1,30}\))?):\s+(?=\S)/iu.exec(
        rest,
      );
    const label = named && named[1]!.split(/\s+/u).length <= 5 ? named : null;
    if (label) {
      offset = label[0].length;
      rest = rest.slice(offset);
    }
    const signed = withoutSigns(phrasesOf(rest, decimal), shifted(line, offset));
    signed.diagnostics.forEach(diagnostic);
    if (signed.kept) return true;
    const { phrases } = signed;
    const known = phrases.map((phrase) => ({ phrase, ...instructionIn(phrase) }));
    if (!known.some(({ instruction, says }) => instruction || says) && !multipleIn(line)) return false;
    const moved = shifted(line, offset);
    if (label && known.some(({ instruction }) => instruction)) pieces.heading(label[1]!.trim());
    let taken = false;
    for (const { phrase, instruction, says } of known) {
      const range = moved.range(phrase.from, phrase.to);
      const what =
        (instruction && pieces.accept(instruction, says, moved, range)) ??
        (says && pieces.firstRow(says, range, rest.slice(phrase.from, phrase.to)));
      if (what) as.push(what);
      else if (says && !instruction && pieces.saysOnly(says, moved)) {
        diagnostic({
          range,
          kind: 'unread',
          message:
            'This line is kept as it stands: its count was compared, but how it is worked was not read.',
        });
      } else if (instruction && !what) as.push('');
      taken ||= what !== undefined;
    }
    const unread = as.includes('');
    as.splice(0, as.length, ...as.filter((what) => what !== ''));
    const multiple = multipleIn(line);
    if (multiple && pieces.multiple(multiple)) as.push('a multiple');
    if (taken) heading = { on: undefined, unit: undefined, expected: false };
    return taken || unread || as.length > 0 || known.some(({ says }) => says !== undefined && pieces.inPiece);
  }

  function readHeading(line: LogicalLine, as: string[]): void {
    if (/^(?:work the other .*\b(?:mirror|same|alike|match)|make (?:2|two)\.?$)/iu.test(line.text.trim())) {
      if (pieces.mirrored()) as.push('made twice');
      return;
    }
    // Columns, and what stands far in, are of a table.
    if (!/\p{L}/u.test(line.text) || /\S\s{3,}\S|^\s{6}/u.test(line.text)) return;
    const message = line.text.trim().replace(/[:.]$/u, '').trim();
    const words = message.split(/\s+/u).length;
    const bare = sizeListsIn(message, decimal).every(({ values }) => values.length === 1);
    if (
      message.length > 60 ||
      words > 8 ||
      !bare ||
      /[.!?]\s/u.test(message) ||
      /\.$/u.test(line.text.trim())
    )
      return;
    as.push('a heading');
    const unit: LengthUnit | undefined = /\b(?:cm|centimet(?:re|er)s)\b/iu.test(message)
      ? 'cm'
      : /\b(?:in|inches)\b/iu.test(message)
        ? 'in'
        : undefined;
    const measuring = /measure|dimension|\bto fit\b|^sizes?\b|schematic/iu.test(message);
    if (
      title === '' &&
      !measuring &&
      !notAPiece.test(message) &&
      read.every(({ as: before }) => before.length === 0)
    ) {
      title = message;
      return;
    }
    if (measuring) {
      heading = {
        expected: true,
        unit,
        on: /\bto fit\b|body/iu.test(message)
          ? 'body'
          : /finished|garment|schematic|actual/iu.test(message)
            ? 'garment'
            : undefined,
      };
      pieces.leave();
      return;
    }
    heading = { on: undefined, unit: undefined, expected: false };
    if (notAPiece.test(message)) pieces.leave();
    else pieces.heading(message);
  }
}

/** Whether a line tells a row stitch by stitch: an asterisk, stitches worked together, a count at its end. */
function readsAsStitches(text: string): boolean {
  if (/^\s*the first of these\b/iu.test(text)) return false;
  return (
    /\*|\dtog\b|;\s*rep\b|of these,/iu.test(text) ||
    (/\b(?:sc|hdc|dc|tr|k|p)\s?\d/iu.test(text) && /[.\]]\s*$/u.test(text))
  );
}

/** Marks that a pasted heading or list brings, as blanks, so that places stay. */
function withoutMarks(line: LogicalLine): LogicalLine {
  const text = line.text
    .replace(
      /^(\s*)([#>]+|[-*•‣]\s)(?=\s|\S)/u,
      (_all, space: string, mark: string) => space + ' '.repeat(mark.length),
    )
    .replace(/\\([*_[\]()#+.!|<>`~-])/gu, ' $1')
    .replace(/\*\*|__/gu, '  ')
    .replace(/\*(?=\p{L}[^*]*\*\s*$)/gu, ' ');
  return { ...line, text };
}

function shifted(line: LogicalLine, by: number): LogicalLine {
  return by === 0 ? line : { ...line, range: (from, to) => line.range(from + by, to + by) };
}

function multipleIn(line: LogicalLine): { multiple: number; plus: number; range: TextRange } | undefined {
  const found =
    /multiple of (\d+)(?:\s*(?:sts?|stitches))?(?:\s*,?\s*(\+|plus|and|minus|less|-|−|–)\s*(\d+))?/iu.exec(
      line.text,
    );
  if (!found || Number(found[1]) < 1) return undefined;
  const plus = Number(found[3] ?? 0) * (/^(?:minus|less|-|−|–)$/iu.test(found[2] ?? '') ? -1 : 1);
  return { multiple: Number(found[1]), plus, range: line.range(found.index, found.index + found[0].length) };
}

/** The names of the sizes; where no line lists them, as many numbers as the lists have, and a diagnostic. */
function sizesOf(
  lines: readonly LogicalLine[],
  decimal: '.' | ',',
  diagnostic: (diagnostic: ImportDiagnostic) => void,
): string[] {
  for (const line of lines) {
    const named = sizesIn(line);
    if (named) return named.slice(0, 40);
  }
  const many = new Map<number, number>();
  let first: { line: LogicalLine; from: number; to: number } | undefined;
  for (const line of lines) {
    for (const { values, from, to } of sizeListsIn(line.text, decimal)) {
      if (values.length < 2 || values.length > 40) continue;
      many.set(values.length, (many.get(values.length) ?? 0) + 1);
      first ??= { line, from, to };
    }
  }
  const [most] = [...many].sort((a, b) => b[1] - a[1]);
  if (!most || !first) return ['One size'];
  diagnostic({
    range: first.line.range(first.from, first.to),
    kind: 'to know',
    message: `No line names the sizes. Most lists have ${most[0]} numbers, so there are ${most[0]} sizes here, called 1 to ${most[0]}: add a line such as "Sizes: XS (S, M)" to name them.`,
  });
  return Array.from({ length: most[0] }, (_size, at) => String(at + 1));
}

/** Stitches and rows stated on two lines, as one gauge. */
function joinedGauges(gauges: readonly StatedGauge[]): StatedGauge[] {
  const joined: StatedGauge[] = [];
  for (const gauge of gauges) {
    const half = joined.findIndex(
      (one) =>
        (one.stitches === undefined && gauge.rows === undefined) ||
        (one.rows === undefined && gauge.stitches === undefined),
    );
    if (half < 0) joined.push(gauge);
    else {
      const one = joined[half]!;
      joined[half] = { ...one, stitches: one.stitches ?? gauge.stitches, rows: one.rows ?? gauge.rows };
    }
  }
  return joined;
}

function craftOf(text: string): 'crochet' | 'knitting' | undefined {
  const crochet = (text.match(/\b(?:hook|crochet|sc|hdc|dc|ch|chain|fasten off)\b/giu) ?? []).length;
  const knitting = (text.match(/\b(?:needles?|knit|purl|cast on|k2tog|stockinette|bind off)\b/giu) ?? [])
    .length;
  return crochet === knitting ? undefined : crochet > knitting ? 'crochet' : 'knitting';
}
