/** Milliseconds of work before whoever else waits for this thread is let in. */
const slice = 6;

/** Lets a message that has arrived meanwhile be heard; a timer would wait at least 4 ms each time. */
function pause(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}

/** Takes the steps of a long work, so many at a time that the thread can still answer others. */
export async function inSlices<Made>(work: Generator<void, Made>): Promise<Made> {
  for (;;) {
    const end = performance.now() + slice;
    do {
      const step = work.next();
      if (step.done) return step.value;
    } while (performance.now() < end);
    await pause();
  }
}
