import { capital } from '../../format';
import { formula } from '../../notebook';
import { listOf, type Adapting } from './adapting';
import type { Fabric } from './fabrics';
import { furtherNumbers } from './numbers';
import type { Wish } from './wish';
import type { Wishes } from './wishes';

/**
 * What the pattern comes to where it is followed stitch for stitch and row for row with one's own swatch: widths, lengths,
 * and which size would then be nearest.
 */
export function putAdapted(adapting: Adapting, wishes: Wishes, { printed, mine }: Fabric): void {
  const { pattern, collector, sections, beside } = adapting;
  const names = pattern.sizes.map((one) => `"${one.replaceAll('"', '')}"`).join('; ');
  const both = [
    [wishes.bust, 'bust', 'sts'],
    [wishes.arm, 'upper arm', 'sts'],
    [wishes.length, 'length', 'rows'],
    [wishes.sleeve, 'sleeve length', 'rows'],
  ] as const satisfies readonly (readonly [Wish | undefined, string, 'sts' | 'rows'])[];
  for (const [wish, what, of] of both) {
    if (!wish) continue;
    const name = what.replaceAll(' ', '_');
    const ratio = `${printed}_${of} / ${mine}_${of}`;
    const comes = collector.put(
      sections.followed,
      formula(
        `${capital(what)}, followed ${of === 'sts' ? 'stitch for stitch' : 'row for row'}`,
        `${wish.stated} * ${ratio}`,
        {
          name: `followed_${name}`,
        },
      ),
    );
    collector.put(
      sections.followed,
      formula(`${capital(what)}, more than stated`, `${comes.name} - ${wish.stated}`, {
        name: `followed_${name}_more`,
        note:
          of === 'rows'
            ? 'What following the rows does. Where it is not near 0, measure the lengths instead, and shape by rows worked anew.'
            : 'What following the counts does.',
      }),
    );
    collector.put(
      sections.followed,
      formula(
        `Size nearest to the wanted ${what}, so followed`,
        `SIZENAMED(NEARESTSIZE(${wish.wanted} / (${ratio}) / CM(1); ${listOf(wish.values)}); ${names})`,
        {
          name: `followed_${name}_size`,
        },
      ),
    );
    const stated = adapting.sections.printed.find((cell) => cell.name === wish.stated);
    const wanted = adapting.sections.wishes.find((cell) => cell.name === wish.wanted);
    if (stated && wanted) furtherNumbers(adapting, 'Measurements wanted', capital(what), stated, wanted);
    if (stated)
      beside.push({
        group: 'Followed with my swatch, without fitting again',
        label: capital(what),
        printed: stated.id,
        mine: comes.id,
      });
  }
}
