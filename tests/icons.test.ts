import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const read = (file: string): Buffer => readFileSync(new URL(`../static/${file}`, import.meta.url));
/** Width and height stand in the first part of a PNG: ISO/IEC 15948, section 11.2.2. */
const sizeOf = (file: string): string => {
  const png = read(file);
  expect(png.toString('latin1', 1, 4)).toBe('PNG');
  return `${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`;
};
const page = readFileSync(new URL('../src/index.html', import.meta.url), 'utf8');
const { icons } = JSON.parse(read('manifest.webmanifest').toString()) as {
  icons: { src: string; sizes: string; type: string; purpose?: string }[];
};

describe('the icon', () => {
  it('is there in each size that the manifest and the page name', () => {
    const pngs = icons.filter(({ type }) => type === 'image/png');
    expect(pngs.map(({ sizes }) => sizes)).toEqual(['192x192', '512x512', '512x512']);
    for (const { src, sizes } of pngs) expect(sizeOf(src.slice(2))).toBe(sizes);
    const [, apple, sizes] = /rel="apple-touch-icon" href="\.\/([^"]+)" sizes="([^"]+)"/.exec(page)!;
    expect(sizeOf(apple!)).toBe(sizes);
    expect(sizes).toBe('180x180');
  });

  it('is drawn in lines for every size, on the page’s tab too, and once more whole for a mask', () => {
    const [, tab] = /rel="icon" href="\.\/([^"]+)" type="image\/svg\+xml"/.exec(page)!;
    const drawn = icons.filter(({ type }) => type === 'image/svg+xml');
    expect(drawn.map(({ src, sizes }) => [src.slice(2), sizes])).toEqual([[tab, 'any']]);
    expect(read(tab!).toString()).toMatch(/^<svg /);
    // The W3C's Web Application Manifest, "purpose": a maskable icon may lose its edges, so it has a file of its own.
    const masked = icons.filter(({ purpose }) => purpose === 'maskable');
    expect(masked.map(({ sizes }) => sizes)).toEqual(['512x512']);
    expect(icons.filter(({ src }) => src === masked[0]!.src)).toHaveLength(1);
  });

  it('is in the blue of the page, on which nothing else stands out', () => {
    const css = readFileSync(new URL('../src/ui/page.css', import.meta.url), 'utf8');
    const accent = /--accent: (#\w+)/.exec(css)![1]!;
    const paper = /--leaf: (#\w+)/.exec(css)![1]!;
    const colours = new Set(
      read('icon.svg')
        .toString()
        .match(/#\w{3,8}\b/g),
    );
    expect(colours).toEqual(new Set([accent, paper]));
  });
});
