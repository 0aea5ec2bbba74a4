import {
  inputsOf,
  outputsOf,
  type Cell,
  type EdgePart,
  type Input,
  type Output,
  type PieceStretch,
  type WrittenAs,
} from '../notebook';
import type { Unit } from '../formulas';

/** One line of a cell in the grid with a value or a result for each size. */
export interface ValueLine {
  readonly line: 'input' | 'output';
  readonly key: string;
  readonly name: string;
  readonly label: string;
  readonly unit: Unit | 'any';
  readonly written?: WrittenAs;
  /** The cell's own line carries its label; the others are parts of it. */
  readonly rank: 'own' | 'part';
  readonly input?: Input;
  readonly output?: Output;
}

/** One line of a cell in words across the sizes. */
export interface WordsLine {
  readonly line: 'words';
  readonly key: string;
  readonly says: 'title' | 'cell' | 'stretch' | 'edge' | 'swatch parts' | 'actions';
  readonly stretch?: PieceStretch;
  readonly edge?: EdgePart;
}

export type Line = ValueLine | WordsLine;

export function valueLine(part: Input | Output, rank: ValueLine['rank'] = 'part'): ValueLine {
  return {
    line: 'entry' in part ? 'input' : 'output',
    key: part.key,
    name: part.name,
    label: part.label,
    unit: part.unit,
    rank,
    ...(part.written ? { written: part.written } : {}),
    ...('entry' in part ? { input: part } : { output: part }),
  };
}

/** What a measurement as made is added up from, with the wish: all but a part that is there once, and how far it may be off. */
function isOfSum({ key, input }: ValueLine): boolean {
  if (!key.endsWith('.times')) return key !== 'within';
  return !(input && 'value' in input.entry && input.entry.value === 1);
}

const title: WordsLine = { line: 'words', says: 'title', key: 'title' };
const words: WordsLine = { line: 'words', says: 'cell', key: 'words' };

const actions: WordsLine = { line: 'words', says: 'actions', key: 'actions' };

/**
 * The lines of a cell, from the top. `opened` adds what is shown only on asking: the other results, what can be
 * chosen, and what can be done with the cell.
 */
export function linesOf(cell: Cell, opened: boolean): Line[] {
  return opened ? [...bodyOf(cell, true), actions] : bodyOf(cell, false);
}

function bodyOf(cell: Cell, opened: boolean): Line[] {
  const inputs = inputsOf(cell);
  const outputs = outputsOf(cell).filter(
    (output) => output.shown === 'line' || (opened && output.shown === 'detail'),
  );
  const all = (parts: readonly (Input | Output)[]): ValueLine[] => parts.map((part) => valueLine(part));
  const lined = all(inputs.filter((input) => !isSecondary(input)));
  switch (cell.kind) {
    case 'formula':
      return [valueLine(inputs[0]!, 'own')];
    case 'measure':
      return [valueLine(inputs[0]!, 'own'), ...(opened ? [words] : [])];
    case 'check':
      return [valueLine(inputs[0]!, 'own'), words];
    case 'ease':
      return [valueLine(outputs[0]!, 'own'), ...lined, ...(opened ? [words] : []), ...all(outputs.slice(1))];
    case 'as made':
      return [
        valueLine(outputs[0]!, 'own'),
        ...lined.filter((line) => opened || isOfSum(line)),
        ...all(outputs.slice(1)),
        words,
      ];
    case 'fit':
    case 'yarn':
    case 'notions':
      return [valueLine(outputs[0]!, 'own'), ...lined, words, ...all(outputs.slice(1))];
    case 'spacing':
      return [title, words, ...lined, ...all(outputs)];
    case 'swatch':
      return [
        title,
        words,
        ...(opened ? [{ line: 'words', says: 'swatch parts', key: 'parts' } as const] : []),
        ...all(outputs.filter((output) => output.shown === 'detail')),
      ];
    case 'pickUp':
      return [
        valueLine(outputs[0]!, 'own'),
        ...cell.edge.flatMap((edge): Line[] => [
          { line: 'words', says: 'edge', key: edge.name, edge },
          ...lined.filter((line) => line.key.startsWith(`${edge.name}.`)),
          ...all(outputs.filter((output) => output.key === `${edge.name}.share`)),
        ]),
        words,
        ...lined.filter((line) => !line.key.includes('.')),
        ...all(outputs.slice(1).filter((output) => !output.key.endsWith('.share'))),
      ];
    case 'piece':
      return [
        title,
        words,
        ...lined.filter((line) => line.key === 'start'),
        ...cell.stretches.flatMap((stretch): Line[] => [
          { line: 'words', says: 'stretch', key: stretch.name, stretch },
          ...lined.filter((line) => line.key.startsWith(`${stretch.name}.`)),
        ]),
        ...all(outputs),
      ];
    case 'note':
      return [words];
  }
}

/** Inputs that are read in a sentence, as long as they are one value for every size. */
const asides = new Set([
  ...['perRow', 'before', 'after', 'by', 'rounds'],
  ...['multiple', 'plus', 'turning', 'pick', 'of', 'each'],
  ...['reserve', 'ballGrams', 'ballLength', 'every', 'startAt', 'waste'],
]);

/** Whether an input stands in the sentence of its cell, stretch or edge rather than on a line of its own. */
function isSecondary(input: Input): boolean {
  if (input.shared) return true;
  const field = input.key.split('.').at(-1) ?? '';
  return asides.has(field) && 'value' in input.entry;
}

/** The inputs that stand in the sentence of a part of a cell; of the cell itself where no part is named. */
export function asidesOf(cell: Cell, part?: string): Input[] {
  return inputsOf(cell).filter((input) => {
    const own =
      part === undefined ? cell.kind === 'fit' || !input.key.includes('.') : input.key.startsWith(`${part}.`);
    return own && isSecondary(input);
  });
}
