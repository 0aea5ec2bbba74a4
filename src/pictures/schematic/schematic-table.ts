import { uncapital } from '../../format';
import { unitWord, type PlotTable } from '../charts';
import { isolated } from './markup';
import { measuresOf, type Measure } from './measures';
import { lengthText } from './size-figures';
import type { SchematicPiece, SchematicSpec } from './types';

/** A measurement with the letter that stands for it on the drawing. */
export interface Lettered extends Measure {
  readonly letter: string;
}

/** All measurements of the pieces, in order, each with its letter: A to Z, then AA, AB … */
export function lettered(pieces: readonly SchematicPiece[]): Lettered[] {
  return pieces.flatMap(measuresOf).map((measure, at) => ({ ...measure, letter: letterAt(at) }));
}

function letterAt(at: number): string {
  const letter = String.fromCharCode(65 + (at % 26));
  return at < 26 ? letter : letterAt(Math.floor(at / 26) - 1) + letter;
}

/**
 * The measurements of a schematic as a table: what a screen reader reads, and what a written pattern prints. In the
 * round there are two lines, the round and the width it lies flat at.
 *
 * @example
 * schematicTable(spec).rows[0] // ['A', 'Back: width at the start', '54.3', '60.0']
 */
export function schematicTable(spec: SchematicSpec): PlotTable {
  const columns = spec.sizes.flatMap(({ id, label }, at) =>
    spec.size === 'all' || spec.size === id ? [{ label, at }] : [],
  );
  const names = new Map(spec.pieces.map(({ id, name }) => [id, name]));
  const rows = lettered(spec.pieces).flatMap((measure) => {
    const line = (label: string, times: number): string[] => [
      measure.letter,
      `${isolated(names.get(measure.piece) ?? '')}: ${label}`,
      ...columns.map(({ at }) => {
        const value = measure.values[at] ?? null;
        return value === null ? '–' : lengthText(value * times, spec);
      }),
    ];
    const label = uncapital(measure.label);
    if (measure.of !== 'round') return [line(label, 1)];
    return [line(label, 1), line(`${label}, laid flat`, 0.5)];
  });
  return {
    caption: `${spec.title}: measurements in ${unitWord(spec.unit)}`,
    headings: ['', 'Measurement', ...columns.map(({ label }) => label)],
    rows,
    note: null,
  };
}
