import { afterPaint } from './after-paint';

/** Screens show a frame every so many ms, or oftener; then this only finds less time than there is. */
const frame = 1000 / 60;

/**
 * Calls back in the time that is left until the next frame, where something that takes `cost` ms fits into it with room
 * to spare; otherwise once that frame has been painted, so as not to hold it up. Gives what calls it off.
 */
export function inSpareTime(then: () => void, cost: number): () => void {
  let off: (() => void) | undefined;
  const task = setTimeout(() => {
    if (spareTime() > 1.25 * cost + 1) then();
    else off = afterPaint(then);
  });
  return () => {
    clearTimeout(task);
    off?.();
  };
}

/** Milliseconds until the next frame; 0 where none has come for so long that nobody knows. */
function spareTime(): number {
  const since = performance.now() - Number(document.timeline?.currentTime ?? NaN);
  return since >= 0 && since < 6 * frame ? frame - (since % frame) : 0;
}
