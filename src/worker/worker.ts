import type { Endpoint } from 'comlink';
import { serve } from './serve';

/** The thread the sheet works in, so that the page answers keys whatever is being worked. */
serve(globalThis as unknown as Endpoint);
