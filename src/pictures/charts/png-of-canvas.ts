import { withDensity } from './png-density';

/** What is drawn on a canvas as a PNG that says how fine it is printed. Rejects where the browser makes no image. */
export async function pngOfCanvas(canvas: HTMLCanvasElement, dpi: number): Promise<Blob> {
  const drawn = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  if (!drawn) throw new Error('The browser made no image of this picture.');
  const bytes = withDensity(new Uint8Array(await drawn.arrayBuffer()), dpi);
  return new Blob([bytes], { type: 'image/png' });
}
