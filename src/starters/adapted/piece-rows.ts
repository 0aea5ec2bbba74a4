import type { Cell, Entry } from '../../notebook';
import { f } from '../cells';
import { statedCell } from './adapting';
import type { Fabric } from './fabrics';
import type { BothWays, Making } from './making';
import { RowChain, rowsCell, sizeOfRows } from './numbers';
import type { Part, RowZone } from './parts';
import type { PieceCells } from './piece-cells';
import type { Shape } from './shape-of';

/** The rows of a stretch, with the cells they are in where they follow the gauge. */
export interface MadeRows extends BothWays<Entry> {
  readonly cells?: BothWays<Cell>;
}

/** The rows of a piece, stretch by stretch: each zone and fabric is told from the piece's first row on. */
export class PieceRows {
  readonly #making: Making;
  readonly #cells: PieceCells;
  readonly #chains = new Map<string, RowChain>();

  constructor(making: Making, part: Part, cells: PieceCells) {
    this.#making = making;
    this.#cells = cells;
    if (part.base) this.#continue(part.base);
  }

  of(shape: Shape, zone: RowZone, fabric: Fabric, name: string): MadeRows {
    const chain = this.#chain(zone, fabric);
    if (shape.fixed) {
      chain.fixed(shape.rows);
      return { printed: f('ROWS(1)'), mine: f('ROWS(1)') };
    }
    const { adapting, scales } = this.#making;
    const what = `${shape.label.toLowerCase()}, rows`;
    const printed = this.#cells.rows(shape.rows, zone, what, name);
    const mine = rowsCell(
      adapting,
      chain.elastic(printed.name, shape.rows, scales.down(zone, fabric)),
      this.#cells.labelled(what),
      `${this.#cells.short}_${name}_rows_again`,
    );
    this.#cells.besides(what, printed, mine);
    return { printed: f(printed.name), mine: f(mine.name), cells: { printed, mine } };
  }

  #chain(zone: RowZone, fabric: Fabric): RowChain {
    const key = `${zone} ${fabric.mine}`;
    const chain = this.#chains.get(key) ?? new RowChain(this.#making.adapting.pattern.sizes.length);
    this.#chains.set(key, chain);
    return chain;
  }

  /** A piece that goes on with another's stitches goes on with its rows, too. */
  #continue(base: Part): void {
    const { adapting, fabrics, scales } = this.#making;
    if (base.base) this.#continue(base.base);
    base.shapes.forEach((shape, at) => {
      const zone = base.rowZones[at]!;
      const fabric = fabrics.for(shape.fabric);
      const chain = this.#chain(zone, fabric);
      if (shape.kind === 'leave' || shape.kind === 'add') return;
      if (shape.fixed) return chain.fixed(shape.rows);
      const cell = statedCell(adapting, {
        values: shape.rows,
        unit: 'rows',
        size: sizeOfRows(zone, base.role === 'sleeve'),
        label: `${base.piece.label}: rows`,
        name: 'printed_rows',
      });
      chain.elastic(cell.name, shape.rows, scales.down(zone, fabric));
    });
  }
}
