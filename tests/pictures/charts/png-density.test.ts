import { crc32, deflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { withDensity } from '../../../src/pictures/charts/png-density';

const chunk = (type: string, data: Uint8Array): Buffer => {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const whole = Buffer.alloc(body.length + 8);
  whole.writeUInt32BE(data.length, 0);
  body.copy(whole, 4);
  whole.writeUInt32BE(crc32(body), body.length + 4);
  return whole;
};
const header = Buffer.from([0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0]);
const png = Buffer.concat([
  Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
  chunk('IHDR', header),
  chunk('IDAT', deflateSync(Buffer.from([0, 0]))),
  chunk('IEND', Buffer.alloc(0)),
]);

test('300 dots to the inch are 11811 px per metre, in a chunk after the header, with the check that zlib gives', () => {
  const size = Buffer.alloc(9);
  size.writeUInt32BE(11811, 0);
  size.writeUInt32BE(11811, 4);
  size.writeUInt8(1, 8);
  const whole = Buffer.from(withDensity(new Uint8Array(png), 300));
  const after = 8 + 25;
  expect(whole.subarray(0, after)).toEqual(png.subarray(0, after));
  expect(whole.subarray(after, after + 21)).toEqual(chunk('pHYs', size));
  expect(whole.subarray(after + 21)).toEqual(png.subarray(after));
});
