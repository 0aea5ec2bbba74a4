import { describe, expect, it } from 'vitest';
import { dropSleeveLength, fitCount, message, plainMessage, workPiece, type Message } from '../../src/craft';
import { formatMessage } from '../../src/format';

const inInches = { length: 'in', decimal: ',' } as const;
const inCm = { length: 'cm', decimal: '.' } as const;

function refusal(work: () => unknown): Message {
  try {
    work();
  } catch (error) {
    return error as Error & Message;
  }
  throw new Error('It was worked.');
}

describe('a message', () => {
  it('has its lengths in the unit of the notebook, as finely as lengths are read', () => {
    const refused = refusal(() => dropSleeveLength({ neckToWrist: 7.62, bodyWidth: 42.142857 }));
    expect(formatMessage(refused, inInches)).toBe(
      'A body 16⅝\u00a0in wide reaches 8¼\u00a0in down each arm, all of the 3\u00a0in from neck to wrist: no sleeve is left. A body narrower than 6\u00a0in leaves one.',
    );
    expect(formatMessage(refused, { length: 'cm', decimal: ',' })).toMatch(/^A body 42,1\u00a0cm wide/);
    expect(plainMessage(refused)).toMatch(/^A body 42\.1429 cm wide/);
  });

  it('keeps the sign of a length', () => {
    const shown = message('less', '{what} must be more than 0. It is {length}.', {
      what: 'Swatch of 10 cm',
      length: { cm: -2.54 },
    });
    expect(formatMessage(shown, inInches)).toBe('Swatch of 10 cm must be more than 0. It is −1\u00a0in.');
    expect(plainMessage(shown)).toBe('Swatch of 10 cm must be more than 0. It is −2.54 cm.');
  });

  it('has its numbers with the decimal mark of the notebook', () => {
    const refused = refusal(() => fitCount(2.5, [{ multiple: 8, plus: 3 }], 'down'));
    expect(formatMessage(refused, inInches)).toContain('as small as 2,5: ');
    expect(formatMessage(refused, inCm)).toBe(plainMessage(refused));
    expect(plainMessage(refused)).toContain('as small as 2.5: ');
  });

  it('has texts as they were typed, whatever digits, units and braces are in them', () => {
    const texts = [
      'Hook 4.5',
      '2.5 cm hem',
      '"size 2.5"',
      'hook 4.5 (old)',
      '{length} # {rows, plural, one {',
    ];
    for (const text of texts) {
      const shown = message('typed', '{text} is {number} where {text} is {length}.', {
        text,
        number: 4.5,
        length: { cm: 5.08 },
      });
      expect(formatMessage(shown, inInches)).toBe(`${text} is 4,5 where ${text} is 2\u00a0in.`);
    }
  });

  it('has a number of a formula with all its digits', () => {
    const shown = message('of-what', '{number} of what?', { number: { typed: -10.123456789 } });
    expect(formatMessage(shown, inInches)).toBe('-10,123456789 of what?');
    expect(plainMessage(shown)).toBe('-10.123456789 of what?');
  });

  it('has one of something in the singular, and none, several and halves in the plural', () => {
    const inWords = (rows: number): string =>
      formatMessage(
        message('rows', '{rows, plural, one {# row is} other {# rows are}} left of {all}.', { rows, all: 9 }),
        inInches,
      );
    expect([1, 0, 3, 1.5].map(inWords)).toEqual([
      '1 row is left of 9.',
      '0 rows are left of 9.',
      '3 rows are left of 9.',
      '1,5 rows are left of 9.',
    ]);
  });

  it('has the messages in it written in the same way', () => {
    const shown = message('outer', '{inner} Or {count}.', {
      inner: message('inner', 'It is {length}.', { length: { cm: 25.4 } }),
      count: 1.5,
    });
    expect(formatMessage(shown, inInches)).toBe('It is 10\u00a0in. Or 1,5.');
  });
});

describe('a stretch in a message', () => {
  const fabric = { stitches: 1.4, rows: 1.6 };
  const even = { kind: 'even', rows: 3, fabric } as const;
  const steep = { kind: 'taper', to: 2, over: 3, perRow: 1, every: 1, before: 0, after: 0, fabric } as const;
  const refused = (label?: string): Message =>
    refusal(() =>
      workPiece({
        name: 'Sleeve',
        worked: 'flat',
        start: 40,
        stretches: [even, { ...steep, ...(label === undefined ? {} : { label }) }],
      }),
    );

  it('has the label it has in the notebook, however many digits are in that', () => {
    const labels = ['Cuff', '2.5 cm hem'];
    expect(formatMessage(refused(), inInches, (at) => labels[at - 1])).toMatch(
      /^Stretch 2 \(2\.5 cm hem\): From 40 to 2 takes 38 shaping rows, too many for 3 rows:/,
    );
    expect(formatMessage(refused(), inInches)).toMatch(/^Stretch 2: From 40 /);
    expect(formatMessage(refused(), inInches, () => '')).toMatch(/^Stretch 2: From 40 /);
  });

  it('has its own label where it was given one', () => {
    expect(plainMessage(refused('Cap'))).toMatch(/^Stretch 2 \(Cap\): From 40 /);
    expect(formatMessage(refused('Cap'), inInches, () => 'Cuff')).toMatch(/^Stretch 2 \(Cap\): From 40 /);
  });

  it('is asked for its label only where there is one in the message', () => {
    const wanted: number[] = [];
    const labelOf = (at: number): undefined => void wanted.push(at);
    formatMessage(message('none', 'Nothing {here}.', { here: 'here' }), inInches, labelOf);
    expect(wanted).toEqual([]);
    formatMessage(refused(), inInches, labelOf);
    expect(wanted).toEqual([2]);
  });
});
