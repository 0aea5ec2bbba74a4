import { schematicSvg } from '../../pictures/schematic';
import type { PatternDocument } from '../../words';
import type { Desk } from '../desk.svelte';
import { schematicOf } from '../pictures/schematic-spec';

/**
 * The pictures of a pattern as SVG, by the key of the slot each stands in. They are for paper: drawn as in the light,
 * whatever the page is shown in.
 */
export function picturesOf(
  desk: Desk,
  document: PatternDocument,
  size: string | 'all',
): Readonly<Record<string, string>> {
  const slots = document.parts.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'picture slot' ? [block.key] : [])),
  );
  if (slots.length === 0) return {};
  const svg = schematicSvg({ ...schematicOf(desk, size), theme: 'light' });
  return Object.fromEntries(slots.map((key) => [key, svg]));
}
