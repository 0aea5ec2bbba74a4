import type { CDPSession, Page } from 'playwright';
import { canvasesHeld } from '../browser/canvases-held';
import { settled } from '../browser/workspace';
import { longFile } from '../long-notebook';
import { inPage } from './browser';

interface Watched {
  arrived: number;
  drawn: number;
  painted: number;
}
type Watching = typeof globalThis & { watched: Watched };

/** Runs in the page before it does: when a message of the worker came, and when a canvas was drawn and painted. */
function watch(): void {
  const watched = { arrived: 0, drawn: 0, painted: 0 };
  (globalThis as Watching).watched = watched;
  globalThis.Worker = class extends Worker {
    constructor(...given: ConstructorParameters<typeof Worker>) {
      super(...given);
      this.addEventListener('message', () => (watched.arrived = performance.now()));
    }
  };
  /** Once what is being done is done: a message waits for it. */
  const after = (then: () => void): void => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      then();
    };
    port2.postMessage(null);
  };
  const clear = CanvasRenderingContext2D.prototype.clearRect;
  CanvasRenderingContext2D.prototype.clearRect = function (...box) {
    clear.apply(this, box);
    after(() => (watched.drawn = performance.now()));
    requestAnimationFrame(() => after(() => (watched.painted = performance.now())));
  };
}

async function open(page: Page, rows: number, panels: number): Promise<void> {
  await page.setInputFiles('input[type=file]', {
    name: 'bench.notebook.json',
    mimeType: 'application/json',
    buffer: Buffer.from(longFile(rows, 80, panels)),
  });
  await page.getByText('Long panels').first().waitFor();
  await settled(page);
  await page.getByRole('button', { name: 'Width by row' }).click();
}

const swatch = '[data-place][data-cell="body"][data-key="sts.0.count"]';

/** Types another count over the swatch, and waits for its results. */
async function reswatch(page: Page, turn: number): Promise<void> {
  await page.locator(swatch).first().focus();
  await page.keyboard.type((22 + (turn % 40) * 0.1).toFixed(1));
  await page.keyboard.press('Enter');
  await settled(page);
}

/** Milliseconds from the results of an edit arriving to its plot being drawn, and to its being on the screen. */
export function resultsToPicture(times: number): Promise<{ drawn: number[]; painted: number[] }> {
  return inPage(async (page) => {
    await open(page, 200, 1);
    const taken = { drawn: [] as number[], painted: [] as number[] };
    for (let turn = 0; turn < times + 10; turn++) {
      await page.locator(swatch).first().focus();
      await page.keyboard.type((22 + (turn % 40) * 0.1).toFixed(1));
      const came = await page.evaluateHandle(arrival);
      await page.keyboard.press('Enter');
      const { arrived, drawn, painted } = await came.evaluate((watching) => watching.all);
      if (turn < 10) continue;
      taken.drawn.push(drawn - arrived);
      taken.painted.push(painted - arrived);
    }
    return taken;
  }, watch);
}

/** Runs in the page: waits for the numbers to change, and then for the picture that follows them. */
function arrival(): { all: Promise<Watched> } {
  const { watched } = globalThis as Watching;
  const row = document.querySelector('tr[data-line="panel-1 start_width"]')!;
  const all = new Promise<Watched>((resolve) => {
    const observer = new MutationObserver(() => {
      observer.disconnect();
      const { arrived } = watched;
      const check = (): void => {
        if (watched.drawn > arrived && watched.painted >= watched.drawn) resolve({ ...watched, arrived });
        else setTimeout(check, 4);
      };
      check();
    });
    observer.observe(row, { childList: true, characterData: true, subtree: true });
  });
  return { all };
}

/** What a page holds after a forced collection. */
export interface Held {
  readonly bytes: number;
  readonly listeners: number;
  readonly nodes: number;
  readonly canvases: number;
}

/** What is held after 100 edits, and after 500 more with 50 changes of piece and 10 of what is shown. */
export function heldAfterEdits(): Promise<{ early: Held; late: Held }> {
  return inPage(async (page) => {
    await open(page, 200, 3);
    const session = await page.context().newCDPSession(page);
    await session.send('Performance.enable');
    await session.send('HeapProfiler.enable');
    const drawing = async (piece: string): Promise<void> => {
      await page.locator(`[data-drawing="${piece}"]`).waitFor();
    };
    const edits = async (from: number, to: number): Promise<void> => {
      for (let turn = from; turn < to; turn++) {
        await reswatch(page, turn);
        if (turn % 20 === 9) {
          await page
            .locator(`[data-place][data-cell="panel-${2 + ((turn / 20) & 1)}"]`)
            .first()
            .focus();
          await drawing(`panel-${2 + ((turn / 20) & 1)}`);
          await page.locator(swatch).first().focus();
          await drawing('panel-1');
        }
        if (turn % 50 === 49) {
          await page.getByRole('button', { name: 'Pictures' }).click();
          await page.locator('[data-picture=grading] canvas').waitFor();
          await page.getByRole('button', { name: 'Leaf' }).click();
          await drawing('panel-1');
        }
      }
    };
    await edits(0, 100);
    const early = await held(page, session);
    await edits(100, 600);
    return { early, late: await held(page, session) };
  });
}

async function held(page: Page, session: CDPSession): Promise<Held> {
  // What a change leaves marked for a moment is gone by then.
  await page.waitForTimeout(3500);
  for (let i = 0; i < 3; i++) await session.send('HeapProfiler.collectGarbage');
  const bytes = await heldBytes(session);
  const { metrics } = await session.send('Performance.getMetrics');
  const metric = (name: string): number => metrics.find((one) => one.name === name)?.value ?? NaN;
  const canvases = await canvasesHeld(session);
  return { bytes, listeners: metric('JSEventListeners'), nodes: metric('Nodes'), canvases };
}

/**
 * The bytes of the objects on the heap. Code that the engine has compiled is left out: it is made for what is done
 * often, whatever the page keeps.
 */
async function heldBytes(session: CDPSession): Promise<number> {
  let text = '';
  const add = ({ chunk }: { chunk: string }): void => void (text += chunk);
  session.on('HeapProfiler.addHeapSnapshotChunk', add);
  await session.send('HeapProfiler.takeHeapSnapshot', {});
  session.off('HeapProfiler.addHeapSnapshotChunk', add);
  const { snapshot, nodes } = JSON.parse(text) as {
    snapshot: { meta: { node_fields: string[]; node_types: [string[]] } };
    nodes: number[];
  };
  const { node_fields: fields, node_types: types } = snapshot.meta;
  const [type, size] = [fields.indexOf('type'), fields.indexOf('self_size')];
  const code = types[0].indexOf('code');
  let bytes = 0;
  for (let i = 0; i < nodes.length; i += fields.length)
    if (nodes[i + type] !== code) bytes += nodes[i + size]!;
  return bytes;
}
