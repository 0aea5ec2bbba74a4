import { uncapital } from '../../format';
import { allCells, cellById, ownColumn, type EaseCell } from '../../notebook';
import { namesIn, sameName } from '../../formulas';
import { asRead, lengths, type Expected } from './expected';
import type { Garment, MeantPiece } from './garment';
import { schematicMeant } from './schematic';
import { asMadeCells, isMadeOf, madeOf } from './made';

/**
 * What the tables of measurements have to say: what is wished, or instead of it what is made where the notebook has that,
 * and what the rows of every piece come to: by the letters of the schematic, where it stands there.
 */
export function measurementsMeant(garment: Garment, schematic: 'with its schematic' | 'alone'): Expected[] {
  const { source, sizes, pieces } = garment;
  const labels = sizes.map(({ label }) => asRead(label));
  const eases = allCells(source.notebook).filter((cell): cell is EaseCell => cell.kind === 'ease');
  const wished = (cell: EaseCell, key: string): (number | null)[] =>
    sizes.map(({ id }) =>
      source.notebook.adapts && id !== ownColumn ? null : (source.number(id, cell.id, key) ?? null),
    );
  const made = asMadeCells(garment);
  const unmade = eases.filter((cell) => !made.some((one) => isMadeOf(garment, one, cell)));
  const rows = [
    ...eases.map((cell) => row(garment, `To fit: ${uncapital(bodyOf(garment, cell))}`, wished(cell, 'body'))),
    ...unmade.map((cell) => row(garment, asRead(cell.label), wished(cell, 'finished'))),
    ...made.map((cell) => row(garment, madeLabel(asRead(cell.label)), madeOf(garment, cell))),
    ...(schematic === 'alone' ? pieces.flatMap((piece) => pieceRows(garment, piece)) : []),
  ];
  const meant = rows.filter(({ known }) => known).map(({ expected }) => expected);
  return [
    ...(labels.length > 1 ? [{ name: 'order of the sizes', of: '', facts: { sizes: inOrder(labels) } }] : []),
    { name: 'sizes of a table', of: '', facts: { sizes: labels.join(' | ') }, anyTimes: true },
    // A body measure that several wishes go out from is one line.
    ...new Map(meant.map((one) => [JSON.stringify(one), one])).values(),
    ...(schematic === 'alone' ? [] : schematicMeant(garment)),
  ];
}

/** "S (M, L)" */
export function inOrder([first = '', ...rest]: readonly string[]): string {
  return rest.length > 0 ? `${first} (${rest.join(', ')})` : first;
}

/** A row of a table, and whether there is a number in it. */
interface MeantRow {
  readonly expected: Expected;
  readonly known: boolean;
}

function row({ source }: Garment, of: string, cm: readonly (number | null)[]): MeantRow {
  const unit = source.notebook.settings.length;
  return {
    expected: { name: 'measurement', of, facts: { values: lengths(cm, unit), unit } },
    known: cm.some((value) => value !== null),
  };
}

/** What is printed is as made, and does not say so. */
function madeLabel(label: string): string {
  const without = label.replace(/,?\s+as made$/iu, '');
  return without === '' ? label : without;
}

/** What the body measure of a wish is called: the cell that its formula names first, or what it finishes itself. */
function bodyOf({ source: { notebook }, names }: Garment, cell: EaseCell): string {
  const name = 'formula' in cell.body ? namesIn(cell.body.formula)[0] : undefined;
  const named = name === undefined ? undefined : names.get(sameName(name));
  const label = named && (named.label ?? cellById(notebook, named.cell)?.label);
  return asRead(label ?? cell.label.replace(/\bfinished\s+(?=\S)/iu, ''));
}

function pieceRows(garment: Garment, { cell, worked }: MeantPiece): MeantRow[] {
  const label = asRead(cell.label);
  const across = cell.worked === 'round' ? 'round' : 'width';
  const start = worked.map(({ rows }) => rows[0]!.width);
  const end = worked.map(({ rows }) => rows.at(-1)!.width);
  const steps = garment.source.notebook.settings.length === 'cm' ? 10 : 8 / 2.54;
  const rounded = (cm: number): number => Math.round(cm * steps + 1e-9);
  const alike = start.every((cm, at) => rounded(cm) === rounded(end[at]!));
  return [
    ...(alike
      ? [row(garment, `${label}, ${across}`, start)]
      : [
          row(garment, `${label}, ${across} at the start`, start),
          row(garment, `${label}, ${across} at the end`, end),
        ]),
    row(
      garment,
      `${label}, length`,
      worked.map(({ rows }) => rows.reduce((sum, { height }) => sum + height, 0)),
    ),
  ];
}
