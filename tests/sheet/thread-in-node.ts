import nodeEndpoint, { type NodeEndpoint } from 'comlink/dist/esm/node-adapter';
import { Worker } from 'node:worker_threads';
import type { SheetThread } from '../../src/sheet/client';

/** A thread of Node that serves a sheet, as the page would have it. */
export function threadInNode(file: string): SheetThread {
  const worker = new Worker(file);
  const endpoint = nodeEndpoint(worker as unknown as NodeEndpoint);
  return Object.assign(endpoint, { terminate: () => void worker.terminate() });
}
