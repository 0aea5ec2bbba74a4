import { describe, expect, test } from 'vitest';
import { UnreadableFile, checkFile } from './check-file';

const crown = {
  id: 'crown',
  topic: 'crown of 4 wedges',
  kind: 'arithmetic',
  given: { stitches: 12, wedges: 4 },
  expect: [8, 4] as unknown,
};
const shoulder = {
  id: 'shoulder',
  topic: 'sloped shoulder by short rows',
  kind: 'arithmetic',
  given: { castOn: [83, 93], bo: [7, 8], times: [6, 7], neck: [25, 29] },
  expect: { after: [69, 77], above: [57, 63], shoulder: [16, 17] } as unknown,
};
const fileOf = (...examples: unknown[]) => JSON.stringify({ about: 'Worked examples', examples });
const check = (...examples: unknown[]) => checkFile('construction', fileOf(...examples));

describe('a file of constructions', () => {
  test('ends with how many hold', () => {
    expect(check(crown, shoulder)).toEqual({ lines: ['2 hold, 0 fall short, 0 not yet'], exitCode: 0 });
  });

  test('has a line for what falls short, with both values', () => {
    expect(check({ ...crown, expect: [8, 5] }).lines).toEqual([
      'falls short: crown: The list is 8, 5 in the source, and 8, 4 by ours',
      '0 hold, 1 fall short, 0 not yet',
    ]);
    const { lines, exitCode } = check({
      ...shoulder,
      expect: { after: [69, 77], above: [57, 64], shoulder: [16, 18] },
    });
    expect(lines[0]).toBe(
      'falls short: shoulder: above is 57, 64 in the source, and 57, 63 by ours; shoulder is 16, 18 in the source, and 16, 17 by ours',
    );
    expect(exitCode).toBe(1);
  });

  test('what is refused falls short, with the reason', () => {
    const [line] = check({ ...crown, given: { stitches: 13, wedges: 4 } }).lines;
    expect(line).toMatch(/^falls short: crown: ours cannot be worked\. From 13 to 4 is 9 stitches/);
  });

  test.each([
    ['a kind that is not known', { ...crown, kind: 'riddle' }, 'its kind, “riddle”, is not known'],
    ['a table', { ...crown, kind: 'table' }, 'a table to compare with, and nothing to compute'],
    ['another topic', { ...crown, topic: 'hat brim' }, 'nothing computes “hat brim” from stitches, wedges'],
    [
      'something given that no computation knows',
      { ...crown, given: { ...crown.given, every: 2 } },
      'nothing computes “crown of 4 wedges” from stitches, wedges, every',
    ],
    [
      'something missing',
      { ...crown, given: { wedges: 4 } },
      'nothing computes “crown of 4 wedges” from wedges',
    ],
    ['nothing given', { ...crown, given: {} }, 'nothing computes “crown of 4 wedges” from nothing'],
    [
      'words for a number',
      { ...crown, given: { stitches: 'twelve', wedges: 4 } },
      'its stitches is not a number or a list of numbers',
    ],
    [
      'fields asked where a list is computed',
      { ...crown, expect: { top: 4 } },
      'what it asks for is not what is computed',
    ],
    ['neither fields nor a list asked', { ...crown, expect: 4 }, 'it asks neither for fields nor for a list'],
    ['no field asked', { ...shoulder, expect: {} }, 'it asks for nothing'],
    [
      'a field that nothing computes',
      { ...shoulder, expect: { above: [57, 63], turns: [4, 8] } },
      'turns cannot be computed yet',
    ],
    [
      'lists for different numbers of sizes',
      { ...shoulder, given: { ...shoulder.given, neck: [25] } },
      'its lists are not of the same number of sizes',
    ],
  ])('%s is not yet', (_, example, why) => {
    const { lines, exitCode } = check(example, crown);
    expect(lines).toEqual([`not yet: ${example.id}: ${why}`, '1 hold, 0 fall short, 1 not yet']);
    expect(exitCode).toBe(0);
  });

  test('what differs falls short even where something else is not yet', () => {
    const [line] = check({ ...shoulder, expect: { above: [57, 64], turns: [4, 8] } }).lines;
    expect(line).toMatch(/^falls short: shoulder: above is 57, 64/);
  });

  test('one value may stand for all sizes, where all come to it', () => {
    const given = { castOn: [83, 93], bo: [7, 12], times: 6, neck: [25, 25] };
    expect(check({ ...shoulder, given, expect: { above: 57 } }).lines).toEqual([
      '1 hold, 0 fall short, 0 not yet',
    ]);
    expect(check({ ...shoulder, expect: { above: 57 } }).exitCode).toBe(1);
  });

  test('the unit of the lengths is no number to compute with', () => {
    const given = { bust: 36, sts: 6.375, yoke: 7.25, rounds: 8, unit: 'in' };
    const yoke = { ...crown, topic: 'circular yoke', given, expect: { bust: 230, yokeRounds: 58 } };
    expect(check(yoke).lines).toEqual(['1 hold, 0 fall short, 0 not yet']);
  });

  test('a decimal agrees to within half of its last digit, a whole number exactly', () => {
    const waist = {
      ...crown,
      given: { hip: 45.5, waist: 38.01, sts: 7, waistSts: 267 },
      expect: { exact: 52.4 } as unknown,
    };
    expect(check(waist).exitCode).toBe(0);
    expect(check({ ...waist, expect: { exact: 52.3 } }).exitCode).toBe(1);
    expect(check({ ...waist, expect: { exact: 52 } }).exitCode).toBe(1);
  });
});

describe('kinds that are not computed yet', () => {
  test.each([
    ['fabrics', { fabrics: [{}, {}] }, 'Fabrics are not computed yet: none of the 2 here was tried.'],
    ['fabrics', { faulty: [{}] }, 'Fabrics are not computed yet: none of the 1 here was tried.'],
    ['fits', { checks: [{}, {}, {}] }, 'Fits are not computed yet: none of the 3 here was tried.'],
  ])('%s say so', (kind, file, says) => {
    expect(checkFile(kind, JSON.stringify(file))).toEqual({
      lines: [says, '0 hold, 0 fall short'],
      exitCode: 1,
    });
  });
});

describe('what cannot be checked is told in one sentence', () => {
  const refused = (kind: string, text: string) => {
    try {
      checkFile(kind, text);
    } catch (error) {
      expect(error).toBeInstanceOf(UnreadableFile);
      return (error as Error).message;
    }
    throw new Error('It was taken.');
  };
  test.each([
    ['{"examples": [', /^The file is not JSON \(.+\)\.$/],
    ['no\nJSON\nat all', /^The file is not JSON \(.+\)\.$/],
    ['[]', /^The file has no list of construction: it should be under “examples”\.$/],
    ['null', /^The file has no list/],
    ['{"examples": {}}', /^The file has no list/],
    [fileOf(crown, 7), /^Example 2 is not an example: it has no fields\.$/],
    [fileOf({ ...crown, id: 3 }), /^Example 1 has no id, which should be text\.$/],
    [fileOf({ ...crown, topic: undefined }), /^Example 1 has no topic, which should be text\.$/],
    [fileOf({ ...crown, kind: null }), /^Example 1 has no kind, which should be text\.$/],
    [fileOf({ ...crown, given: [1] }), /^Example 1 \(crown\) gives nothing\.$/],
    [fileOf({ ...crown, expect: undefined }), /^Example 1 \(crown\) does not say what it comes to\.$/],
  ])('%s', (text, says) => {
    expect(refused('construction', text)).toMatch(says);
  });

  test('a kind of file that there is not', () => {
    expect(refused('toString', '{}')).toBe('Say which kind of file it is: construction, fabrics, fits.');
    expect(refused('fabrics', '{}')).toBe(
      'The file has no list of fabrics: it should be under “fabrics” or “faulty”.',
    );
  });
});
