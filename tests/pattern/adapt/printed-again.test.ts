import { describe, expect, test } from 'vitest';
import { ownColumn } from '../../../src/notebook';
import { adaptedPullover } from '../../../src/starters';
import { patternOf, sentencesOf } from '../../../src/pattern';
import { sourceOf } from '../write/source-of';

/** The adapted pullover as its maker prints it, part by part. */
async function printed(sizes: 'mine' | 'all' = 'mine'): Promise<(heading: string) => string[]> {
  const whole = adaptedPullover();
  const notebook =
    sizes === 'all' ? whole : { ...whole, sizes: whole.sizes.filter(({ id }) => id === ownColumn) };
  const document = patternOf(await sourceOf(notebook));
  return (heading) => {
    const parts = document.parts.filter((part) => part.heading === heading);
    return sentencesOf({ ...document, parts }).map(({ text }) => text);
  };
}

describe('the adapted pullover, printed, can be followed', () => {
  test('a rib that has no swatch is told as a rib, and the rows after it as stockinette', async () => {
    const of = await printed();
    expect(of('Back')).toContain('Work 16 rows in k2, p2 rib.');
    expect(of('Back')).toContain('Work 84 rows in stockinette.');
    expect(of('Sleeves')).toContain('Work 16 rows in k2, p2 rib.');
  });

  test('its cuffs come to whole repeats of their rib, as the pattern’s do: a multiple of 4 plus 2', async () => {
    const of = await printed('all');
    const ends = of('Sleeves').find((text) => text.startsWith('Bind off all'))!;
    const counts = [...ends.matchAll(/\d+/gu)].map(([count]) => Number(count));
    expect(counts).toHaveLength(10);
    for (const count of counts) expect(count % 4).toBe(2);
  });

  test('the neck’s stitches wait on a holder, the second shoulder is worked the other way round', async () => {
    const of = await printed();
    expect(of('Front shoulder')).toContain(
      'Take up the first 40 sts of the 100 sts left at the end of Front, leaving the 20 sts in the middle on a holder and the last 40 sts for the other side.',
    );
    expect(of('Front shoulder').some((text) => text.startsWith('Dec 1 st at the neck edge'))).toBe(true);
    expect(of('Front shoulder').at(-1)).toBe(
      'Make 2: work the second on the last stitches, reversing the shaping.',
    );
    expect(of('Making up')).toContain(
      'Front: bind off the 20 sts in the middle, or work them into an edging.',
    );
  });

  test('the seam of a sleeve is told, since no join of two pieces tells of it', async () => {
    const of = await printed();
    expect(of('Sleeves').at(-1)).toBe(
      'Make 2. Sew the seam of each from the underarm to the cuff, after the side seams.',
    );
  });

  test('a sleeve is picked up before the side seam: half the underarm, up, down, the other half', async () => {
    const of = await printed();
    const edge = of('Sleeves').flatMap((text) => /^([^:]+): \d+ sts(?: over|, one)/u.exec(text)?.[1] ?? []);
    expect(edge).toEqual([
      'First half of the underarm',
      'Up one side of the armhole',
      'Down its other side',
      'Second half of the underarm',
    ]);
  });
});
