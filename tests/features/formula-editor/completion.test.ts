import { describe, expect, it } from 'vitest';
import { deepestBrackets, longestFormula } from '../../../src/formulas';
import {
  callAround,
  completions,
  wordBefore,
  wrongAlready,
} from '../../../src/features/formula-editor/completion';
import { partsOf } from '../../../src/features/formula-editor/formula-parts';
import { vNeck } from '../../notebooks/v-neck';

const start = vNeck();
const texts = (word: string): string[] => completions(start, word).map(({ text }) => text);

describe('the word at the caret', () => {
  it.each([
    ['bust + cu', 9, 'cu', 7],
    ['bust + cu', 4, 'bust', 0],
    ['2 * ärm', 7, 'ärm', 4],
    ['CM(10', 5, '', 5],
    ['bust ', 5, '', 5],
  ])('of %s, at %i, is "%s"', (text, caret, word, begins) => {
    expect(wordBefore(text, caret)).toEqual({ word, start: begins });
  });
});

describe('what is offered for a word', () => {
  it('is the name itself before those that begin with it, and those before what only contains it', () => {
    const offered = texts('bust');
    expect(offered[0]).toBe('bust');
    expect(offered).toContain('finished_bust');
    expect(offered.indexOf('bust')).toBeLessThan(offered.indexOf('finished_bust'));
  });

  it('is found by its label, whatever it is called: "waist length" is back_waist_length', () => {
    expect(texts('waist')).toContain('back_waist_length');
  });

  it('is a function with its bracket, what it does, and what it gives', () => {
    const [fit] = completions(start, 'foundationch');
    expect(fit).toEqual({
      text: 'FOUNDATIONCHAIN(',
      kind: 'function',
      about: 'The chains to make for a first row, with its turning chain, which may count as a stitch.',
      unit: 'gives a number of stitches',
    });
  });

  it('is a name with its label and what it is', () => {
    const [bust] = completions(start, 'bust', ({ cell }) => (cell === 'bust' ? 'a length' : ''));
    expect(bust).toEqual({ text: 'bust', about: 'Bust', unit: 'a length', kind: 'name' });
  });

  it('is nothing for no word, or for one that nothing has', () => {
    expect(texts('')).toEqual([]);
    expect(texts('zzz')).toEqual([]);
  });
});

describe('the function that is being filled in', () => {
  const around = (text: string, decimal: '.' | ',' = '.'): string | undefined => {
    const call = callAround(text, text.length, decimal);
    return call && `${call.entry.name} ${call.argument}`;
  };

  it.each([
    ['FITREPEAT(', 'FITREPEAT 0'],
    ['fitrepeat(bust * body_sts; 8; ', 'FITREPEAT 2'],
    ['MAX(CM(3); (bust + ', 'MAX 1'],
    ['MAX(CM(3', 'CM 0'],
    ['MAX(CM(3)', 'MAX 0'],
    ['FITREPEAT(bust; 8; 3; ";(', 'FITREPEAT 3'],
    ['bust * (2 + ', undefined],
    ['MAX(1; 2)', undefined],
  ])('in %s is %s', (text, sentence) => expect(around(text)).toBe(sentence));

  it('a comma parts arguments where decimals have points, and is in a number where they have commas', () => {
    expect(around('MAX(1,5')).toBe('MAX 1');
    expect(around('MAX(1,5', ',')).toBe('MAX 0');
  });
});

describe('the parts of a formula being typed', () => {
  it('cover it whole, whatever stands there', () => {
    for (const text of ['= MAX (bu', 'a + "an open text; (', '3,5 × bust % @ {x}', '((((', '😀 + ß', '']) {
      for (const decimal of ['.', ','] as const) {
        expect(
          partsOf(text, decimal)
            .map((part) => part.text)
            .join(''),
        ).toBe(text);
      }
    }
  });

  it('are a function before a bracket and a name elsewhere', () => {
    const kinds = partsOf('max (max; 1', '.').flatMap(({ kind, text }) =>
      text === 'max' || text === '1' ? kind : [],
    );
    expect(kinds).toEqual(['function', 'name', 'number']);
  });
});

describe('a formula that cannot be', () => {
  it('says so at once where going on would not help', () => {
    expect(wrongAlready('bust bust + 1', '.')).toMatch(/An operator/);
    expect(wrongAlready('MAX(bust cuff; ', '.')).toMatch(/An operator/);
    expect(wrongAlready('NOTHING(1) + 2', '.')).toMatch(/no function NOTHING/);
    expect(wrongAlready('A1:B2 + 1', '.')).toMatch(/range/);
  });

  it.each(['', '=', 'bust +', 'MAX(', 'MAX(bust; ', 'MAX(bust; (2 + 3', 'FITREPEAT(bust', '"te'])(
    'is not told of while it is only not finished: %s',
    (text) => expect(wrongAlready(text, '.')).toBeUndefined(),
  );

  it('of ten thousand characters, or with five hundred brackets, says why, and nothing more is made of it', () => {
    const long = `${'bust + '.repeat(1428)}bust`;
    expect(wrongAlready(long, '.')).toMatch(`at most ${longestFormula} characters`);
    expect(wrongAlready(`${'('.repeat(500)}bust`, '.')).toMatch(`at most ${deepestBrackets} deep`);
    expect(callAround(`MAX(${long}`, 10, '.')).toBeUndefined();
    const word = 'b'.repeat(10_000);
    expect(wordBefore(word, word.length).word.length).toBeLessThan(word.length);
  });
});
