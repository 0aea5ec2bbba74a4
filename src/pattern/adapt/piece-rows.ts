import { type Cell, type Entry, f } from '../../notebook';
import type { Fabric } from './fabrics';
import type { BothWays, Making } from './making';
import { RowChain, rowsCell, type RowsNeeded } from './numbers';
import type { GarmentPart, RowZone } from './parts';
import type { PieceCells } from './piece-cells';
import type { Shape } from './shape-of';

/** The rows of a stretch, with the cells they are in where they follow the gauge. */
export interface MadeRows extends BothWays<Entry> {
  readonly cells?: BothWays<Cell>;
}

/** The rows of a piece, stretch by stretch, told from the first row on. */
export class PieceRows {
  readonly #making: Making;
  readonly #part: GarmentPart;
  readonly #cells: PieceCells;
  readonly #chain: RowChain;

  constructor(making: Making, part: GarmentPart, cells: PieceCells) {
    this.#making = making;
    this.#part = part;
    this.#cells = cells;
    const base = part.base && making.chains.get(part.base);
    this.#chain = base?.copy() ?? new RowChain(making.adapting.pattern.sizes.length);
    making.chains.set(part, this.#chain);
  }

  /** @param needed the rows that the shaping of a taper takes, as a formula */
  of(shape: Shape, zone: RowZone, fabric: Fabric, name: string, needed?: string): MadeRows {
    const { adapting, scales } = this.#making;
    if (shape.fixed) {
      // Of the armhole all rows are shared out; below it and in a sleeve only those that follow the gauge.
      this.#chain.fixed(zone, shape.rows, zone === 'armhole' ? scales.down(zone, fabric) : '');
      return { printed: f('ROWS(1)'), mine: f('ROWS(1)') };
    }
    const what = `${shape.label.toLowerCase()}, rows`;
    const printed = this.#cells.rows(shape.rows, zone, what, name);
    const mine = rowsCell(
      adapting,
      this.#chain.elastic(
        printed.name,
        shape.rows,
        scales.down(zone, fabric),
        needed === undefined ? undefined : this.#needed(needed, shape),
      ),
      this.#cells.labelled(what),
      `${this.#cells.short}_${name}_rows_again`,
    );
    this.#chain.worked(zone, mine.name);
    this.#cells.furtherCells(what, printed, mine);
    return { printed: f(printed.name), mine: f(mine.name), cells: { printed, mine } };
  }

  /** What a taper needs, with the plain rows after it: where rows are short, shaping comes before them. */
  #needed(rows: string, shape: Shape): RowsNeeded {
    const { fabrics, scales } = this.#making;
    const { shapes, rowZones } = this.#part;
    const at = shapes.indexOf(shape) + 1;
    const next = shapes[at];
    if (!next || next.kind !== 'even' || next.fixed || rowZones[at] === 'kept') return { rows };
    const zone = rowZones[at]!;
    const what = `${next.label.toLowerCase()}, rows`;
    return {
      rows,
      next: {
        printed: this.#cells.rows(next.rows, zone, what, 'rows_after').name,
        rows: next.rows,
        scale: scales.down(zone, fabrics.for(next.fabric)),
      },
    };
  }
}
