import nodeEndpoint, { type NodeEndpoint } from 'comlink/dist/esm/node-adapter';
import { Worker } from 'node:worker_threads';
import type { SheetThread } from '../../src/worker/thread';

/** A thread of Node that serves a sheet, as the page would have it. */
export function threadInNode(file: string): SheetThread {
  const worker = new Worker(file);
  const endpoint = nodeEndpoint(worker as unknown as NodeEndpoint);
  return {
    ...endpoint,
    // The endpoint takes every listener for one of messages.
    addEventListener(type, listener, options) {
      if (type === 'message') endpoint.addEventListener(type, listener, options);
      else if (typeof listener === 'function')
        worker.on(
          type,
          (error: Error) => void listener(Object.assign(new Event(type), { message: error.message })),
        );
    },
    terminate: () => void worker.terminate(),
  };
}
