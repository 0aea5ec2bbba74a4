import { formula } from '../../notebook';
import { statedCell, type Adapting } from './adapting';
import type { Fabric } from './fabrics';
import { rowsIn, underarmOf, type Parts, type RowZone, type StitchZone } from './parts';
import type { Wish } from './wish';
import type { Wishes } from './wishes';

/** How many of one's own stitches or rows stand for one of the pattern's: names of cells. */
export interface Scales {
  across(zone: StitchZone, fabric: Fabric): string;
  down(zone: RowZone, fabric: Fabric): string;
}

const zoneWords: Readonly<Record<StitchZone, string>> = {
  body: 'round the body',
  arm: 'at the upper arm',
  wrist: 'at the wrist',
  other: 'elsewhere',
};

/** `stitchesLeft` names the cells of the stitches at an underarm, mine and the pattern's, once they are made. */
export function scalesOf(
  adapting: Adapting,
  parts: Parts,
  wishes: Wishes,
  main: Fabric,
  stitchesLeft: () => string | undefined,
): Scales {
  const { collector, sections, pattern } = adapting;
  const sizes = pattern.sizes.length;
  const tail = (fabric: Fabric): string =>
    fabric.mine === main.mine ? '' : fabric.mine.replace(/^my_gauge/u, '');

  function across(zone: StitchZone, fabric: Fabric): string {
    const wish: Wish | undefined = {
      body: wishes.bust,
      arm: wishes.arm,
      wrist: wishes.wrist,
      other: undefined,
    }[zone];
    const gauge = `${fabric.mine}_sts / ${fabric.printed}_sts`;
    return collector.once(`across ${zone} ${fabric.mine}`, sections.again, () =>
      formula(
        `My stitches for one of the pattern’s, ${zoneWords[zone]}`,
        wish ? `${gauge} * ${wish.wanted} / ${wish.stated}` : gauge,
        {
          name: `across_${zone}${tail(fabric)}`,
          note: wish
            ? 'Wider by what I want more than the pattern states, and by how much finer my gauge is.'
            : 'By the two gauges alone: the pattern states no measurement that it would follow.',
        },
      ),
    ).name;
  }

  /** A length that takes up a wish, in one fabric: the pattern's rows of it, and how long they are to be. */
  function lengthened(
    zone: 'lower' | 'armhole' | 'sleeve',
    rows: string,
    wanted: string,
    label: string,
    fabric: Fabric,
    note: string,
  ): string {
    const length = collector.once(`wanted ${zone}`, sections.again, () =>
      formula(`Wanted length ${label}`, wanted, { name: `wanted_${zone}`, note }),
    );
    return collector.once(`down ${zone} ${fabric.mine}`, sections.again, () =>
      formula(`My rows for one of the pattern’s ${label}`, `${length.name} * ${fabric.mine}_rows / ${rows}`, {
        name: `down_${zone}${tail(fabric)}`,
      }),
    ).name;
  }

  function kept(fabric: Fabric): string {
    return collector.once(`kept ${fabric.mine}`, sections.again, () =>
      formula(
        'My rows for one of the pattern’s, where the length is kept',
        `${fabric.mine}_rows / ${fabric.printed}_rows`,
        {
          name: `down_kept${tail(fabric)}`,
          note: 'Ribs and other edges keep the length they have in the pattern.',
        },
      ),
    ).name;
  }

  function armholeWanted(fabric: Fabric): { rows: string; wanted: string } | undefined {
    if (!parts.body) return undefined;
    const values = rowsIn(parts.body, 'armhole', sizes);
    if (values.some((rows) => rows === null || rows === 0)) return undefined;
    const rows = statedCell(adapting, {
      values,
      unit: 'rows',
      size: 'arm',
      label: 'Rows of the armhole',
      name: 'printed_armhole_rows',
    }).name;
    const asPrinted = `${rows} / ${fabric.printed}_rows`;
    const { arm } = wishes;
    if (!arm) return { rows, wanted: asPrinted };
    if (!parts.pickedUp) return { rows, wanted: `${asPrinted} * ${arm.wanted} / ${arm.stated}` };
    const mine = parts.pickedUp.withUnderarm ? stitchesLeft() : undefined;
    if (mine === undefined) return { rows, wanted: `${asPrinted} + (${arm.wanted} - ${arm.stated}) / 2` };
    const under = statedCell(adapting, {
      values: underarmOf(parts.body, sizes),
      unit: 'stitches',
      size: 'arm',
      label: 'Stitches at an underarm, in the size of the arm',
      name: 'printed_underarm',
    }).name;
    return {
      rows,
      wanted: `${asPrinted} + (${arm.wanted} - ${arm.stated}) / 2 - (${mine} / ${fabric.mine}_sts - ${under} / ${fabric.printed}_sts)`,
    };
  }

  function down(zone: RowZone, fabric: Fabric): string {
    if (zone === 'kept') return kept(fabric);
    if (zone === 'armhole') {
      const found = armholeWanted(fabric);
      if (!found) return kept(fabric);
      return lengthened(
        'armhole',
        found.rows,
        found.wanted,
        'of the armhole',
        fabric,
        'As deep as the pattern’s, and half as much deeper as the arm is to be wider; what my underarm stitches give is taken off.',
      );
    }
    if (zone === 'lower') {
      if (!parts.body || !wishes.length) return kept(fabric);
      const values = rowsIn(parts.body, 'lower', sizes, true);
      if (values.some((rows) => rows === null || rows === 0)) return kept(fabric);
      const rows = statedCell(adapting, {
        values,
        unit: 'rows',
        size: 'length',
        label: 'Rows below the armhole that follow the length',
        name: 'printed_lower_rows',
      }).name;
      const { wanted, stated, toUnderarm } = wishes.length;
      let text = `${rows} / ${fabric.printed}_rows + ${wanted} - ${stated}`;
      const armhole = toUnderarm ? undefined : armholeWanted(fabric);
      if (armhole) {
        down('armhole', fabric);
        const values = rowsIn(parts.body, 'armhole', sizes);
        const own = statedCell(adapting, {
          values,
          unit: 'rows',
          size: 'length',
          label: 'Rows of the armhole, in the size of the length',
          name: 'printed_armhole_rows_by_length',
        }).name;
        text += ` - (wanted_armhole - ${own} / ${fabric.printed}_rows)`;
      }
      return lengthened(
        'lower',
        rows,
        text,
        'below the armhole',
        fabric,
        'The pattern’s, with what I want longer or shorter, less what the armhole takes up.',
      );
    }
    if (!parts.sleeve || !wishes.sleeve) return kept(fabric);
    const values = rowsIn(parts.sleeve, 'sleeve', sizes, true);
    if (values.some((rows) => rows === null || rows === 0)) return kept(fabric);
    const rows = statedCell(adapting, {
      values,
      unit: 'rows',
      size: 'sleeve',
      label: 'Rows of the sleeve that follow its length',
      name: 'printed_sleeve_rows',
    }).name;
    return lengthened(
      'sleeve',
      rows,
      `${rows} / ${fabric.printed}_rows + ${wishes.sleeve.wanted} - ${wishes.sleeve.stated}`,
      'of the sleeve',
      fabric,
      'The pattern’s, with what I want longer or shorter; the cuff keeps its own.',
    );
  }

  return { across, down };
}
