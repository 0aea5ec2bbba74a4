import { type Cell, type EdgePart, f, formula, pickUp } from '../../notebook';
import { statedCell } from './adapting';
import { fabricOf } from './fabrics';
import { underarmName } from './left-stitches';
import type { Making } from './making';
import { furtherNumbers, rowsCell } from './numbers';
import { rowsIn, type GarmentPart } from './parts';
import { shortName } from './cell-collector';

/**
 * The stitches of a sleeve picked up along the armhole, fitted again: they follow the rows of the armhole and the
 * underarm, so that the sleeve joins it in every size. Undefined for a piece that is not picked up there.
 *
 * @param asPrinted the cell of its stitches as the pattern has them
 * @param what those stitches are called beside the pattern's
 */
export function pickedUpAlongArmhole(
  making: Making,
  part: GarmentPart,
  asPrinted: Cell,
  what: string,
): Cell | undefined {
  const { adapting, fabrics, scales, parts } = making;
  const { pattern, sections, collector } = adapting;
  const { label } = part.piece;
  if (part !== parts.pickedUp?.part || !parts.body) return undefined;
  const { pick, of, withUnderarm } = parts.pickedUp;
  const body = fabricOf(parts.body, fabrics);
  const printedPick = collector.put(
    sections.printed,
    formula('Picked up along the armhole', `STS(${pick})`, { name: 'printed_pick' }),
  );
  const printedOf = collector.put(
    sections.printed,
    formula('in so many rows', `ROWS(${of})`, { name: 'printed_pick_of' }),
  );
  const rows = rowsIn(parts.body, 'armhole', pattern.sizes.length);
  const printedRows = statedCell(adapting, {
    values: rows,
    unit: 'rows',
    size: 'arm',
    label: 'Rows of the armhole',
    name: 'printed_armhole_rows',
  });
  const armhole = rowsCell(
    adapting,
    making.chains.get(parts.body)?.workedIn('armhole') ?? printedRows.name,
    'Rows of the armhole',
    'my_armhole_rows',
  );
  furtherNumbers(adapting, label, 'rows of one side of the armhole', printedRows, armhole);
  const left = withUnderarm ? underarmName(making) : undefined;
  const wanted = `${asPrinted.name} * ${scales.across('arm', fabricOf(part, fabrics))}`;
  const side = collector.put(
    sections.again,
    formula(
      'Stitches picked up along one side of the armhole',
      left ? `ROUND((${wanted} - 2 * ${left}) / 2)` : `ROUND(${wanted} / 2)`,
      {
        name: 'my_side_sts',
        note: 'Half of what the sleeve is to be wide, less the underarm; both sides alike.',
      },
    ),
  );
  const ratio = `${body.mine}_rows; ${side.name} / ${armhole.name} * ${body.mine}_rows`;
  const myPick = collector.put(
    sections.again,
    formula('That is about so many stitches', `PICKUPSTITCHES(${ratio})`, { name: 'my_pick' }),
  );
  const myOf = collector.put(
    sections.again,
    formula('in so many rows', `PICKUPROWS(${ratio})`, { name: 'my_pick_of' }),
  );
  furtherNumbers(adapting, label, 'picked up, about', printedPick, myPick);
  furtherNumbers(adapting, label, 'in so many rows', printedOf, myOf);
  const along = (name: string, of: string): EdgePart => ({
    kind: 'rows',
    name,
    label: of,
    rows: f(armhole.name),
    pick: f(side.name),
    of: f(armhole.name),
  });
  const underarm = (name: string, of: string, count: string): EdgePart => ({
    kind: 'stitches',
    name,
    label: of,
    count: f(count),
  });
  const edge = collector.put(
    sections.again,
    pickUp(
      `${label}: ${what}`,
      // Picked up before the side seams are sewn: the underarm's bound-off stitches lie half at either end.
      [
        ...(left ? [underarm('underarm_before', 'First half of the underarm', left)] : []),
        along('first_side', 'Up one side of the armhole'),
        along('second_side', 'Down its other side'),
        ...(left ? [underarm('underarm_after', 'Second half of the underarm', left)] : []),
      ],
      1,
      0,
      {
        name: `${shortName(label)}_pick_up`,
        note: 'They follow the armhole, so that the sleeve joins it in every size.',
      },
    ),
  );
  furtherNumbers(adapting, label, what, asPrinted, edge);
  return edge;
}
