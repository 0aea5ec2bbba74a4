import { basicStitches, type Swatch } from '../../notebook';

const hook = /\bhooks?\b/iu;
const inCrochet = /\b(?:crochet(?:ed)?|chains?|ch|sc|hdc|htr|dc|tr|shells?|(?:front |back )?posts?)\b/iu;

/** Whether a swatch is crocheted by what it says itself: its stitch, its label, how it was worked. */
function isCrocheted({ stitch, label, worked }: Swatch): boolean {
  return (
    (stitch !== undefined && (basicStitches.crochet as readonly string[]).includes(stitch)) ||
    inCrochet.test(`${label} ${worked}`)
  );
}

/**
 * Whether a swatch names a hook that its fabric is not worked with: the notebook was turned to knitting, and the words
 * on the swatch stayed. What size of needles takes its place no conversion says; the gauge decides (common practice).
 */
export function namesOtherTool(swatch: Swatch, craft: 'crochet' | 'knitting'): boolean {
  return craft === 'knitting' && hook.test(swatch.worked) && !isCrocheted(swatch);
}

/**
 * How a swatch was worked, as the pattern prints it.
 *
 * @example workedWith({ …, worked: '6.5 mm hook, flat' }, 'crochet')  // '6.5 mm hook, flat'
 * @example workedWith({ …, worked: '6.5 mm hook, flat' }, 'knitting') // 'flat'
 */
export function workedWith(swatch: Swatch, craft: 'crochet' | 'knitting'): string {
  const worked = swatch.worked.trim();
  if (!namesOtherTool(swatch, craft)) return worked;
  return worked
    .split(/[,;]/u)
    .map((part) => part.trim())
    .filter((part) => part !== '' && !hook.test(part))
    .join(', ');
}
