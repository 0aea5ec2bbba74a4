/**
 * Calls back once the next frame has been painted, so that what can wait does not hold up what a person is waiting for.
 * Gives what calls it off.
 */
export function afterPaint(then: () => void): () => void {
  let task: ReturnType<typeof setTimeout> | undefined;
  // What is put off in a frame comes after its painting.
  const frame = requestAnimationFrame(() => (task = setTimeout(then)));
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(task);
  };
}
