import type { EdgeStretch } from '../craft';

/** The text of a stretch of an edge: it stands in a sheet as a text, as a stretch of a piece does. */
export function edgeText(stretch: EdgeStretch): string {
  return JSON.stringify(stretch);
}

/** A stretch of an edge, from its text. */
export function readEdge(text: string): EdgeStretch {
  return JSON.parse(text) as EdgeStretch;
}
