import {
  inputsOf,
  outputsOf,
  type Cell,
  type Input,
  type Output,
  type PieceStretch,
  type Unit,
} from '../notebook';

/** One line of a cell on the leaf: a value or a result with a column for each size, or words across them. */
export interface ValueLine {
  readonly line: 'input' | 'output';
  readonly key: string;
  readonly name: string;
  readonly label: string;
  readonly unit: Unit | 'any';
  /** The cell's own line carries its label; the others are parts of it. */
  readonly rank: 'own' | 'part';
  readonly input?: Input;
  readonly output?: Output;
}

export interface WordsLine {
  readonly line: 'title' | 'readings' | 'fit' | 'piece' | 'stretch' | 'note';
  readonly key: string;
  readonly stretch?: PieceStretch;
}

export type Line = ValueLine | WordsLine;

const asInput = (input: Input, rank: ValueLine['rank'] = 'part'): ValueLine => ({
  line: 'input',
  key: input.key,
  name: input.name,
  label: input.label,
  unit: input.unit,
  rank,
  input,
});

const asOutput = (output: Output, rank: ValueLine['rank'] = 'part'): ValueLine => ({
  line: 'output',
  key: output.key,
  name: output.name,
  label: output.label,
  unit: output.unit,
  rank,
  output,
});

/** The lines of a cell, from the top. `opened` adds the results that are shown only on asking. */
export function linesOf(cell: Cell, opened: boolean): Line[] {
  const inputs = inputsOf(cell);
  const outputs = outputsOf(cell).filter(
    (output) => output.shown === 'line' || (opened && output.shown === 'detail'),
  );
  const input = (key: string): ValueLine => asInput(inputs.find((candidate) => candidate.key === key)!);
  switch (cell.kind) {
    case 'measure':
    case 'formula':
      return [asInput(inputs[0]!, 'own')];
    case 'ease':
      return [asOutput(outputs[0]!, 'own'), ...inputs.map((part) => asInput(part))];
    case 'fit':
      return [
        asOutput(outputs[0]!, 'own'),
        input('target'),
        { line: 'fit', key: 'fit' },
        ...outputs.slice(1).map((part) => asOutput(part)),
      ];
    case 'swatch':
      return [
        { line: 'title', key: 'title' },
        { line: 'readings', key: 'readings' },
      ];
    case 'piece':
      return [
        { line: 'title', key: 'title' },
        { line: 'piece', key: 'piece' },
        input('start'),
        ...cell.stretches.flatMap((stretch): Line[] => [
          { line: 'stretch', key: stretch.name, stretch },
          ...inputs
            .filter((part) => part.key.startsWith(`${stretch.name}.`) && !isAside(part))
            .map((part) => asInput(part)),
        ]),
        ...outputs.map((part) => asOutput(part)),
      ];
    case 'note':
      return [{ line: 'note', key: 'note' }];
  }
}

const asides = new Set(['perRow', 'before', 'after']);

/** A small whole number that is the same in every size is read in its stretch's sentence, not on a line of its own. */
export function isAside(input: Input): boolean {
  const field = input.key.split('.').at(-1) ?? '';
  return asides.has(field) && 'value' in input.entry;
}
