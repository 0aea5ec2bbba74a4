import type { PatternDocument } from '../../words';

/** The pictures of a pattern as SVG, by the key of the slot each stands in. There is none to draw yet. */
export function picturesOf(_document: PatternDocument): Readonly<Record<string, string>> {
  return {};
}
