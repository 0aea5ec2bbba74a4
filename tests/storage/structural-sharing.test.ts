import { describe, expect, it } from 'vitest';
import { shareStructure, storageErrorOf } from '../../src/storage';
import {
  allCells,
  changesBetween,
  nothingChanged,
  readFile,
  writeFile,
  type Notebook,
} from '../../src/notebook';
import { cardigan } from '../../src/starters';
import { edited } from '../notebook/edited';

const again = (notebook: Notebook): Notebook => {
  const read = readFile(writeFile(notebook));
  if ('problem' in read) throw new Error(read.problem);
  return read.notebook;
};

describe('a notebook that is read again', () => {
  it('shares with the one before all that is the same: nothing is worked again', () => {
    const before = cardigan();
    expect(nothingChanged(changesBetween(before, again(before)))).toBe(false);
    const shared = shareStructure(before, again(before));
    expect(nothingChanged(changesBetween(before, shared))).toBe(true);
    expect(shared.sections).toBe(before.sections);
    expect(shared.settings).toBe(before.settings);
  });

  it('has every difference of the new one', () => {
    const before = cardigan();
    const edits = [
      { do: 'give', cell: 'hand', key: 'value', size: null, value: 21 },
      { do: 'remove cell', cell: 'buttons' },
      { do: 'relabel section', section: 'swatches', label: 'Fabrics' },
      { do: 'remove size', size: 'm' },
      { do: 'move section', section: 'swatches', at: 2 },
      { do: 'set', settings: { length: 'in' } },
    ] as const;
    let after: Notebook = before;
    for (const edit of edits) {
      after = edited(after, edit);
      const shared = shareStructure(before, again(after));
      expect(shared).toEqual(after);
    }
    const kept = new Set(allCells(before));
    expect(
      allCells(shareStructure(before, again(after)))
        .filter((cell) => !kept.has(cell))
        .map(({ id }) => id),
    ).toEqual(expect.arrayContaining(['hand']));
  });
});

describe('why nothing is kept', () => {
  it.each([
    ['QuotaExceededError', 'full'],
    ['SecurityError', 'refused'],
    ['InvalidStateError', 'refused'],
    ['UnknownError', 'broken'],
    ['VersionError', 'broken'],
    ['TimeoutError', 'broken'],
  ])('%s: %s', (name, problem) => {
    expect(storageErrorOf(new DOMException('', name))).toBe(problem);
  });
});
