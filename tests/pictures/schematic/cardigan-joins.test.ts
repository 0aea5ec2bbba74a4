import { expect, test } from 'vitest';
import { joinsOf } from '../../../src/notebook/joins';
import { joinsInWords, layoutOf } from '../../../src/pictures/schematic';
import { cardigan } from '../../../src/starters/cardigan';
import { specOf } from './spec-of';

test('the neckband of the cardigan goes along the neck of a front, stretch by stretch, and its first row', () => {
  const band = joinsOf(cardigan()).find(({ id }) => id === 'neckband-sts')!;
  // Of the right front: the two rows on which stitches are left, and the taper after them.
  for (const stretch of [4, 6, 7]) {
    expect(band.edges).toContainEqual(
      expect.objectContaining({ piece: 'right-front', edge: 'side', stretch }),
    );
  }
  expect(band.edges).toContainEqual({ piece: 'neckband', edge: 'start' });
});

test('each join of the cardigan names all the pieces that meet in it, and each edge of them once', async () => {
  const joins = new Map(joinsInWords(await specOf(cardigan())).map(({ label, words }) => [label, words]));
  const plain = (label: string): string[] =>
    joins
      .get(label)!
      .replace(/[\u2068\u2069]/gu, '')
      .split(' – ');
  expect(plain('Shoulders')).toEqual(['Back, last row', 'Right front, last row', 'Left front, last row']);
  expect(plain('Neckband stitches')).toEqual([
    'Right front, row ends of Neck to shoulder',
    'Back, last row',
    'Left front, row ends of Neck to shoulder',
    'Neckband, first row',
  ]);
  expect(plain('Right band stitches')).toEqual([
    'Front hem, last row',
    'Right front, row ends of Hem to underarm',
    'Right front, row ends of Underarm to neck',
    'Neckband, row ends',
    'Buttonhole band, first row',
  ]);
  expect(plain('Hems at the sides')).toEqual(['Back hem, last row', 'Front hem, first row']);
});

test('what is worked up from a hem or a cuff stands on it, and what is picked up at an edge hangs', () => {
  const layout = layoutOf(cardigan(), joinsOf(cardigan()));
  const hangs = [...layout].filter(([, one]) => one.hangs).map(([id]) => id);
  expect(hangs).toEqual(['neckband', 'button-band', 'buttonhole-band']);
});
