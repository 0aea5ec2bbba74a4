import type { Heading, Step } from '../../explain';

/** Steps that follow each other under one name, each with its place in the whole line. */
export interface StretchSteps {
  readonly stretch: Heading | undefined;
  readonly steps: readonly { readonly step: Step; readonly at: number }[];
}

/**
 * The steps of a line by the stretch of the piece that they work; those of no stretch by themselves.
 *
 * @example byStretch([even, taper1, taper2, inAll]).map(({ stretch }) => stretch?.label) // ['Body', 'Neck', undefined]
 */
export function byStretch(steps: readonly Step[]): StretchSteps[] {
  const groups: { stretch: Heading | undefined; steps: { step: Step; at: number }[] }[] = [];
  steps.forEach((step, at) => {
    const last = groups.at(-1);
    if (last && last.stretch?.at === step.stretch?.at) last.steps.push({ step, at });
    else groups.push({ stretch: step.stretch, steps: [{ step, at }] });
  });
  return groups;
}
