import { pngOfCanvas } from '../../pictures/charts';
import { printedSize } from './printed-size';

/** An SVG as a PNG at print resolution. Rejects where the browser cannot draw it. */
export async function pngOfDrawing(svg: string): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const { width, height, dpi } = printedSize(image.naturalWidth, image.naturalHeight);
    const canvas = document.createElement('canvas');
    canvas.width = width;
    canvas.height = height;
    canvas.getContext('2d')!.drawImage(image, 0, 0, width, height);
    return await pngOfCanvas(canvas, dpi);
  } finally {
    URL.revokeObjectURL(address);
  }
}
