import { measuredBy } from './measured-by';
import type { ImportDiagnostic, StatedGauge, StatedPattern } from './types';

const shown = (cm: number): string => String(Math.round(cm * 10) / 10);

/** What the parts of a pattern say against each other: two gauges, and counts that do not give a stated measurement. */
export function contradictions(pattern: StatedPattern): ImportDiagnostic[] {
  return [...gaugesApart(pattern.gauges), ...countsAgainstMeasures(pattern)];
}

function gaugesApart(gauges: readonly StatedGauge[]): ImportDiagnostic[] {
  return gauges.flatMap((gauge, at): ImportDiagnostic[] => {
    const before = gauges
      .slice(0, at)
      .find(
        (one) => one.fabric.toLowerCase() === gauge.fabric.toLowerCase() && one.stitches && gauge.stitches,
      );
    if (!before?.stitches || !gauge.stitches) return [];
    const off = gauge.stitches / before.stitches - 1;
    if (Math.abs(off) < 1e-6) return [];
    return [
      {
        range: gauge.range,
        kind: 'contradiction',
        message: `This gauge is ${shown(Math.abs(off) * 100)} % ${off > 0 ? 'tighter' : 'looser'} than the one stated before it (${before.over === gauge.over ? `both over ${gauge.over}` : `that is over ${before.over}, this over ${gauge.over}; 4 in are 10.16 cm`}). The first is used: delete the one that is wrong, or say which fabric each is of.`,
      },
    ];
  });
}

function countsAgainstMeasures(pattern: StatedPattern): ImportDiagnostic[] {
  return pattern.measures.flatMap((measure): ImportDiagnostic[] => {
    const by = measuredBy(pattern, measure);
    if (!by) return [];
    const off = measure.values.map((value, size) => {
      const made = by.values[size];
      return value === null || made === null || made === undefined ? null : made - value;
    });
    const allowed = Math.max(by.halfStitch, measure.step / 2) + 1e-6;
    const known = off.filter((one) => one !== null);
    if (known.length === 0) return [];
    // Seams, bands or a border take or add the same in every size: that is no misprint, and it is said once.
    const [least, most] = [Math.min(...known), Math.max(...known)];
    const same =
      most - least <= 2 * allowed && Math.min(Math.abs(least), Math.abs(most)) > allowed && least * most > 0;
    if (same) {
      const mean = known.reduce((sum, one) => sum + one, 0) / known.length;
      return [
        {
          range: measure.range,
          kind: 'to know',
          message: `At the stated gauge ${by.what} make about ${shown(Math.abs(mean))} cm ${mean > 0 ? 'more' : 'less'} than this in every size: seams, a band or a border may account for it.`,
        },
      ];
    }
    const wrong = off.flatMap((one, size) =>
      one !== null && Math.abs(one) > allowed
        ? [{ size: pattern.sizes[size]!, off: one, made: by.values[size]!, stated: measure.values[size]! }]
        : [],
    );
    if (wrong.length === 0) return [];
    const texts = wrong
      .slice(0, 3)
      .map(
        ({ size, made, stated: message, off: by1 }) =>
          `size ${size}: ${by.count} give ${shown(made)} cm where ${shown(message)} cm is stated, ${by.stitches(by1)}`,
      );
    return [
      {
        range: measure.range,
        kind: 'contradiction',
        message: `At the stated gauge ${by.what} do not give this measurement in ${texts.join('; ')}${wrong.length > 3 ? `; and ${wrong.length - 3} more sizes` : ''}. Correct the measurement, the count or the gauge.`,
      },
    ];
  });
}
