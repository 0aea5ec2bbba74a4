import { mount, unmount } from 'svelte';
import { example, type Opening } from './opening';
import Waiting from './Waiting.svelte';

/** Milliseconds in which most browsers have answered: until then nothing is said. */
const soon = 400;

/**
 * What the page opens with, once the store has answered. Until then it is not known whether a notebook of the person's own
 * is kept, so none is shown: the page says that it looks for them. Who does not want to wait goes on with an example; what
 * the store answers then comes later, as `late`.
 *
 * @param target where the page says so
 */
export function answerOrExample(answer: Promise<Opening>, target: HTMLElement): Promise<Opening> {
  return new Promise((resolve, reject) => {
    let waiting: ReturnType<typeof mount> | undefined;
    const done = (opened: Opening | Promise<Opening>): void => {
      clearTimeout(timer);
      if (waiting) void unmount(waiting);
      waiting = undefined;
      resolve(opened);
    };
    const goOn = (): void => {
      done(example().then((begun) => ({ ...begun, late: answer })));
    };
    const timer = setTimeout(() => (waiting = mount(Waiting, { target, props: { goOn } })), soon);
    answer.then(done, reject);
  });
}
