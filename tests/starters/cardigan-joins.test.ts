import { expect, test } from 'vitest';
import { joinsOf } from '../../src/notebook/joins-told';
import { cardigan } from '../../src/starters/cardigan';

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
