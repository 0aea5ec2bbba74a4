import { describe, expect, it } from 'vitest';
import { verifyPiece } from '../../../src/pattern/verify';
import { begunFromPiece, holesIn, paragraphSays } from '../../../src/pattern/verify/read-side-statements';

const side =
  'Take up the first 33 (35) sts of the 82 (90) sts left at the end of Front, leaving the 16 (20) sts in the middle on a holder and the last 33 (35) sts for the other side.';

describe('one of two sides of a piece', () => {
  it('is read in each size, with the piece, the middle and the other side', () => {
    expect(begunFromPiece(side, 1, 2)).toEqual({
      kind: 'begun',
      how: 'taken up',
      from: 'Front',
      of: 90,
      others: 'on a holder',
      side: { middle: 20, last: 35 },
    });
  });

  it('is no side where it does not say which stitches come first', () => {
    expect(begunFromPiece(side.replace('the first ', ''), 1, 2)).not.toHaveProperty('side');
  });
});

describe('buttonholes in crochet', () => {
  it('are chained over the stitches they skip', () => {
    expect(holesIn('sc 3, ch 2, skip 2 sts, *sc 11, ch 2, skip 2 sts; rep from * once more, sc 3')).toEqual([
      2,
    ]);
    expect(holesIn('dc 3, ch 1, miss 1 st, dc 3')).toEqual([1]);
    expect(holesIn('sc 3, ch 2, sc 3')).toEqual([]);
  });

  it('are worked into on the row after, so often in each size', () => {
    const text = 'On the next row, the first of those below, work 2 (3) sc in each chain space.';
    expect(paragraphSays(text, 1, 2)).toEqual({ kind: 'spaces', each: 3, stitch: 'sc' });
    // A list that is of other sizes says nothing of this one.
    expect(paragraphSays(text, 1, 3)).toEqual({ kind: 'words', text });
    const { says, problems } = verifyPiece(
      [
        'Ch 8.',
        'The next row is worked into the chain: sc in the 2nd ch from hook and in each ch across [7 sts].',
        'Next row (RS): sc 2, ch 3, skip 3 sts, sc 2 [7 sts].',
        { kind: 'paragraph', text },
      ],
      { sizes: ['S', 'M'], sizeIndex: 1 },
    );
    expect(problems).toEqual([]);
    const row = (kind: string) => says.find((stated) => stated.kind === kind)?.row;
    expect(row('spaces')! - row('holes')!).toBe(1);
  });
});
