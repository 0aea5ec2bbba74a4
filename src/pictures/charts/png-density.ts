/** CRC-32 as PNG chunks end in it (ISO/IEC 15948, annex D): polynomial 0xEDB88320, reflected. */
function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return ~crc >>> 0;
}

/** Signature, then the header chunk: four bytes of length, four of type, thirteen of data, four of check. */
const afterHeader = 8 + 4 + 4 + 13 + 4;

/**
 * The same PNG, saying how large it is on paper: a `pHYs` chunk (ISO/IEC 15948, 11.3.4.3) in px per metre, after the
 * header. Without it a program that prints the image takes it for a screen's.
 *
 * @example
 * withDensity(png, 300) // 11811 px per metre
 */
export function withDensity(png: Uint8Array<ArrayBuffer>, dpi: number): Uint8Array<ArrayBuffer> {
  const perMetre = Math.round(dpi / 0.0254);
  const chunk = new Uint8Array(4 + 4 + 9 + 4);
  const view = new DataView(chunk.buffer);
  view.setUint32(0, 9);
  chunk.set([0x70, 0x48, 0x59, 0x73], 4);
  view.setUint32(8, perMetre);
  view.setUint32(12, perMetre);
  view.setUint8(16, 1);
  view.setUint32(17, crc32(chunk.subarray(4, 17)));
  const whole = new Uint8Array(png.length + chunk.length);
  whole.set(png.subarray(0, afterHeader));
  whole.set(chunk, afterHeader);
  whole.set(png.subarray(afterHeader), afterHeader + chunk.length);
  return whole;
}
