/** Bytes of the largest file that is looked into. */
export const largestFile = 10e6;

/** Cells times sizes of the largest notebook that is opened: more than that no page can work and draw. */
export const mostValues = 120_000;
