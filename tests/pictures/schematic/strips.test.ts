import { describe, expect, it } from 'vitest';
import { workPiece, type Piece } from '../../../src/craft';
import { schematicDrawn, type SchematicSpec } from '../../../src/pictures/schematic';
import type { SchematicPiece } from '../../../src/pictures/schematic/types';

const fabric = { stitches: 2, rows: 2 };
const size = { id: 'm', label: 'M' };

/** A flat piece so many cm wide and high. */
function piece(
  id: string,
  width: number,
  height: number,
  more: Partial<SchematicPiece> = {},
): SchematicPiece {
  const plan: Piece = {
    name: id,
    worked: 'flat',
    start: width * 2,
    stretches: [{ kind: 'even', rows: height * 2, fabric }],
  };
  return { id, name: id, worked: 'flat', sizes: [{ ...size, plan, rows: workPiece(plan) }], ...more };
}

function drawn(pieces: readonly SchematicPiece[], width = 960) {
  const spec: SchematicSpec = {
    title: 'Garment',
    pieces,
    joins: [],
    size: 'm',
    sizes: [size],
    unit: 'cm',
    decimal: '.',
    theme: 'light',
    width,
  };
  return schematicDrawn(spec);
}

const body = [piece('Back', 50, 60), piece('Front', 50, 60)];

describe('a strip does not make the other pieces small', () => {
  it.each([960, 600, 320])(
    'a belt across the drawing, worked along its length or across it, %i px wide',
    (width) => {
      const alone = drawn(body, width).pxPerCm;
      expect(drawn([...body, piece('Belt', 180, 4)], width).pxPerCm).toBe(alone);
      expect(drawn([...body, piece('Belt', 4, 180)], width).pxPerCm).toBe(alone);
      expect(drawn([...body, piece('Band', 130, 4, { lies: 'along' })], width).pxPerCm).toBe(alone);
    },
  );

  it('what does not fit is shortened, says so, and has its whole length on its line', () => {
    for (const belt of [piece('Belt', 180, 4), piece('Belt', 4, 180)]) {
      const { svg, texts, pxPerCm } = drawn([...body, belt]);
      expect(svg).toContain('shortened');
      expect(svg).toContain('>180.0<');
      // Nothing of it is as long as it would be to scale.
      expect(Math.max(...texts.map(({ y, height }) => y + height))).toBeLessThan(
        60 * pxPerCm + 180 * pxPerCm,
      );
    }
    expect(drawn(body).svg).not.toContain('shortened');
  });

  it('a sleeve that is picked up along its armhole is no strip, and is drawn whole', () => {
    const { svg } = drawn([...body, piece('Sleeve', 50, 44, { lies: 'along', hangs: true })], 400);
    expect(svg).not.toContain('shortened');
  });

  it('a strip no longer than the pieces beside it lies among them, and a scarf alone is a piece like any other', () => {
    expect(drawn([...body, piece('Strap', 3, 40)]).svg).not.toContain('shortened');
    expect(drawn([piece('Scarf', 25, 180)]).svg).not.toContain('shortened');
    expect(drawn([piece('Scarf', 180, 25)]).svg).not.toContain('shortened');
  });
});
