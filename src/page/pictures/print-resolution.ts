/** What printers are given: 300 dots to the inch, where a CSS px is a 96th of one. */
export const dotsPerInch = 300;
const dotsPerPx = dotsPerInch / 96;
const metresPerInch = 0.0254;

/** Browsers draw no larger canvas than this, on a side and in all. */
const most = { side: 16_000, area: 120e6 };

/** How many dots wide and high a picture of so many px is printed: at 300 to the inch, or fewer where it would be too large to draw. */
export function printedSize(width: number, height: number): { width: number; height: number; perPx: number } {
  const perPx = Math.min(
    dotsPerPx,
    most.side / width,
    most.side / height,
    Math.sqrt(most.area / (width * height)),
  );
  return { width: Math.round(width * perPx), height: Math.round(height * perPx), perPx };
}

/**
 * A PNG that says how large it is to be printed: dots per metre in a `pHYs` chunk before the picture's data.
 *
 * Source: W3C PNG specification (third edition), 11.3.4.3 and, for the check sum, annex D.
 */
export function withResolution(png: Uint8Array, dotsEachInch: number): Uint8Array {
  const afterHeader = 8 + 25;
  const dots = Math.round(dotsEachInch / metresPerInch);
  const chunk = new Uint8Array(21);
  const view = new DataView(chunk.buffer);
  view.setUint32(0, 9);
  chunk.set([0x70, 0x48, 0x59, 0x73], 4);
  view.setUint32(8, dots);
  view.setUint32(12, dots);
  chunk[16] = 1;
  view.setUint32(17, checkSum(chunk.subarray(4, 17)));
  const whole = new Uint8Array(png.length + chunk.length);
  whole.set(png.subarray(0, afterHeader));
  whole.set(chunk, afterHeader);
  whole.set(png.subarray(afterHeader), afterHeader + chunk.length);
  return whole;
}

function checkSum(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}
