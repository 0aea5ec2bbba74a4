import { message, plainMessage, type Message } from '../../craft';
import type { Cell, Entry, Notebook } from '../document';
import type { Input } from '../kind';
import { inputsOf, kindOf } from '../kinds';
import { wrongValue } from '../constraint';
import type { Applied } from './edit';
import { withCell } from './with-cell';

export function withInput(
  notebook: Notebook,
  { cell: id, key }: { cell: string; key: string },
  change: (input: Input) => Entry | { refused: Message },
): Applied {
  return withCell(notebook, id, (cell) => {
    const input = inputsOf(cell).find((candidate) => candidate.key === key);
    if (!input) return { refused: 'That value is no longer in the cell.' };
    const entry = change(input);
    if ('refused' in entry) return { refused: plainMessage(entry.refused) };
    return kindOf(cell).put(cell, key, entry);
  });
}

/** An input with a value given, for one size or for all. */
export function given(
  { sizes }: Pick<Notebook, 'sizes'>,
  input: Input,
  size: string | null,
  value: number | null,
): Entry | { refused: Message } {
  const wrong = value === null ? undefined : wrongValue(input, value);
  if (wrong) return { refused: wrong };
  if (size === null || input.shared) return { value };
  const { entry } = input;
  if ('formula' in entry) {
    return {
      refused: message(
        'worked-out',
        'A formula works this out for every size: change the formula, or give one value for all sizes.',
      ),
    };
  }
  if ('chart' in entry) {
    const own = { ...entry.own };
    if (value === null) delete own[size];
    else own[size] = value;
    const { own: _before, ...followed } = entry;
    return Object.keys(own).length ? { ...followed, own } : followed;
  }
  if ('each' in entry) return { each: { ...entry.each, [size]: value } };
  return {
    each: { ...Object.fromEntries(sizes.map(({ id }) => [id, entry.value])), [size]: value },
  };
}

/** An input with another entry, once its values have been seen to. */
export function entered(input: Input, entry: Entry): Entry | { refused: Message } {
  const values = 'value' in entry ? [entry.value] : 'each' in entry ? Object.values(entry.each) : [];
  for (const value of values) {
    const wrong = value === null ? undefined : wrongValue(input, value);
    if (wrong) return { refused: wrong };
  }
  return entry;
}

/** A cell with a formula instead of one of its own, or with its own given back. */
export function takenOver(cell: Cell, key: string, formula: string | null): Cell {
  const { taken: before, ...rest } = cell;
  const { [key]: _old, ...others } = before ?? {};
  const taken = formula === null ? others : { ...others, [key]: formula };
  return Object.keys(taken).length ? ({ ...rest, taken } as Cell) : (rest as Cell);
}
