import { allCells, type Cell, type Entry, type Notebook, type PickUpCell, type PieceCell } from './document';
import { namesIn, readFormula, sameName, type Token } from '../formulas';
import { inputsOf } from './kinds';
import { nameTable, type Named } from './names';

/** An edge of a piece, or a part of it, that is joined to another. */
export interface JoinEdge {
  readonly piece: string;
  /**
   * 'start' and 'end' are the first and the last row, 'row' is the last row of a stretch, 'side' the row ends of a
   * stretch (of the whole piece without one), 'left' the stitches left or added by a stretch.
   */
  readonly edge: 'start' | 'end' | 'row' | 'side' | 'left';
  /** The index of the stretch in the plan. */
  readonly stretch?: number | undefined;
  /**
   * Which row ends, of a piece whose two sides differ: those below and above the stitches left at one side ('stepped'),
   * or the others ('other'). Where a stretch is shaped at one edge alone, 'other' is that edge.
   */
  readonly side?: 'stepped' | 'other' | undefined;
}

/** Edges that are sewn together, or of which one is picked up along the others. */
export interface NotebookJoin {
  readonly id: string;
  readonly label: string;
  readonly edges: readonly JoinEdge[];
}

/** So far a name is followed through other cells to a piece; beyond that it has little to do with the edge. */
const deepest = 4;

/**
 * The joins that a notebook tells of:
 *
 * - a check with `JOINS(…)`: each argument is an edge, by the names it uses;
 * - a pick-up: the edges it goes along, and the first row of the piece worked on it;
 * - a piece that starts on `JOINARMHOLE(…)`: the row ends and the stitches it is picked up from;
 * - a piece that starts on the last stitches of another, or of a stretch of it.
 *
 * A name stands for an edge where it is an output or an input of a piece (`back_end`, `front_lower_worked_rows`), the
 * count a piece starts with, or a cell worked from such names. Lengths and widths stand for no edge: they measure.
 */
export function joinsOf(notebook: Notebook): NotebookJoin[] {
  const reader = new EdgeReader(notebook);
  const joins: NotebookJoin[] = [];
  for (const cell of allCells(notebook)) {
    if (cell.kind === 'check') {
      const edges = argumentsOf(cell.condition, 'JOINS').flatMap((argument) =>
        reader.edgesOf(argument, 'counts').map((edge) => withSide(edge, 'stepped')),
      );
      // A check of one edge alone compares it with a count, not with another edge.
      if (once(edges).length > 1) joins.push({ id: cell.id, label: cell.label, edges: once(edges) });
    }
    if (cell.kind === 'pickUp') {
      const along = cell.edge.flatMap((part) =>
        formulasOf(part).flatMap((formula) =>
          reader
            .edgesOf(formula, part.kind === 'curve' ? 'lengths' : 'counts')
            .map((edge) => withSide(edge, 'other')),
        ),
      );
      const worked = reader.pieces
        .filter(({ start }) => usesMainly(start, cell.name))
        .map((piece): JoinEdge => ({ piece: piece.id, edge: 'start' }));
      const edges = once([...along, ...worked]);
      if (along.length > 0 && worked.length > 0) joins.push({ id: cell.id, label: cell.label, edges });
    }
    if (cell.kind === 'piece') {
      const edges = once(reader.startOf(cell)).filter((edge) => edge.piece !== cell.id);
      if (edges.length > 0) {
        joins.push({ id: cell.id, label: cell.label, edges: [...edges, { piece: cell.id, edge: 'start' }] });
      }
    }
  }
  return joins;
}

class EdgeReader {
  readonly pieces: readonly PieceCell[];
  readonly #cells: ReadonlyMap<string, Cell>;
  readonly #names: ReadonlyMap<string, Named>;

  constructor(notebook: Notebook) {
    const cells = allCells(notebook);
    this.pieces = cells.filter((cell): cell is PieceCell => cell.kind === 'piece');
    this.#cells = new Map(cells.map((cell) => [cell.id, cell]));
    this.#names = nameTable(notebook);
  }

  /** The edges that the names of a formula stand for. */
  edgesOf(formula: string, of: 'counts' | 'lengths', depth = 0): JoinEdge[] {
    const along = of === 'lengths' ? this.#alongEdge(formula) : [];
    if (along.length > 0) return along;
    return namesIn(formula).flatMap((name) => this.#edgesOfName(name, of, depth));
  }

  /** The stretches that `EDGELENGTH(piece; side; first; last)` measures along. */
  #alongEdge(formula: string): JoinEdge[] {
    const [name, , first = '1', last] = argumentsOf(formula, 'EDGELENGTH');
    const named = name === undefined ? undefined : this.#names.get(sameName(name.trim()));
    const piece = this.pieces.find(({ id }) => id === named?.cell);
    if (!piece) return [];
    const [from, to] = [Number(first), Number(last ?? first)];
    return piece.stretches.flatMap(({ kind }, at): JoinEdge[] =>
      at + 1 < from || at + 1 > to || kind === 'leave' || kind === 'add'
        ? []
        : [{ piece: piece.id, edge: 'side', stretch: at }],
    );
  }

  #edgesOfName(name: string, of: 'counts' | 'lengths', depth: number): JoinEdge[] {
    const named = this.#names.get(sameName(name));
    const cell = named && this.#cells.get(named.cell);
    if (!named || !cell || depth > deepest) return [];
    if (cell.kind === 'piece') return edgeAt(cell, named.key, of);
    const started = this.pieces.filter((piece) => usesMainly(piece.start, cell.name));
    // Its multiple says nothing of an edge; its count does.
    if (cell.kind === 'fit' && named.key === 'count' && started.length > 0) {
      return started.map((piece): JoinEdge => ({ piece: piece.id, edge: 'start' }));
    }
    if (cell.kind === 'formula') return this.edgesOf(cell.formula, of, depth + 1);
    return [];
  }

  /** The edges a piece grows from. */
  startOf(piece: PieceCell): JoinEdge[] {
    if (!('formula' in piece.start)) return [];
    for (let formula = piece.start.formula, depth = 0; depth <= deepest; depth++) {
      const [rows, , , underarm] = argumentsOf(formula, 'JOINARMHOLE');
      if (rows !== undefined) {
        return [...this.#shapedBy(rows, 'side'), ...(underarm ? this.#shapedBy(underarm, 'left') : [])];
      }
      const names = namesIn(formula);
      const ends = names.flatMap((name): JoinEdge[] => {
        const named = this.#names.get(sameName(name));
        const cell = named && this.#cells.get(named.cell);
        if (cell?.kind !== 'piece' || cell.id === piece.id) return [];
        return edgeAt(cell, named!.key, 'counts').filter(({ edge }) => edge === 'end' || edge === 'row');
      });
      if (ends.length > 0) return ends;
      const [only] = names;
      const named = names.length === 1 ? this.#names.get(sameName(only!)) : undefined;
      const next = named && this.#cells.get(named.cell);
      if (next?.kind !== 'formula') return [];
      formula = next.formula;
    }
    return [];
  }

  /** The edges of stretches whose rows, or whose stitches left, are worked from the names of a formula. */
  #shapedBy(formula: string, edge: 'side' | 'left'): JoinEdge[] {
    const names = new Set(namesIn(formula));
    const fields = edge === 'side' ? ['rows', 'over'] : ['atStart', 'atEnd'];
    const found = this.pieces.flatMap((piece) =>
      piece.stretches.flatMap((stretch, at): JoinEdge[] => {
        const left = stretch.kind === 'leave' || stretch.kind === 'add';
        if (left !== (edge === 'left')) return [];
        const used = inputsOf(piece)
          .filter(({ key }) => fields.some((field) => key === `${stretch.name}.${field}`))
          .flatMap(({ entry }) => ('formula' in entry ? namesIn(entry.formula) : []));
        if (!used.some((name) => names.has(name))) return [];
        return [withSide({ piece: piece.id, edge, stretch: at }, 'stepped')];
      }),
    );
    // A formula may name an edge directly too.
    return [...found, ...this.edgesOf(formula, 'counts').filter((one) => one.edge === edge)];
  }
}

/** The edge that an output or an input of a piece stands for. */
function edgeAt(piece: PieceCell, key: string, of: 'counts' | 'lengths'): JoinEdge[] {
  const own = { piece: piece.id };
  if (of === 'counts') {
    if (key === 'start' || key === 'end') return [{ ...own, edge: key }];
    if (key === 'rows') return [{ ...own, edge: 'side' }];
  } else if (key === 'length') return [{ ...own, edge: 'side' }];
  const dot = key.indexOf('.');
  const stretch = piece.stretches.findIndex(({ name }) => dot > 0 && name === key.slice(0, dot));
  if (stretch < 0) return [];
  const part = key.slice(dot + 1);
  const left = piece.stretches[stretch]!.kind === 'leave' || piece.stretches[stretch]!.kind === 'add';
  if (left) return of === 'counts' ? [{ ...own, edge: 'left', stretch }] : [];
  if (of === 'lengths')
    return part === 'length' || part === 'edge' ? [{ ...own, edge: 'side', stretch }] : [];
  if (part === 'last') {
    return [
      stretch === piece.stretches.length - 1 ? { ...own, edge: 'end' } : { ...own, edge: 'row', stretch },
    ];
  }
  if (part === 'worked_rows' || part === 'rows' || part === 'over')
    return [{ ...own, edge: 'side', stretch }];
  return [];
}

function withSide(edge: JoinEdge, side: 'stepped' | 'other'): JoinEdge {
  return edge.edge === 'side' ? { ...edge, side } : edge;
}

function once(edges: readonly JoinEdge[]): JoinEdge[] {
  const keys = edges.map((edge) => JSON.stringify(edge));
  return edges.filter((_edge, at) => keys.indexOf(keys[at]!) === at);
}

/** Whether an entry is the thing of that name and no more. */
export function usesMainly(entry: Entry, name: string): boolean {
  return 'formula' in entry && sameName(entry.formula.trim()) === sameName(name);
}

/** The formula that says how much of an edge is picked up along. */
function formulasOf(part: PickUpCell['edge'][number]): string[] {
  const entry =
    part.kind === 'rows'
      ? part.rows
      : part.kind === 'stitches'
        ? part.count
        : part.kind === 'motifs'
          ? part.motifs
          : part.length;
  return 'formula' in entry ? [entry.formula] : [];
}

/** The arguments of every call of a function in a formula, as formulas of their own. */
function argumentsOf(formula: string, called: string): string[] {
  const read = readFormula(formula);
  if ('problem' in read) return [];
  const tokens = read.tokens.filter(({ kind }) => kind !== 'space');
  const found: string[] = [];
  tokens.forEach((token, at) => {
    if (token.kind !== 'function' || token.text !== called) return;
    let depth = 0;
    let argument: Token[] = [];
    // The first token after a function's name is its bracket.
    for (const next of tokens.slice(at + 2)) {
      if (next.kind === 'open') depth++;
      if (next.kind === 'close') depth--;
      if (depth < 0 || (depth === 0 && next.kind === 'separator')) {
        found.push(argument.map(({ text }) => text).join(''));
        argument = [];
        if (depth < 0) break;
      } else argument.push(next);
    }
  });
  return found;
}
