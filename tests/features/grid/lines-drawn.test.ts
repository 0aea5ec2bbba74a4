import { describe, expect, it } from 'vitest';
import { linesDrawn } from '../../../src/features/grid/lines-drawn';

const lineAt = (name: string, top: number, bottom: number) => ({
  name,
  getBoundingClientRect: () => new DOMRect(0, top, 20, bottom - top),
});

describe('the places of a sentence, line by line', () => {
  it('are those at one height, however tall each is', () => {
    const lines = linesDrawn([
      lineAt('hook', 0, 20),
      lineAt('stitches', 26, 44),
      lineAt('over', 22, 48),
      lineAt('rows', 52, 70),
    ]);
    expect(lines.map((line) => line.map(({ name }) => name))).toEqual([
      ['hook'],
      ['stitches', 'over'],
      ['rows'],
    ]);
  });

  it('are one line where nothing is drawn yet, and none where there is nothing', () => {
    expect(linesDrawn([lineAt('a', 0, 0), lineAt('b', 0, 0)])).toHaveLength(1);
    expect(linesDrawn([])).toEqual([]);
  });
});
