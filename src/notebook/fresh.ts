import { allCells, type EdgePart, type Notebook, type PieceCell, type PieceStretch } from './document';
import { sameName } from '../formulas';
import { nameFrom } from './names';

const empty = { value: null };
const of = (value: number): { value: number } => ({ value });

/** The name of the first swatch; a name for one that is still to come where there is none. */
export function firstFabric(notebook: Notebook): string {
  return allCells(notebook).find((cell) => cell.kind === 'swatch')?.name ?? 'fabric';
}

const stretchLabels: Record<PieceStretch['kind'], string> = {
  even: 'Even',
  taper: 'Taper',
  evenly: 'Shaped evenly',
  eachRepeat: 'Shaped in each repeat',
  gather: 'Gathered',
  leave: 'Stitches left',
  add: 'Stitches added',
  rows: 'Rows by count',
};

/** A new stretch at the end of a piece, with a name that is free there. */
export function freshStretch(piece: PieceCell, kind: PieceStretch['kind'], fabric: string): PieceStretch {
  const label = stretchLabels[kind];
  const base = { name: freeIn(piece.stretches, nameFrom(label)), label, fabric };
  switch (kind) {
    case 'even':
      return { kind, ...base, rows: empty };
    case 'taper':
      return {
        kind,
        ...base,
        to: empty,
        over: empty,
        perRow: of(2),
        every: piece.worked === 'flat' ? 2 : 1,
        before: of(0),
        after: of(0),
        order: 'longFirst',
      };
    case 'evenly':
      return { kind, ...base, to: empty, ends: 'half' };
    case 'eachRepeat':
      return { kind, ...base, repeats: empty, by: of(-1) };
    case 'gather':
      return { kind, ...base, to: empty, rounds: of(2) };
    case 'leave':
    case 'add':
      return { kind, ...base, atStart: of(0), atEnd: of(0) };
    case 'rows':
      return { kind, ...base, counts: [empty] };
  }
}

const edgeLabels: Record<EdgePart['kind'], string> = {
  rows: 'Row ends',
  stitches: 'Stitch tops',
  motifs: 'Motifs',
  curve: 'Curve',
};

/** A new stretch of an edge, with a name that is free among the others. */
export function freshEdge(edge: readonly EdgePart[], kind: EdgePart['kind']): EdgePart {
  const label = edgeLabels[kind];
  const base = { name: freeIn(edge, nameFrom(label)), label };
  switch (kind) {
    case 'rows':
      return { kind, ...base, rows: empty, pick: of(3), of: of(4) };
    case 'stitches':
      return { kind, ...base, count: empty };
    case 'motifs':
      return { kind, ...base, motifs: empty, each: of(1) };
    case 'curve':
      return { kind, ...base, length: empty, gauge: empty };
  }
}

function freeIn(parts: readonly { readonly name: string }[], wish: string): string {
  const taken = new Set(parts.map(({ name }) => sameName(name)));
  for (let number = 1; ; number++) {
    const name = number === 1 ? wish : `${wish}_${number}`;
    if (!taken.has(name)) return name;
  }
}
