import { plainMessage } from '../../craft';
import { sameUnit, type Unit } from '../../formulas';
import {
  wrongValue,
  type Edit,
  type Entry,
  type Input,
  type Notebook,
  type Size,
  type WrittenAs,
  givenIn,
} from '../../notebook';
import type { DrawnLine } from './block';
import { pastedList, withListsSpread } from './pasted-list';
import { widest, withoutHeadings, type Table } from './headings';
import { typedNumber } from '../../workspace';

/** A number as it is stored, remembered beside the text that was copied. */
export interface Exact {
  readonly value: number;
  readonly unit: Unit;
  readonly written: WrittenAs | undefined;
}

export interface PasteOnto {
  readonly notebook: Notebook;
  /** The value lines from the one that is pasted on downwards. */
  readonly lines: readonly DrawnLine[];
  /** The size that is pasted on; null on a place that stands for every size. */
  readonly size: string | null;
  readonly unitOf: (line: DrawnLine) => Unit;
  /** What was copied in this notebook itself is pasted to its last digit, not as it was shown. */
  readonly exact?: (row: number, column: number) => Exact | undefined;
}

export interface PastePlan {
  /** undefined where nothing can be taken. */
  readonly edit: Edit | undefined;
  readonly taken: number;
  readonly left: number;
  /** What came of it, in a sentence with counts. */
  readonly says: string;
}

const longestNumber = 60;
const longestText = 2_000_000;

/**
 * Tab-separated values as rows of texts. A text in quotation marks may hold tabs, line ends and doubled marks; a mark
 * within a text, as in 10 1/4", is the mark.
 *
 * @example rowsOf('22\t24\n"a ""b"""\t10"\n') // [['22', '24'], ['a "b"', '10"']]
 */
export function rowsOf(text: string): string[][] {
  const rows: string[][] = [[]];
  const part = /(?:"((?:[^"]|"")*)"(?=[\t\r\n]|$)|([^\t\r\n]*))(\t|\r\n|\r|\n|$)/gy;
  for (let match = part.exec(text); match; match = part.exec(text)) {
    const [, quoted, bare = '', end] = match;
    rows.at(-1)!.push((quoted?.replaceAll('""', '"') ?? bare).trim());
    if (!end) break;
    if (end !== '\t') rows.push([]);
  }
  if (rows.length > 1 && rows.at(-1)!.length === 1 && rows.at(-1)![0] === '') rows.pop();
  return rows;
}

/**
 * What pasting does: each number goes to its line and size, and each that cannot is counted with the reason. A gap in
 * what is pasted leaves the value that stands there. Words over and before the values are no values; where they name
 * sizes, the values go to those. A list for all sizes begins at the first.
 */
export function planPaste(text: string, onto: PasteOnto): PastePlan {
  if (text.length > longestText) {
    return plan([], 0, new Map(), 'This text is too long to be values for a notebook; nothing was pasted.');
  }
  const { sizes, settings } = onto.notebook;
  const asTyped = rowsOf(text);
  // What was copied in the grid itself has neither lists nor headings.
  const spread = onto.exact ? undefined : withListsSpread(asTyped, sizes.length, settings.decimal);
  const typed = spread ?? asTyped;
  const from = spread ? null : onto.size;
  const table: Table = onto.exact ? { rows: typed } : withoutHeadings(typed, sizes);
  const { rows } = table;
  const wide = widest(rows);
  const left = new Map<string, Left>();
  const edits: Edit[] = [];
  let taken = 0;
  for (const [at, row] of rows.entries()) {
    const drawn = onto.lines[at];
    const filled = row.flatMap((typed, column) => (typed === '' ? [] : [{ typed, column }]));
    if (!drawn) {
      for (const _value of filled) leave(left, 'below the last line it could stand on');
      continue;
    }
    const values = filled.flatMap(({ typed, column }): Placed[] => {
      const size = table.sizes ? table.sizes[column] : sizeFrom(from, column, sizes);
      if (!size) {
        leave(left, table.sizes ? 'under no size of this notebook' : 'beyond the last size');
        return [];
      }
      const read = readFor(typed, drawn, onto, onto.exact?.(at, column));
      if ('value' in read) return [{ size, value: read.value }];
      leave(left, read.why, read.for);
      return [];
    });
    const put = editsFor(
      drawn,
      values,
      wide === 1 && !table.sizes && onto.size === null,
      onto.notebook.sizes,
    );
    edits.push(...put.edits);
    taken += put.taken;
    for (let more = put.taken; more < values.length; more++) {
      leave(left, 'another value for a line with one value for every size');
    }
  }
  return plan(edits, taken, left);
}

interface Placed {
  readonly size: Size;
  readonly value: number;
}

function sizeFrom(size: string | null, column: number, sizes: readonly Size[]): Size | undefined {
  const first = sizes.findIndex((candidate) => candidate.id === size);
  return sizes[Math.max(first, 0) + column];
}

type Refusal = { readonly why: string; readonly for?: string };

function readFor(
  typed: string,
  drawn: DrawnLine,
  onto: PasteOnto,
  exact: Exact | undefined,
): { readonly value: number } | Refusal {
  const { input } = drawn.line;
  if (!input) return { why: 'worked out here' };
  if ('formula' in input.entry) return { why: 'worked out by a formula' };
  const unit = onto.unitOf(drawn);
  if (exact && exact.written === input.written && sameUnit(exact.unit, unit)) {
    return allowed(exact.value, input);
  }
  if (pastedList(typed, onto.notebook.settings.decimal))
    return { why: 'a list for another number of sizes', for: typed };
  if (!/[\d½⅓⅔¼¾⅛⅜⅝⅞]/.test(typed) || typed.length > longestNumber || typed.startsWith('=')) {
    const start = typed.length > 20 ? `${typed.slice(0, 20)}…` : typed;
    return { why: 'no number', for: `"${start}"` };
  }
  const read = typedNumber(typed, input, unit, onto.notebook.settings);
  if ('problem' in read) return { why: 'no value for its line', for: `${typed}: ${unstopped(read.problem)}` };
  return allowed(read.value ?? NaN, input);
}

function allowed(value: number, input: Input): { readonly value: number } | Refusal {
  const wrong = wrongValue(input, value);
  return wrong ? { why: 'no value for its line', for: unstopped(plainMessage(wrong)) } : { value };
}

function unstopped(sentence: string): string {
  return sentence.replace(/\.$/, '');
}

/** A line keeps one value for every size where that is what it is given; else it gets a value for each. */
function editsFor(
  { cell, line }: DrawnLine,
  values: readonly Placed[],
  forAllSizes: boolean,
  sizes: readonly Size[],
): { edits: Edit[]; taken: number } {
  const [first] = values;
  if (!first || !line.input) return { edits: [], taken: 0 };
  const { entry, key, shared } = line.input;
  const give = (size: string | null, value: number): Edit => ({
    do: 'give',
    cell: cell.id,
    key,
    size,
    value,
  });
  const same = values.filter(({ value }) => value === first.value).length;
  if ('value' in entry) {
    const all = same === values.length && (forAllSizes || values.length === sizes.length);
    if (shared || all)
      return { edits: changed(entry, [first]) ? [give(null, first.value)] : [], taken: same };
  }
  const edits = changed(entry, values) ? values.map(({ size, value }) => give(size.id, value)) : [];
  return { edits, taken: values.length };
}

function changed(entry: Entry, values: readonly Placed[]): boolean {
  return values.some(({ size, value }) => givenIn(entry, size) !== value);
}

interface Left {
  count: number;
  example: string | undefined;
}

function leave(left: Map<string, Left>, why: string, example?: string): void {
  const before = left.get(why);
  if (before) before.count++;
  else left.set(why, { count: 1, example });
}

function plan(edits: Edit[], taken: number, left: Map<string, Left>, says?: string): PastePlan {
  const without = [...left.values()].reduce((sum, { count }) => sum + count, 0);
  const values = taken === 1 ? '1 value' : `${taken} values`;
  return {
    edit: edits.length > 0 ? { do: 'several', edits, what: `pasting ${values}` } : undefined,
    taken,
    left: without,
    says: says ?? (taken + without === 0 ? 'There is no value to paste.' : messageFor(values, without, left)),
  };
}

function messageFor(values: string, without: number, left: Map<string, Left>): string {
  if (without === 0) return `${values} pasted.`;
  const reasons = [...left].map(([why, { count, example }]) => {
    const verb = count === 1 ? 'is' : 'are';
    return `${count} ${verb} ${count > 1 ? plural(why) : why}${example ? ` (${example})` : ''}`;
  });
  return `${values} pasted; ${without} ${without === 1 ? 'was' : 'were'} left out: ${reasons.join(', ')}.`;
}

const plurals: Readonly<Record<string, string>> = {
  'no number': 'no numbers',
  'no value for its line': 'no values for their lines',
  'below the last line it could stand on': 'below the last line they could stand on',
  'a list for another number of sizes': 'lists for another number of sizes',
  'another value for a line with one value for every size':
    'other values for a line with one value for every size',
};

function plural(why: string): string {
  return plurals[why] ?? why;
}
