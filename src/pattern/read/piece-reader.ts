import { capital, uncapital } from '../../format';
import { cutByComma } from './cut-by-comma';
import { canBeCount, countsApart, mostOfAny, noCounts, noMultiple, tooFew } from './count-diagnostics';
import type { RowsBySize } from './counted-lines';
import type { Instruction } from './instruction';
import type { LogicalLine } from './lines';
import { wrongNumber } from './measure-in';
import { namedPiece } from './named-piece';
import type { PrintedList } from './size-list-at';
import { bySize, shapedRows } from './taper-of';
import type {
  ImportDiagnostic,
  PerSize,
  StatedGauge,
  StatedMultiple,
  StatedParting,
  StatedPiece,
  StatedStart,
  StatedStretch,
  TextRange,
} from './types';

type Counts = readonly (number | null)[];
type Open = { -readonly [Key in keyof StatedPiece]: StatedPiece[Key] } & { stretches: StatedStretch[] };

/** What the pattern at large tells a piece. */
export interface PieceContext {
  readonly sizes: readonly string[];
  gaugeFor(fabric: string): StatedGauge | undefined;
  report(diagnostic: ImportDiagnostic): void;
}

/**
 * Builds pieces from instructions, one after another, and keeps the count of each size as it goes: where the pattern
 * says a count, it is compared, and the pattern's count is gone on with.
 */
export class PieceReader {
  readonly pieces: StatedPiece[] = [];
  #open: Open | undefined;
  #counts: Counts = [];
  #rows: number[] = [];
  #fabric = '';
  /** A fabric named under a heading, before the piece begins. */
  #fabricBefore = '';
  #label = '';
  /** Headings since the last instruction. */
  #headings: string[] = [];
  /** A foundation chain whose first row has not told its stitches yet. */
  #chain: TextRange | undefined;
  /** Whether the last stitches of the piece at hand were bound off or held. */
  #ended = false;
  readonly #context: PieceContext;

  constructor(context: PieceContext) {
    this.#context = context;
  }

  get inPiece(): boolean {
    return this.#open !== undefined || this.#chain !== undefined;
  }

  heading(text: string): void {
    this.#headings.push(text);
  }

  /**
   * The piece under a heading is worked as another: it gets the same stretches. False where the heading may be of a part
   * of the piece at hand, or the other goes on in parts of its own; what follows is then no part of a piece before it.
   */
  sameAs(label: string, range: TextRange): boolean {
    const [heading, ...parts] = this.#headings;
    const between = this.#open !== undefined && !this.#ended;
    const at = this.pieces.findIndex((piece) => piece.label === label);
    const inParts = this.pieces.slice(at + 1).some(({ start }) => start.kind === 'from');
    this.leave();
    if (heading === undefined || parts.length > 0 || between || inParts) return false;
    this.pieces.push({ ...this.pieces[at]!, ...namedPiece(heading), range });
    return true;
  }

  /** Ends the piece at hand: what follows is no instruction. */
  leave(): void {
    this.#open = undefined;
    this.#chain = undefined;
    this.#headings = [];
  }

  multiple(multiple: StatedMultiple): boolean {
    if (!this.#open) return false;
    this.#open.multiple = multiple;
    this.#checkMultiple(this.#open, multiple);
    return true;
  }

  /** Takes an instruction; gives what it was read as, or undefined where it could not be taken. */
  accept(
    instruction: Instruction,
    says: PrintedList | undefined,
    line: LogicalLine,
    range: TextRange,
  ): string | undefined {
    const before = this.#open && this.#counts;
    const piece = this.#open;
    const taken = this.#addInstruction(instruction, says, line, range);
    if (before && this.#open === piece) {
      const message = tooFew(this.#context.sizes, before, this.#counts);
      if (message) this.#context.report({ range, kind: 'contradiction', message });
      this.#counts = this.#counts.map((count) => (count !== null && count < 1 ? null : count));
    }
    return taken;
  }

  #addInstruction(
    instruction: Instruction,
    says: PrintedList | undefined,
    line: LogicalLine,
    range: TextRange,
  ): string | undefined {
    const unread = (list: PrintedList, message: string): void =>
      this.#context.report({ range: line.range(list.from, list.to), kind: 'unread', message });
    /** Whether a number is cut by a comma, which is then said. */
    const cut = (list: PrintedList, kept: string): boolean => {
      const found = list.from < list.to ? cutByComma(line.text, list.from, list.to) : undefined;
      if (found === undefined) return false;
      unread(
        list,
        `A comma stands within “${found}”: write a number of more than 999 without one, or part two numbers with a space${kept}.`,
      );
      return true;
    };
    const lists = (...given: (PrintedList | undefined)[]): PerSize[] | undefined => {
      const read: PerSize[] = [];
      for (const list of given) {
        if (!list) continue;
        const values = bySize(list.values, this.#context.sizes.length);
        if (!values) {
          unread(list, wrongNumber(list, this.#context.sizes.length)!);
          return undefined;
        }
        read.push(values);
      }
      return read;
    };
    /** Stitches and rows by size; none where one of them cannot be a count. */
    const counts = (...given: (PrintedList | undefined)[]): PerSize[] | undefined => {
      if (given.some((list) => list && cut(list, '; the line is kept as it stands'))) return undefined;
      const read = lists(...given);
      const wrong = read?.map((values) => noCounts(this.#context.sizes, values, 0));
      const at = wrong?.findIndex((one) => one !== undefined) ?? -1;
      if (at < 0) return read;
      unread(
        given.filter((list) => list !== undefined)[at]!,
        `${wrong![at]!} Stitches and rows are whole numbers up to ${mostOfAny}: correct this one; the line is kept as it stands.`,
      );
      return undefined;
    };
    /** The stitches a piece begins on: none in a size where it cannot begin on so many. */
    const begins = (list: PrintedList): PerSize | undefined => {
      if (cut(list, '')) return this.#context.sizes.map(() => null);
      const [read] = lists(list) ?? [];
      const wrong = read && noCounts(this.#context.sizes, read, 1);
      if (!wrong) return read;
      unread(
        list,
        `${wrong} Stitches to begin on are whole numbers from 1 to ${mostOfAny}: correct them, or write a dash for a size that has none.`,
      );
      return read.map((count) => (count !== null && canBeCount(count, 1) ? count : null));
    };
    const whole = says && cutByComma(line.text, says.from, says.to) === undefined ? says : undefined;
    const stated = whole && bySize(whole.values, this.#context.sizes.length);
    if (whole && !stated) lists(whole);
    const saysRange = says && line.range(says.from, says.to);
    const end = (): void => this.#compare(stated, saysRange);
    const label = (fallback: string): string => this.#labelOf(fallback);

    switch (instruction.do) {
      case 'start': {
        const count = begins(instruction.count);
        if (!count) return undefined;
        if (instruction.chain && !stated) {
          this.#begin({ kind: 'new', count: count.map(() => null), range }, range);
          this.#chain = range;
          return 'a foundation chain';
        }
        this.#begin({ kind: 'new', count: instruction.chain ? stated! : count, range }, range);
        if (!instruction.chain) end();
        return 'the start of a piece';
      }
      case 'ratio': {
        const ratio = { pick: instruction.pick, of: instruction.of };
        if (stated) this.#begin({ kind: 'picked up', count: stated, ...ratio, range }, range);
        else if (this.#open?.start.kind === 'picked up') this.#open.start = { ...this.#open.start, ...ratio };
        else return undefined;
        return 'a pick-up ratio';
      }
      case 'pick up': {
        const count = begins(instruction.count);
        if (!count) return undefined;
        this.#begin({ kind: 'picked up', count, pick: undefined, of: undefined, range }, range);
        end();
        return 'stitches picked up';
      }
      case 'go on': {
        const count = begins(instruction.count);
        if (!count) return undefined;
        this.#begin({ kind: 'from', count, piece: instruction.piece, range }, range);
        end();
        return 'stitches gone on with';
      }
      case 'round':
        if (this.#open) this.#open.worked = 'round';
        return this.#open ? 'worked in the round' : undefined;
      case 'fabric':
        if (instruction.fabric === '' || (!this.#open && this.#headings.length === 0)) return undefined;
        this.#fabric = instruction.fabric;
        if (this.#headings.length > 0) this.#fabricBefore = instruction.fabric;
        return 'a fabric';
      default:
    }
    const open = this.#open;
    if (!open) return undefined;
    switch (instruction.do) {
      case 'even': {
        const [rows] = counts(instruction.rows) ?? [];
        if (!rows) return undefined;
        if (instruction.fabric) this.#fabric = instruction.fabric;
        const from = instruction.from ?? 1;
        this.#add({
          kind: 'even',
          rows: rows.map((row) => (row === null ? 0 : row - from + 1)),
          label: label(this.#fabric || 'Even'),
          fabric: this.#fabric,
          range,
        });
        end();
        return 'even rows';
      }
      case 'until': {
        const [lengths] = lists(instruction.length) ?? [];
        if (!lengths) return undefined;
        if (instruction.fabric) this.#fabric = instruction.fabric;
        const unit = instruction.length.units[0];
        const gauge = this.#context.gaugeFor(this.#fabric)?.rows;
        const at = line.range(instruction.length.from, instruction.length.to);
        if (!unit || instruction.length.units.length > 1) {
          this.#context.report({
            range: at,
            kind: 'unread',
            message: unit
              ? 'This length mixes cm and inches: keep one of them.'
              : 'This length has no unit: write cm or in after it.',
          });
          return undefined;
        }
        if (!gauge) {
          this.#context.report({
            range: at,
            kind: 'unread',
            message:
              'No row gauge is stated, so this length cannot be turned into rows: add it to the gauge, or write the rows.',
          });
          return undefined;
        }
        const rows = lengths.map((length, size) => {
          if (length === null) return null;
          const cm = unit === 'in' ? length * 2.54 : length;
          const exact = cm * gauge - (instruction.from === 'start' ? this.#rows[size]! : 0);
          // Flat pieces turn on the right side again.
          return Math.max(0, open.worked === 'flat' ? 2 * Math.round(exact / 2) : Math.round(exact));
        });
        const wrong = noCounts(this.#context.sizes, rows, 0);
        if (wrong) {
          unread(
            instruction.length,
            `In rows: ${uncapital(wrong)} Rows are whole numbers up to ${mostOfAny}: correct this length; the line is kept as it stands.`,
          );
          return undefined;
        }
        this.#add({ kind: 'even', rows, label: label(this.#fabric || 'Even'), fabric: this.#fabric, range });
        end();
        return `${rows.filter((row) => row !== null).join(', ')} rows, worked out of a length at the stated gauge`;
      }
      case 'taper': {
        const given = counts(
          instruction.each,
          ...instruction.runs.flatMap(({ every, times }) => [every === 1 ? undefined : every, times]),
        );
        if (!given) return undefined;
        const [each] = given as [PerSize];
        const some = each.find((value) => value !== null) ?? null;
        if (some === null || each.some((value) => value !== null && value !== some)) return undefined;
        let next = 1;
        const runs = instruction.runs.map(({ every }) => ({
          every: every === 1 ? undefined : given[next++]!,
          times: given[next++]!,
        }));
        const never = runs.findIndex(({ every }) => every?.includes(0));
        if (never >= 0) {
          unread(
            instruction.runs[never]!.every as PrintedList,
            'It shapes on every 0th row, and there is none: correct that number; the line is kept as it stands.',
          );
          return undefined;
        }
        // "Every 6th row 8 times" counts the next row in where it does not say "more" or "then".
        const shapes = this.#context.sizes.map((_size, size) =>
          shapedRows(
            instruction.next,
            runs.map(({ every, times }) => ({
              every: every ? (every[size] ?? 1) : 1,
              times: times[size] ?? 0,
            })),
          ),
        );
        const perRow = some * instruction.ends;
        const step = instruction.way === 'dec' ? -perRow : perRow;
        this.#counts = this.#counts.map((count, size) =>
          count === null ? null : count + step * shapes[size]!.shaped.length,
        );
        this.#add({
          kind: 'taper',
          way: instruction.way,
          perRow,
          shaped: shapes.map(({ shaped }) => shaped),
          over: shapes.map(({ over }) => over),
          label: label(instruction.edge ? `${instruction.edge} shaping` : 'Shaping'),
          fabric: this.#fabric,
          range,
        });
        end();
        return 'shaping over rows';
      }
      case 'evenly': {
        const [by] = counts(instruction.by) ?? [];
        if (!by) return undefined;
        const change = by.map((many) => (many === null ? 0 : instruction.way === 'dec' ? -many : many));
        this.#counts = this.#counts.map((count, size) => (count === null ? null : count + change[size]!));
        this.#add({ kind: 'evenly', change, label: label('Shaped evenly'), fabric: this.#fabric, range });
        end();
        return 'a row shaped evenly';
      }
      case 'each repeat': {
        const given = counts(instruction.by, instruction.repeats);
        const one = given?.[0]?.[0];
        if (!given || one === null || one === undefined) return undefined;
        const by = instruction.way === 'dec' ? -one : one;
        const repeats = given[1] ?? this.#repeats();
        if (!repeats) return undefined;
        this.#counts = this.#counts.map((count, size) =>
          count === null ? null : count + by * (repeats[size] ?? 0),
        );
        this.#add({
          kind: 'eachRepeat',
          repeats,
          by,
          label: label('Shaped in each repeat'),
          fabric: this.#fabric,
          range,
        });
        end();
        return 'a row shaped in each repeat';
      }
      case 'leave':
      case 'add': {
        const [stitches] = counts(instruction.stitches) ?? [];
        if (!stitches) return undefined;
        const at = instruction.at;
        const none = stitches.map(() => 0);
        const whole = stitches.map((many) => many ?? 0);
        const own = label(instruction.do === 'leave' ? 'Stitches left' : 'Stitches added');
        const sign = instruction.do === 'leave' ? -1 : 1;
        for (let row = 0; row < instruction.rows; row++) {
          const both = at === 'both' ? 2 : 1;
          this.#counts = this.#counts.map((count, size) =>
            count === null ? null : count + sign * both * whole[size]!,
          );
          this.#add({
            kind: instruction.do,
            atStart: at === 'end' ? none : whole,
            atEnd: at === 'start' ? none : whole,
            label: own,
            fabric: this.#fabric,
            range,
          });
          this.#add({
            kind: 'even',
            rows: whole.map(() => 1),
            fixed: true,
            label: own,
            fabric: this.#fabric,
            range,
          });
        }
        end();
        return instruction.do === 'leave' ? 'stitches left at the ends' : 'stitches added at the ends';
      }
      case 'ends': {
        const given = counts(instruction.start, instruction.end);
        if (!given) return undefined;
        const none = this.#counts.map(() => 0);
        const read = [...given];
        const atStart = (instruction.start ? read.shift()! : none).map((many) => many ?? 0);
        const atEnd = (instruction.end ? read.shift()! : none).map((many) => many ?? 0);
        const sign = instruction.add ? 1 : -1;
        this.#counts = this.#counts.map((count, size) =>
          count === null ? null : count + sign * (atStart[size]! + atEnd[size]!),
        );
        const common = {
          label: label(instruction.add ? 'Stitches added' : 'Stitches left'),
          fabric: this.#fabric,
          range,
        };
        this.#add({ kind: instruction.add ? 'add' : 'leave', atStart, atEnd, ...common });
        if (instruction.even) {
          this.#add({ kind: 'even', rows: this.#counts.map(() => 1), fixed: true, ...common });
        }
        end();
        return instruction.add ? 'stitches added at the ends' : 'stitches left at the ends';
      }
      case 'part': {
        const given = lists(instruction.side, instruction.middle);
        if (!given) return undefined;
        const [side, middle] = given as [PerSize, PerSize];
        this.#part({ side, middle, range });
        if (instruction.held) open.ends = 'held';
        else this.#open = undefined;
        this.#headings = [];
        return 'a row parted in three';
      }
      case 'end': {
        const given = lists(instruction.count);
        if (!given) return undefined;
        const [count] = given;
        if (count) this.#compare(count, line.range(instruction.count!.from, instruction.count!.to));
        open.ends = instruction.held ? 'held' : 'bound off';
        this.#ended = true;
        return instruction.held ? 'stitches held' : 'the end of a piece';
      }
    }
  }

  /** The counts there are now; undefined outside a piece. */
  get counts(): PerSize | undefined {
    return this.#open && !this.#chain ? this.#counts : undefined;
  }

  /** Says of the piece at hand that there are two, the other its mirror. */
  mirrored(): boolean {
    const last = this.#open ?? this.pieces.at(-1);
    if (!last) return false;
    (last as Open).make = 2;
    return true;
  }

  /** Takes rows that were counted one by one: shaping over rows where every size has the same step, else row by row. */
  counted(rows: RowsBySize, range: TextRange): string | undefined {
    const before = this.#counts;
    const steps = rows.map((list, size) =>
      list === null ? [] : list.map((count, row) => count - (row === 0 ? before[size]! : list[row - 1]!)),
    );
    const changes = [...new Set(steps.flat().filter((step) => step !== 0))];
    const most = Math.max(...rows.map((list) => list?.length ?? 0));
    const base = { fabric: this.#fabric, range };
    const accept = (): void => {
      this.#counts = rows.map((list, size) => (list === null ? null : (list.at(-1) ?? before[size]!)));
    };
    if (changes.length === 0) {
      this.#add({
        ...base,
        kind: 'even',
        rows: rows.map((list) => list?.length ?? 0),
        label: this.#labelOf(this.#fabric || 'Even'),
      });
      return 'even rows, counted';
    }
    if (most > 1 && changes.length === 1) {
      const step = changes[0]!;
      this.#add({
        ...base,
        kind: 'taper',
        way: step < 0 ? 'dec' : 'inc',
        perRow: Math.abs(step),
        shaped: steps.map((list) => list.flatMap((change, row) => (change === 0 ? [] : [row + 1]))),
        over: rows.map((list) => list?.length ?? 0),
        label: this.#labelOf('Shaping'),
      });
      accept();
      return 'shaping over rows, counted row by row';
    }
    if (rows.some((list) => list !== null && list.length !== most) || most > 40) return undefined;
    const label = this.#labelOf('Shaped evenly');
    for (let row = 0; row < most; row++) {
      const change = steps.map((list) => list[row] ?? 0);
      this.#add({ ...base, kind: 'evenly', change, label });
    }
    accept();
    return most === 1 ? 'a shaped row, counted stitch by stitch' : 'shaped rows, counted stitch by stitch';
  }

  /** A first row of a chain or an edge, told only by the count it ends on. */
  firstRow(stated: PrintedList, range: TextRange, text: string): string | undefined {
    const count = bySize(stated.values, this.#context.sizes.length);
    if (!count) return undefined;
    const rowOne = /^(?:row|round|rnd) 1\b/iu.test(text);
    if (this.#chain && this.#open) {
      this.#chain = undefined;
      this.#open.start = { kind: 'new', count, range };
      this.#counts = count;
    } else if (rowOne && /\bjoin (?:the )?yarn\b/iu.test(text)) {
      this.#begin({ kind: 'picked up', count, pick: undefined, of: undefined, range }, range);
    } else return undefined;
    const open = this.#open as Open | undefined;
    if (open && /^(?:round|rnd)/iu.test(text)) open.worked = 'round';
    if (rowOne)
      this.#add({
        kind: 'even',
        rows: count.map(() => 1),
        label: this.#labelOf('First row'),
        fabric: this.#fabric,
        range,
      });
    return rowOne ? 'a first row' : 'the start of a piece';
  }

  /** Compares a count that a sentence says without telling how it is come by. */
  saysOnly(stated: PrintedList, line: LogicalLine): boolean {
    const count = bySize(stated.values, this.#context.sizes.length);
    if (!count || !this.#open) return false;
    this.#compare(count, line.range(stated.from, stated.to));
    return true;
  }

  #repeats(): PerSize | undefined {
    const multiple = this.#open?.multiple;
    if (!multiple) return undefined;
    const repeats = this.#counts.map((count) =>
      count === null ? null : (count - multiple.plus) / multiple.multiple,
    );
    return repeats.every((many) => many === null || Number.isInteger(many)) ? repeats : undefined;
  }

  #labelOf(fallback: string): string {
    if (this.#headings.length > 0) this.#label = this.#headings.at(-1)!;
    this.#headings = [];
    return this.#label || capital(fallback);
  }

  #begin(start: StatedStart, range: TextRange): void {
    const before = this.#open ?? this.pieces.at(-1);
    const heading = this.#headings[0] ?? (before ? `${before.label}, next part` : 'Piece');
    this.#label = this.#headings.length > 1 ? this.#headings.at(-1)! : '';
    this.#headings = [];
    const { label, make } = namedPiece(heading);
    const same = this.pieces.filter(
      (piece) => piece.label === label || piece.label.startsWith(`${label} (`),
    ).length;
    const inRound = before !== undefined && start.kind === 'from' && before.worked === 'round';
    this.#open = {
      label: same > 0 ? `${label} (${same + 1})` : label,
      worked: inRound ? 'round' : 'flat',
      make,
      start,
      stretches: [],
      ends: 'bound off',
      range,
    };
    this.pieces.push(this.#open);
    this.#ended = false;
    this.#counts = start.count;
    this.#rows = start.count.map(() => 0);
    this.#chain = undefined;
    if (start.kind !== 'from' || this.#fabricBefore) this.#fabric = this.#fabricBefore;
    this.#fabricBefore = '';
  }

  #add(stretch: StatedStretch): void {
    this.#fabricBefore = '';
    this.#open!.stretches.push(stretch);
    const rows =
      stretch.kind === 'even'
        ? stretch.rows
        : stretch.kind === 'taper'
          ? stretch.over
          : stretch.kind === 'leave' || stretch.kind === 'add'
            ? undefined
            : this.#rows.map(() => 1);
    this.#rows = this.#rows.map((done, size) => done + (rows?.[size] ?? 0));
  }

  #part(parting: StatedParting): void {
    const open = this.#open!;
    open.parted = parting;
    this.#compareLists(
      parting.side.map((side, size) =>
        side === null || parting.middle[size] === null || parting.middle[size] === undefined
          ? null
          : 2 * side + parting.middle[size]!,
      ),
      parting.range,
      (stated, count) => `two sides and the middle are ${stated}, and there are ${count} stitches`,
    );
  }

  #compare(stated: PerSize | undefined, range: TextRange | undefined): void {
    if (!stated || !range) return;
    this.#compareLists(
      stated,
      range,
      (says, count) => `the line comes to ${count}, and the pattern says ${says}`,
    );
    const open = this.#open;
    const last = open?.stretches.at(-1);
    if (open && last) open.stretches[open.stretches.length - 1] = { ...last, says: { count: stated, range } };
    this.#counts = this.#counts.map((count, size) => stated[size] ?? count);
  }

  #compareLists(
    stated: PerSize,
    range: TextRange,
    sentence: (statement: number, count: number) => string,
  ): void {
    const message = countsApart(this.#context.sizes, stated, this.#counts, sentence);
    if (message) this.#context.report({ range, kind: 'contradiction', message });
  }

  #checkMultiple(open: Open, multiple: StatedMultiple): void {
    const message = noMultiple(this.#context.sizes, open.start.count, multiple);
    if (message) this.#context.report({ range: multiple.range, kind: 'contradiction', message });
  }
}
