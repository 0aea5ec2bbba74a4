import { HyperFormula } from 'hyperformula';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { sentence } from '../../src/craft';
import { packedMessage } from '../../src/engine/pack-message';
import { notTaken } from '../../src/engine/sentences';
import { betweenCells } from '../../src/engine/between-cells';
import { Engine, type Content, type Result } from '../../src/engine/engine';
import { cellsAreReported, formulasRead } from '../../src/engine/engine-functions';

afterEach(() => vi.restoreAllMocks());

function put(engine: Engine, ...contents: [number, Content][]): Map<number, Result> {
  const results = new Map<number, Result>();
  engine.put(new Map(contents), (row, result) => void results.set(row, result));
  return results;
}

function everything(engine: Engine): Map<number, Result> {
  const results = new Map<number, Result>();
  engine.all((row, result) => void results.set(row, result));
  return results;
}

test('tells the rows whose results changed, and only those', () => {
  const engine = new Engine([14, '=$A$1/10', 3, '=$A$2*$A$3', 99]);
  expect(put(engine, [0, 15])).toEqual(
    new Map([
      [0, 15],
      [1, 1.5],
      [3, 4.5],
    ]),
  );
  expect(put(engine, [0, 15])).toEqual(new Map());
});

test('rows are appended', () => {
  const engine = new Engine([2]);
  expect(put(engine, [1, '=$A$1*3'], [2, '=$A$2+$A$1'])).toEqual(
    new Map([
      [1, 6],
      [2, 8],
    ]),
  );
});

test('an error is told with the row where it began', () => {
  const engine = new Engine([
    0,
    '=1/$A$1',
    '=$A$2+1',
    { reason: packedMessage(sentence('Bust is empty: type a value, or = and a formula.')) },
    '=$A$4*2',
  ]);
  const results = everything(engine);
  expect(results.get(1)).toMatchObject({ type: 'DIV_BY_ZERO', root: 1 });
  expect(results.get(2)).toMatchObject({ type: 'DIV_BY_ZERO', root: 1 });
  expect(results.get(4)).toMatchObject({ root: 3 });
});

test('a result smaller than can be told from 0 is 0', () => {
  expect(everything(new Engine([1e-300, '=$A$1/1000000'])).get(1)).toBe(0);
});

describe('an exception out of HyperFormula', () => {
  test('has the engine built again from its contents, with the change in it', () => {
    const engine = new Engine([14, '=$A$1/10', '=$A$2*2']);
    vi.spyOn(HyperFormula.prototype, 'setCellContents').mockImplementationOnce(() => {
      throw new Error('lost');
    });
    expect(put(engine, [0, 20])).toEqual(
      new Map([
        [0, 20],
        [1, 2],
        [2, 4],
      ]),
    );
    expect(put(engine, [0, 30]).get(2)).toBe(6);
  });

  test('on a formula that always throws leaves that row without a result and the others with theirs', () => {
    const { buildFromArray } = HyperFormula;
    const bad = '=1+2+3';
    vi.spyOn(HyperFormula, 'buildFromArray').mockImplementation((rows, ...rest) => {
      if (rows.flat().includes(bad)) throw new Error('lost');
      const built = buildFromArray.call(HyperFormula, rows, ...rest);
      const set = built.setCellContents.bind(built);
      built.setCellContents = (address, content) => {
        if (content === bad) throw new Error('lost');
        return set(address, content);
      };
      return built;
    });
    const engine = new Engine([5, bad, '=$A$1*2']);
    expect(everything(engine).get(2)).toBe(10);
    expect(engine.content(1)).toEqual({ reason: packedMessage(notTaken) });
  });
});

test('engines share what they have read: a formula in twelve sizes is read once', () => {
  const before = formulasRead();
  for (let size = 0; size < 12; size++) {
    const engine = new Engine([size, '=$A$1*0.123456+7']);
    expect(everything(engine).get(1)).toBe(size * 0.123456 + 7);
    put(engine, [2, '=$A$1*0.123456+8']);
  }
  expect(formulasRead() - before).toBe(2);
});

test('an engine tells of each cell before it works it, so that a thread is seen to be getting on', () => {
  expect(cellsAreReported).toBe(true);
  const contents = new Map([
    [0, 13 as Content],
    ...Array.from({ length: 50 }, (_, at) => [at + 1, '=$A$1*2'] as const),
  ]);
  const engine = new Engine();
  let cells = 0;
  betweenCells(() => void cells++);
  engine.put(contents, () => {});
  expect(cells).toBeGreaterThanOrEqual(50);
  cells = 0;
  engine.put(new Map([[0, 14]]), () => {});
  expect(cells).toBe(50);
  betweenCells(() => {});
});
