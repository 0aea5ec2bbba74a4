import type { BasicStitch, Settings } from '../../notebook';
import { inTerms } from './terms';

const names: Readonly<Record<BasicStitch, string>> = {
  sc: 'single crochet (sc)',
  hdc: 'half double crochet (hdc)',
  dc: 'double crochet (dc)',
  tr: 'treble (tr)',
  stockinette: 'stockinette',
  garter: 'garter stitch',
};

/**
 * The stitches a swatch can be said to be worked in, by name in the notebook's terms; the first is what stands for a
 * swatch that does not say.
 *
 * @example stitchChoices({ craft: 'crochet', terms: 'UK' })[0] // { stitch: 'sc', name: 'double crochet (dc)' }
 */
export function stitchChoices({
  craft,
  terms,
}: Pick<Settings, 'craft' | 'terms'>): { readonly stitch: BasicStitch | undefined; readonly name: string }[] {
  const named = (stitch: BasicStitch) => ({ stitch, name: inTerms(names[stitch], 'US', terms) });
  if (craft === 'crochet') return (['sc', 'hdc', 'dc', 'tr'] as const).map(named);
  return [
    { stitch: undefined, name: 'a pattern of its own' },
    ...(['stockinette', 'garter'] as const).map(named),
  ];
}
