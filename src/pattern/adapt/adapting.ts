import { type Cell, formula } from '../../notebook';
import type { PerSize, StatedPattern } from '../read';
import { CellCollector } from './cell-collector';

/** Which of the pattern's sizes a number is taken from; each may be another in one's own column. */
export type SizeFor = 'bust' | 'arm' | 'length' | 'sleeve';

export const sizeNames: Readonly<Record<SizeFor, string>> = {
  bust: 'bust_size',
  arm: 'arm_size',
  length: 'length_size',
  sleeve: 'sleeve_size',
};

export type SectionName =
  | 'swatches'
  | 'wishes'
  | 'printed'
  | 'followed'
  | 'again'
  | 'pieces'
  | 'printedPieces'
  | 'joins'
  | 'yarn'
  | 'kept';

/** What the parts of a notebook are made with: its sections as they grow, and what they share. */
export interface Adapting {
  readonly pattern: StatedPattern;
  readonly collector: CellCollector;
  readonly sections: Record<SectionName, Cell[]>;
  readonly beside: { label: string; group: string; printed: string; mine: string }[];
}

/** What is begun with when a pattern is adapted: empty sections, and no name taken. */
export function adapting(pattern: StatedPattern): Adapting {
  return {
    pattern,
    collector: new CellCollector(),
    sections: {
      swatches: [],
      wishes: [],
      printed: [],
      followed: [],
      again: [],
      pieces: [],
      printedPieces: [],
      joins: [],
      yarn: [],
      kept: [],
    },
    beside: [],
  };
}

/** A number as a formula has it. */
export const written = (value: number): string => String(Number(value.toPrecision(12)));

/** `98; 106; 114`, with −1 for a size that the pattern has no number for. */
export function listOf(values: PerSize): string {
  return values.map((value) => (value === null ? '-1' : written(value))).join('; ');
}

const wrapped = { stitches: 'STS', rows: 'ROWS', length: 'CM', mass: 'GRAMS', number: '' } as const;

/** A cell that holds a printed size list, and gives the number of the size that is taken. Its name. */
export function statedCell(
  { collector, sections }: Adapting,
  of: { values: PerSize; unit: keyof typeof wrapped; size: SizeFor; label: string; name: string },
): Cell {
  const same = of.values.every((value) => value !== null && value === of.values[0]);
  const text = same
    ? `${wrapped[of.unit]}(${written(of.values[0]!)})`.replace(/^\((.*)\)$/u, '$1')
    : `${wrapped[of.unit]}(STATED(${sizeNames[of.size]}; ${listOf(of.values)}))`;
  return collector.once(
    `stated ${text}`,
    sections.printed,
    () => formula(of.label, text, { name: of.name }),
    of.label,
  );
}
