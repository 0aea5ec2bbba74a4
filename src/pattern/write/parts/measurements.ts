import { bracketed, uncapital, writeLength } from '../../../format';
import {
  measureLabel,
  allCells,
  ownColumn,
  upstream,
  type AsMadeCell,
  type EaseCell,
  tableOf,
} from '../../../notebook';
import { namesIn, sameName } from '../../../formulas';
import type { Gathered, WorkedPlan } from '../gathered';
import type { PatternPart, PatternTable } from '../../pattern-document';
import { shown, type Sentences } from '../sentence';
import { notInSize } from '../size-list';
import type { PatternSource } from '../../source';

/** What the garment is made to fit and what it measures, by size; and where its schematic stands. */
export function measurementsPart(
  source: PatternSource,
  found: Gathered,
  sentences: Sentences,
): PatternPart | undefined {
  const { length, decimal } = source.notebook.settings;
  const write = (cm: number | undefined): string =>
    cm === undefined ? notInSize : writeLength(cm, { unit: length, decimal });
  // In a notebook that adapts a pattern what is wished is its maker's, and the pattern's own columns have no part in it.
  const wished = (size: string, cell: EaseCell, key: string): number | undefined =>
    source.notebook.adapts && size !== ownColumn ? undefined : source.number(size, cell.id, key);
  // One that comes to nothing in any size takes the place of no wish.
  const asMade = allCells(source.notebook).filter(
    (cell): cell is AsMadeCell =>
      cell.kind === 'as made' &&
      found.sizes.some(({ id }) => source.number(id, cell.id, 'made') !== undefined),
  );
  const eases = allCells(source.notebook).filter((cell): cell is EaseCell => cell.kind === 'ease');
  const row = (label: string, of: (size: string, sizeIndex: number) => number | undefined): string[] => [
    label,
    ...found.sizes.map(({ id }, sizeIndex) => write(of(id, sizeIndex))),
  ];
  const toFit = eases.map((cell) =>
    row(`To fit: ${uncapital(shown(bodyLabel(source, cell)))}`, (size) => wished(size, cell, 'body')),
  );
  const rows: string[][] = [
    // A body measure that several eases go out from is one line.
    ...new Map(toFit.map((line) => [line.join('\t'), line])).values(),
    ...eases.flatMap((cell) => {
      // What the pieces come to is printed wherever the notebook has it, instead of what is wanted.
      if (asMade.some((made) => isWishOf(source, made, cell))) return [];
      return [row(shown(cell.label), (size) => wished(size, cell, 'finished'))];
    }),
    ...asMade.map((cell) =>
      row(shown(measureLabel(cell.label)), (size) => source.number(size, cell.id, 'made')),
    ),
  ];
  const ofPieces: string[][] = [
    ...found.pieces.flatMap(({ cell, sizes }) => {
      const label = shown(cell.label);
      const round = cell.worked === 'round';
      const width = (worked: WorkedPlan | undefined, of: 'start' | 'end'): number | undefined => {
        const rows = worked?.rows;
        return of === 'start' ? rows?.[0]?.width : rows?.at(-1)?.width;
      };
      const across = round ? 'round' : 'width';
      const start = row(`${label}, ${across} at the start`, (_size, sizeIndex) =>
        width(sizes[sizeIndex], 'start'),
      );
      const end = row(`${label}, ${across} at the end`, (_size, sizeIndex) => width(sizes[sizeIndex], 'end'));
      const same = start.every((value, column) => column === 0 || value === end[column]);
      return [
        ...(same ? [[`${label}, ${across}`, ...start.slice(1)]] : [start, end]),
        row(`${label}, length`, (_size, sizeIndex) =>
          sizes[sizeIndex]?.rows.reduce((sum, one) => sum + one.height, 0),
        ),
      ];
    }),
  ];
  const inUnit = length === 'cm' ? 'In centimetres' : 'In inches';
  const table = (key: string, caption: string, rows: readonly string[][]): PatternTable[] => {
    const known = rows.filter(([, ...values]) => values.some((value) => value !== notInSize));
    const head = ['', ...found.sizes.map(({ label }) => shown(label))];
    return known.length > 0 ? [{ kind: 'table', key, caption, head, rows: known }] : [];
  };
  if (found.pieces.length === 0 && rows.length === 0) return undefined;
  return {
    key: 'measurements',
    kind: 'measurements',
    heading: 'Finished measurements',
    blocks: [
      ...(found.sizes.length > 1
        ? [
            sentences.paragraph('measurements sizes', 'Numbers stand for the sizes in this order: {sizes}.', {
              sizes: { theirs: bracketed(found.sizes.map((size) => shown(size.label))) },
            }),
          ]
        : []),
      ...table('measurements table', inUnit, rows),
      ...table('measurements of pieces', `${inUnit}, piece by piece`, ofPieces),
      { kind: 'picture slot', key: 'schematic', picture: 'schematic', caption: 'Schematic' },
    ],
  };
}

/** Whether a measurement as made is of this finished measurement: directly, or by cells it goes through. */
function isWishOf({ notebook }: PatternSource, { wish, id }: AsMadeCell, ease: EaseCell): boolean {
  if (!('formula' in wish)) return false;
  const [name, ...others] = namesIn(wish.formula);
  if (name === undefined || others.length > 0) return false;
  const named = tableOf(notebook).get(sameName(name));
  if (!named || named.cell === id) return false;
  return named.cell === ease.id || upstream(notebook, named.cell).includes(ease.id);
}

/** What the body measure of an ease is called: the cell its formula names, or what the ease itself finishes. */
function bodyLabel(source: PatternSource, cell: EaseCell): string {
  if ('formula' in cell.body) {
    const [name] = namesIn(cell.body.formula);
    const named = name === undefined ? undefined : tableOf(source.notebook).get(sameName(name));
    if (named) return named.label;
  }
  return cell.label.replace(/\bfinished\s+(?=\S)/iu, '');
}
