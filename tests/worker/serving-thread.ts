import nodeEndpoint, { type NodeEndpoint } from 'comlink/dist/esm/node-adapter';
import { parentPort } from 'node:worker_threads';
import { serve } from '../../src/worker/serve';

/** What `worker.ts` is in a browser. */
serve(nodeEndpoint(parentPort as unknown as NodeEndpoint));
