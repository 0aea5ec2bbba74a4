import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { workPiece, type Piece, type Stretch } from '../../../src/craft';
import { overlap, placed, labelLines, type Box, type Wish } from '../../../src/pictures/schematic/labels';
import { schematicDrawn } from '../../../src/pictures/schematic/schematic-svg';
import { silhouetteDrawn } from '../../../src/pictures/schematic/silhouette-svg';
import type { SchematicSpec } from '../../../src/pictures/schematic';

function expectApart(boxes: readonly Box[]): void {
  boxes.forEach((one, i) => {
    for (const other of boxes.slice(i + 1)) {
      if (overlap(one, other)) throw new Error(`${JSON.stringify(one)} lies on ${JSON.stringify(other)}`);
    }
  });
}

describe('labels', () => {
  const side = fc.integer({ min: 1, max: 60 });
  const wish = fc.record({
    x: fc.integer({ min: 0, max: 200 }),
    y: fc.integer({ min: 0, max: 200 }),
    width: side,
    height: side,
    along: fc.constantFrom('x' as const, 'y' as const),
  });

  it('never overlap, wherever they wish to stand', () => {
    fc.assert(fc.property(fc.array(wish, { maxLength: 25 }), (wishes) => expectApart(placed(wishes))));
  });

  it('stay where they wish to be where there is room', () => {
    const alone: Wish = { x: 3, y: 4, width: 5, height: 6, along: 'y' };
    expect(placed([alone])).toEqual([{ x: 3, y: 4, width: 5, height: 6 }]);
  });

  it('a word longer than the line is broken, and what is left out is told by an ellipsis', () => {
    expect(labelLines('abcdefgh', 30, 10).join('')).toBe('abcdefgh');
    expect(labelLines('one two three four', 30, 10, 2).at(-1)).toMatch(/…$/);
  });
});

describe('a drawing', () => {
  const fabric = fc.constantFrom(
    { stitches: 1.4, rows: 1.2 },
    { stitches: 1.7, rows: 1.3 },
    { stitches: 3, rows: 4 },
  );
  const few = fc.integer({ min: 1, max: 40 });
  const stretch: fc.Arbitrary<Stretch> = fc.oneof(
    fc.record({ kind: fc.constant('even' as const), rows: few, fabric, label: fc.string({ maxLength: 30 }) }),
    fc.record({ kind: fc.constant('evenly' as const), to: fc.integer({ min: 40, max: 70 }), fabric }),
    fc.record({
      kind: fc.constant('rows' as const),
      counts: fc.array(few, { minLength: 1, maxLength: 12 }),
      fabric,
    }),
    fc.record({ kind: fc.constant('add' as const), atStart: few, atEnd: few, fabric }),
  );
  const piece = fc.record({
    worked: fc.constantFrom('flat' as const, 'round' as const),
    lies: fc.constantFrom('middle' as const, 'beside' as const, 'along' as const),
    hangs: fc.boolean(),
    name: fc.string({ maxLength: 60 }),
    stretches: fc.array(stretch, { maxLength: 6 }),
  });

  it('has no label on another, whatever its pieces, sizes and width', () => {
    fc.assert(
      fc.property(
        fc.array(piece, { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 240, max: 1300 }),
        fc.constantFrom('a', 'all'),
        fc.integer({ min: 1, max: 9 }),
        (pieces, width, size, many) => {
          const sizes = Array.from({ length: many }, (_size, at) => ({
            id: at === 0 ? 'a' : `s${at}`,
            label: `${at}`,
          }));
          const spec: SchematicSpec = {
            title: 'Any garment',
            pieces: pieces.map(({ stretches, ...rest }, at) => ({
              ...rest,
              id: `p${at}`,
              sizes: sizes.map((one, i) => {
                const last: Stretch = { kind: 'even', rows: 1 + i, fabric: { stitches: 1.4, rows: 1.2 } };
                const plan: Piece = {
                  name: '',
                  worked: rest.worked,
                  start: 50,
                  stretches: [...stretches, last],
                };
                try {
                  return { ...one, rows: workPiece(plan), plan };
                } catch (error) {
                  return { ...one, rows: null, problem: (error as Error).message };
                }
              }),
            })),
            joins: [
              {
                id: 'j',
                label: 'Seam',
                edges: pieces.map((_piece, at) => ({ piece: `p${at}`, edge: 'side' as const })),
              },
              {
                id: 'k',
                label: 'Top',
                edges: pieces.map((_piece, at) => ({ piece: `p${at}`, edge: 'end' as const })),
              },
            ],
            size,
            sizes,
            unit: 'cm',
            decimal: '.',
            theme: 'light',
            width,
          };
          expectApart(schematicDrawn(spec).texts);
          expectApart(silhouetteDrawn(spec).texts);
        },
      ),
      { numRuns: 60 },
    );
  });
});
