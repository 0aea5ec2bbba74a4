import type { Cell } from '../../notebook';
import type { PerSize } from '../read';
import { statedCell } from './adapting';
import { fabricOf } from './fabrics';
import type { Making } from './making';
import { furtherNumbers, fittedCell, sizeOfRows, sizeOfStitches, type CountRule } from './numbers';
import type { GarmentPart, RowZone, StitchZone } from './parts';
import { shortName } from './cell-collector';

/** The cells of one piece's numbers: each as the pattern prints it, and fitted again beside it. */
export class PieceCells {
  /** What the names of its cells are built on. */
  readonly short: string;
  readonly #making: Making;
  readonly #part: GarmentPart;

  constructor(making: Making, part: GarmentPart) {
    this.#making = making;
    this.#part = part;
    this.short = shortName(part.piece.label);
  }

  labelled(what: string): string {
    return `${this.#part.piece.label}: ${what}`;
  }

  /** A count of stitches as the pattern prints it. */
  count(values: PerSize, zone: StitchZone, what: string, called: string): Cell {
    return statedCell(this.#making.adapting, {
      values,
      unit: 'stitches',
      size: sizeOfStitches[zone],
      label: this.labelled(what),
      name: `printed_${this.short}_${called}`,
    });
  }

  /** Rows as the pattern prints them. */
  rows(values: PerSize, zone: RowZone, what: string, called: string): Cell {
    return statedCell(this.#making.adapting, {
      values,
      unit: 'rows',
      size: sizeOfRows(zone, this.#part.role === 'sleeve'),
      label: this.labelled(what),
      name: `printed_${this.short}_${called}`,
    });
  }

  /** How many of my stitches stand for one of the pattern's: the name of a cell. */
  across(zone: StitchZone): string {
    return this.#making.scales.across(zone, fabricOf(this.#part, this.#making.fabrics));
  }

  /** A printed count, fitted again under a rule: a cell beside the printed one. It may have a target of its own. */
  fitted(
    printed: Cell,
    zone: StitchZone,
    rule: CountRule,
    what: string,
    called: string,
    target?: string,
  ): Cell {
    const { adapting } = this.#making;
    const cell = fittedCell(adapting, {
      printed,
      across: this.across(zone),
      ...(target === undefined ? {} : { target }),
      rule,
      label: this.labelled(what),
      name: `${this.short}_${called}_sts`,
    });
    this.furtherCells(what, printed, cell);
    return cell;
  }

  furtherCells(what: string, printed: Cell, mine: Cell): void {
    furtherNumbers(this.#making.adapting, this.#part.piece.label, what, printed, mine);
  }

  /** The rule for counts: the piece's own repeat where every one of them keeps it, or any whole number. */
  ruleFor(values: PerSize, from?: CountRule['from']): CountRule {
    const rule = this.#part.piece.multiple;
    const keeps = rule && values.every((count) => count === null || fillsRepeats(count, rule));
    return {
      ...(keeps ? { multiple: rule.multiple, plus: rule.plus } : { multiple: 1, plus: 0 }),
      ...(from ? { from } : {}),
    };
  }
}

function fillsRepeats(count: number, { multiple, plus }: { multiple: number; plus: number }): boolean {
  return count >= multiple + plus && (count - plus) % multiple === 0;
}
