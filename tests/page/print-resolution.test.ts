import { crc32, deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { printedSize, withResolution } from '../../src/page/pictures/print-resolution';

describe('a picture for print', () => {
  it('of 96 px, an inch, is 300 dots wide', () => {
    expect(printedSize(96, 192)).toMatchObject({ width: 300, height: 600 });
  });

  it('too large for any canvas is drawn as large as can be, in its own proportions', () => {
    const { width, height } = printedSize(1000, 20_000);
    expect(height).toBeLessThanOrEqual(16_000);
    expect(height / width).toBeCloseTo(20, 1);
  });

  it('says its resolution in a chunk whose check sum is right, before its data', () => {
    const chunk = (name: string, data: Buffer): Buffer => {
      const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
      const length = Buffer.alloc(4);
      length.writeUInt32BE(data.length);
      const sum = Buffer.alloc(4);
      sum.writeUInt32BE(crc32(body));
      return Buffer.concat([length, body, sum]);
    };
    const header = Buffer.from([0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0]);
    const png = Buffer.concat([
      Buffer.from('89504e470d0a1a0a', 'hex'),
      chunk('IHDR', header),
      chunk('IDAT', deflateSync(Buffer.from([0, 0]))),
      chunk('IEND', Buffer.alloc(0)),
    ]);
    const dots = Buffer.alloc(9);
    dots.writeUInt32BE(11_811, 0);
    dots.writeUInt32BE(11_811, 4);
    dots[8] = 1;
    const said = Buffer.from(withResolution(png, 300));
    expect(said.subarray(33, 54)).toEqual(chunk('pHYs', dots));
    expect(said.subarray(54)).toEqual(png.subarray(33));
  });
});
