import { expect, test } from 'vitest';
import { frontWidth, neckWidth } from '../../src/craft/bands';

const cardigan = { bust: 104, back: 52, band: 3 };

test('edge to edge, two bands of 3 cm leave 23 cm for each front; closed it is 104 cm again', () => {
  const front = frontWidth({ ...cardigan, closes: 'edge to edge' });
  expect(front).toBe(23);
  expect(52 + 2 * (front + 3)).toBe(104);
});

test('overlapping, one band on the other leaves 24.5 cm', () => {
  const front = frontWidth({ ...cardigan, closes: 'overlapping' });
  expect(front).toBe(24.5);
  expect(52 + 2 * front + 3).toBe(104);
});

test('without a band both are half of what the back leaves', () => {
  for (const closes of ['edge to edge', 'overlapping'] as const) {
    expect(frontWidth({ ...cardigan, band: 0, closes })).toBe(26);
  }
});

test('a back that takes all leaves no fronts', () => {
  expect(() => frontWidth({ bust: 60, back: 56, band: 2, closes: 'edge to edge' })).toThrow(
    'take a narrower back or band',
  );
});

test('a neck band of 2.5 cm narrows a neck of 24 cm to 19', () => {
  expect(neckWidth({ neck: 24, band: 2.5 })).toBe(19);
  expect(() => neckWidth({ neck: 24, band: 12 })).toThrow('less than 12 cm');
});
