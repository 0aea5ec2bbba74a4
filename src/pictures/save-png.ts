import { onPaper, print, type PrintedPicture } from './on-paper';
import { withDensity } from './png-density';

/** A picture as a PNG for paper, with its title and legend in it. Rejects where the browser makes no image. */
export async function pngOf(picture: PrintedPicture, family: string): Promise<Blob> {
  const canvas = onPaper(picture, family, true);
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  if (!blob) throw new Error('The browser made no image of this picture.');
  const bytes = new Uint8Array(await blob.arrayBuffer());
  return new Blob([withDensity(bytes, print.dpi)], { type: 'image/png' });
}
