import { formula, type Cell } from '../../notebook';
import type { PerSize } from '../read';
import { statedCell } from './adapting';
import { fabricOf } from './fabrics';
import type { Making } from './making';
import { fittedCell, sizeOfStitches } from './numbers';
import type { GarmentPart, StitchZone } from './parts';
import type { Shape } from './shape-of';
import { shortName } from './cell-collector';

/** Stitches left or added at one end, as printed and mine: whole repeats where the pattern's are. */
export function leftCells(
  { adapting, fabrics, scales }: Pick<Making, 'adapting' | 'fabrics' | 'scales'>,
  part: GarmentPart,
  shape: Shape,
  values: PerSize,
  zone: StitchZone,
): { printed: Cell; mine: Cell } {
  const { label, multiple: rule } = part.piece;
  const what = `${label}: ${shape.label.toLowerCase()}`;
  const name = `${shortName(label)}_${shortName(shape.label).slice(0, 20)}`;
  const printed = statedCell(adapting, {
    values,
    unit: 'stitches',
    size: sizeOfStitches[zone],
    label: what,
    name: `printed_${name}_start`,
  });
  const across = scales.across(zone, fabricOf(part, fabrics));
  const whole =
    rule !== undefined &&
    rule.multiple > 1 &&
    values.every((many) => many === null || (many > 0 && many % rule.multiple === 0));
  const mine = whole
    ? fittedCell(adapting, {
        printed,
        across,
        rule: { multiple: rule.multiple, plus: 0 },
        label: what,
        name: `${name}_sts`,
      })
    : adapting.collector.once(
        `left ${printed.name} ${across}`,
        adapting.sections.again,
        () => formula(what, `ROUND(${printed.name} * ${across})`, { name: `${name}_sts` }),
        what,
      );
  return { printed, mine };
}

/** The name of the cell of the stitches left at one underarm of the body as it is fitted again. */
export function underarmName(
  making: Pick<Making, 'adapting' | 'fabrics' | 'scales' | 'parts'>,
): string | undefined {
  const { body } = making.parts;
  const at = body?.shapes.findIndex(({ kind }) => kind === 'leave') ?? -1;
  const shape = body?.shapes[at];
  if (!body || shape?.kind !== 'leave') return undefined;
  const values = shape.atStart.some((many) => many) ? shape.atStart : shape.atEnd;
  return leftCells(making, body, shape, values, body.stitchZones[at]!).mine.name;
}
