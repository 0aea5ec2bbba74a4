import type { Trouble } from './trouble';

/** What to say of it, and what to do. */
export const troubleSays: Record<Trouble, string> = {
  full: 'Not kept: there is no room left on this device for this page. The work goes on in this window; save it as a file before you close it.',
  refused:
    'Not kept: this browser keeps nothing for this page (a private window, or its settings). The work goes on in this window; save it as a file before you close it.',
  broken:
    'Not kept: what this browser keeps for this page cannot be read or written. The work goes on in this window; save it as a file before you close it.',
};
