import { describe, expect, test } from 'vitest';
import { sizeListAt, sizeListsIn } from '../../../src/pattern/read/size-list-at';

describe('a size list in any of the usual ways of printing', () => {
  const four = [104, 112, 120, 128];
  test.each<[string, (number | null)[]]>([
    ['104 (112, 120, 128)', four],
    ['104 (112, 120, 128) sts', four],
    ['104 [112, 120, 128]', four],
    ['104 {112; 120; 128}', four],
    ['104 (112: 120: 128)', four],
    ['104(112,120,128)', four],
    ['104 (112) 120 [128]', four],
    ['104 (112, 120) (128)', four],
    ['104 (112) (120) (128) sts', four],
    ['104 (112-120-128)', four],
    ['104/112/120/128', four],
    ['104 (–, 120, 128)', [104, null, 120, 128]],
    ['104 (112, —, -)', [104, 112, null, null]],
    ['– (112, 120)', [null, 112, 120]],
    ['104', [104]],
    ['41 1/2 (43½, 45 3/4)', [41.5, 43.5, 45.75]],
    ['41.5 (43, 45.5) cm', [41.5, 43, 45.5]],
    ['34" (36", 38")', [34, 36, 38]],
  ])('%s', (text, values) => {
    expect(sizeListAt(text, 0, '.')?.values).toEqual(values);
  });

  test('a decimal comma where the notebook writes one; a semicolon or a comma and a space part the numbers', () => {
    expect(sizeListAt('41,5 (43; 45,5)', 0, ',')?.values).toEqual([41.5, 43, 45.5]);
    expect(sizeListAt('41,5 (43, 45,5)', 0, ',')?.values).toEqual([41.5, 43, 45.5]);
  });

  test('a side of the work, a hint or a second unit in brackets is no size list', () => {
    expect(sizeListAt('5 (RS)', 0, '.')?.values).toEqual([5]);
    expect(sizeListAt('4 in (10 cm)', 0, '.')?.values).toEqual([4]);
    expect(sizeListAt('86 (make 2)', 0, '.')?.values).toEqual([86]);
  });

  test('each list of a line, with its unit and how finely it is printed', () => {
    const [bust, inches] = sizeListsIn('Bust: 86 (91, 96.5) cm / 34 (36, 38) in', '.');
    expect(bust).toMatchObject({ values: [86, 91, 96.5], units: ['cm'], step: 0.5 });
    expect(inches).toMatchObject({ values: [34, 36, 38], units: ['in'], step: 1 });
  });
});
