import type { Swatch } from '../../notebook';
import { joinWithAnd } from '../../format';
import { asRead, type Expected } from './expected';
import type { Garment } from './garment';
import { crochetStitches } from './terms-meant';

/** What tells that a fabric is crocheted, where a swatch says it of itself; common practice. */
const wordsOfCrochet = new Set(
  'crochet crocheted chain chains ch sc hdc htr dc tr shell shells post posts'.split(' '),
);

const wordsOf = (text: string): string[] => text.toLowerCase().split(/\W+/u);
const hasHook = (text: string): boolean => wordsOf(text).some((word) => word === 'hook' || word === 'hooks');

/** Whether a swatch names a hook in a knitted garment, and nothing tells that its fabric is crocheted. */
function isHookOfOtherCraft({ source }: Garment, { worked, label, stitch }: Swatch): boolean {
  if (source.notebook.settings.craft === 'crochet' || !hasHook(worked)) return false;
  const crocheted = stitch !== undefined && stitch in crochetStitches;
  return !crocheted && !wordsOf(`${label} ${worked}`).some((word) => wordsOfCrochet.has(word));
}

/** What is to stand of how a fabric is worked: a hook that it is not worked with is left out. */
export function workedAs(garment: Garment, swatch: Swatch): string {
  const worked = asRead(swatch.worked);
  if (!isHookOfOtherCraft(garment, swatch)) return worked;
  const phrases = worked.split(/[,;]/u).filter((one) => !hasHook(one));
  return phrases
    .map((one) => one.trim())
    .filter(Boolean)
    .join(', ');
}

/** A line for each hook or pair of needles, and one for the fabrics whose needles only the gauge tells. */
export function toolsMeant(garment: Garment): Expected[] {
  const term = garment.source.notebook.settings.terms === 'US' ? 'gauge' : 'tension';
  const tools = new Map<string, string[]>();
  const byGauge: string[] = [];
  for (const swatch of garment.swatches) {
    const label = asRead(swatch.label);
    const tool = workedAs(garment, swatch);
    if (isHookOfOtherCraft(garment, swatch)) byGauge.push(label);
    else if (tool !== '') tools.set(tool, [...(tools.get(tool) ?? []), label]);
  }
  const line = (name: string, of: string, fabrics: readonly string[]): Expected => ({
    name,
    of,
    facts: { fabrics: joinWithAnd(fabrics), term },
  });
  return [
    ...[...tools].map(([of, fabrics]) => line('hook or needles', of, fabrics)),
    ...(byGauge.length > 0 ? [line('needles by the gauge', '', byGauge)] : []),
  ];
}
