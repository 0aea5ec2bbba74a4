import type { StatedGauge } from './types';

/** The gauge of a fabric; the first where the pattern states none for it. */
export function gaugeFor(gauges: readonly StatedGauge[], fabric: string): StatedGauge | undefined {
  const wanted = fabric.toLowerCase();
  const named = gauges.find(({ fabric: own }) => {
    const known = own.toLowerCase();
    return known !== '' && wanted !== '' && (known.includes(wanted) || wanted.includes(known));
  });
  return named ?? gauges.find(({ rows }) => rows !== undefined) ?? gauges[0];
}
