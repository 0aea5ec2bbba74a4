import { onPaper, print, type PrintedPicture } from './on-paper';
import { pngOfCanvas } from './png-of-canvas';

/** A picture as a PNG for paper, with its title and legend in it. Rejects where the browser makes no image. */
export function pngOf(picture: PrintedPicture, family: string): Promise<Blob> {
  return pngOfCanvas(onPaper(picture, family, true), print.dpi);
}
