import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, expectTypeOf, test } from 'vitest';
import * as craft from '../../src/craft';
import type { Ease, Gauge, Piece, Row, TaperPlan } from '../../src/craft';

const room = new URL('../../src/craft/', import.meta.url);
const files = readdirSync(room).filter((file) => file.endsWith('.ts'));
const read = (file: string) => readFileSync(new URL(file, room), 'utf8');

describe('the table of contents', () => {
  test.each([
    'gaugeOf finished fitName dropSleeveLength armholeDepthFor fitCount fitMotifs foundationChain',
    'spaceEvenly shapeEachRepeat taper gather pickUpRatio pickUp pickUpEdge joinArmhole',
    'workPiece lengthOf widthAt areaOf stitchesIn checkJoins yarnFor poolYarn notionsFor timeFor',
    'widthUncertainty countUncertainty t95',
  ])('has %s', (names) => {
    for (const name of names.split(' ')) expect(craft).toHaveProperty(name, expect.any(Function));
  });

  test('names every file of the room but those that only serve other files', () => {
    const contents = read('index.ts');
    const inner = [
      'index.ts',
      'even-parts.ts',
      'format.ts',
      'quantity-words.ts',
      'rounding.ts',
      'row-edges.ts',
    ];
    const missing = files.filter(
      (file) => !inner.includes(file) && !contents.includes(`'./${file.replace('.ts', '')}'`),
    );
    expect(missing).toEqual([]);
  });

  test('asks and answers in plain numbers', () => {
    expectTypeOf(craft.gaugeOf).parameter(0).toEqualTypeOf<{ count: number; over: number }[]>();
    expectTypeOf(craft.gaugeOf).returns.toEqualTypeOf<Gauge>();
    expectTypeOf(craft.finished).toEqualTypeOf<(body: number, ease: Ease) => number>();
    expectTypeOf(craft.workPiece).toEqualTypeOf<(piece: Piece) => Row[]>();
    expectTypeOf(craft.widthAt).toEqualTypeOf<(rows: Row[], length: number) => number>();
    expectTypeOf(craft.taper).parameter(0).toExtend<TaperPlan>();
    expectTypeOf(craft.t95).toEqualTypeOf<(dof: number) => number>();
  });
});

test('the room imports nothing but its own files', () => {
  const imported = files.flatMap((file) =>
    [...read(file).matchAll(/^(?:import|export|\}).* from '([^']+)';$/gm)].map((found) => found[1] as string),
  );
  expect(imported.length).toBeGreaterThan(files.length);
  expect(imported.filter((from) => !files.includes(`${from.replace('./', '')}.ts`))).toEqual([]);
  for (const file of files) expect(read(file)).not.toMatch(/\bimport\(|\brequire\(/);
});
