import { withDensity } from '../../pictures/png-density';
import { printedSize } from './printed-size';

/** An SVG as a PNG at print resolution. Fails where the browser cannot draw it. */
export async function pngOf(svg: string): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const { width, height, perPx } = printedSize(image.naturalWidth, image.naturalHeight);
    const canvas = document.createElement('canvas');
    canvas.width = width;
    canvas.height = height;
    canvas.getContext('2d')!.drawImage(image, 0, 0, width, height);
    const drawn = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
    if (!drawn) throw new Error('The browser could not draw it.');
    const bytes = withDensity(new Uint8Array(await drawn.arrayBuffer()), 96 * perPx);
    return new Blob([bytes], { type: 'image/png' });
  } finally {
    URL.revokeObjectURL(address);
  }
}
