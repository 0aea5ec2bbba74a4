import { ordinal } from './ordinal';

/**
 * How often shaping falls, in the words of instructions.
 *
 * @example shapedEvery({ every: 7, times: 5 }) // 'every 7th row 5 times'
 * @example shapedEvery({ every: 1, times: 1 }) // 'every row once'
 */
export function shapedEvery({ every, times }: { every: number; times: number }): string {
  const often = ['once', 'twice'][times - 1] ?? `${times} times`;
  return `every ${every === 1 ? '' : `${ordinal(every)} `}row ${often}`;
}
