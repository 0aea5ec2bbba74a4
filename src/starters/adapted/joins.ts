import type { PerSize } from '../../words/printed';
import { check } from '../cells';
import type { Adapting } from './adapting';
import type { Fabric } from './fabrics';
import { addLists, rowsIn, underarmOf, type Part, type Parts, type RowZone } from './parts';
import type { MadePart } from './making';
import type { Wishes } from './wishes';

const alike = (a: PerSize, b: PerSize): boolean =>
  a.every((value, at) => value === b[at]) && a.some((value) => value !== null && value > 0);

/** The rows a piece, as it is fitted again, works in one of the zones; with an edge's rows where they are below. */
function workedIn(made: MadePart, zone: RowZone): string[] {
  return made.stretches
    .filter((one) => one.rows && one.zone === zone)
    .map(({ name }) => `${made.mine.name}_${name}_worked_rows`);
}

/**
 * A check for each join that the pattern itself keeps in every size: sides, armholes, shoulders, sleeves; and what the
 * fitting again promises.
 */
export function putJoins(
  adapting: Adapting,
  parts: Parts,
  made: readonly MadePart[],
  wishes: Wishes,
  main: Fabric,
): void {
  const { shelf, sections, pattern } = adapting;
  const sizes = pattern.sizes.length;
  const put = (label: string, name: string, condition: string, message: string): void =>
    void shelf.put(sections.joins, check(label, condition, message, { name }));
  const of = (part: Part | undefined): MadePart | undefined => made.find((one) => one.part === part);
  const body = of(parts.body);
  const others = made.filter(({ part }) => part.role === 'body' && part !== parts.body);

  if (body) {
    const below = (part: Part): PerSize =>
      addLists([rowsIn(part, 'lower', sizes), belowEdge(part, sizes)], sizes);
    for (const other of others.filter(({ part }) => !part.base)) {
      if (!alike(below(body.part), below(other.part))) continue;
      const name = other.part.piece.label;
      put(
        `Side seams, ${body.part.piece.label} and ${name}`,
        'side_seams',
        `JOINS(${sideRows(body).join(' + ')}; ${sideRows(other).join(' + ')})`,
        `${body.part.piece.label} and ${name} have other numbers of rows below the armhole, so the side seam will not lie flat.`,
      );
    }
    const armhole = rowsIn(body.part, 'armhole', sizes);
    for (const other of others) {
      const line = lineOf(other, made);
      const total = addLists(
        line.map(({ part }) => rowsIn(part, 'armhole', sizes)),
        sizes,
      );
      if (!alike(armhole, total)) continue;
      const rows = line.flatMap((one) => workedIn(one, 'armhole'));
      if (rows.length === 0) continue;
      put(
        `Armholes, ${body.part.piece.label} and ${other.part.piece.label}`,
        'armholes',
        `JOINS(${workedIn(body, 'armhole').join(' + ')}; ${rows.join(' + ')})`,
        'The armholes have other numbers of rows, so the shoulders do not meet.',
      );
    }
    if (body.parting) {
      for (const other of others) {
        const ends = other.part.shapes.at(-1)?.ends ?? other.part.piece.start.count;
        if (!body.part.piece.parted || !alike(ends, body.part.piece.parted.side)) continue;
        put(
          `Shoulders, ${body.part.piece.label} and ${other.part.piece.label}`,
          'shoulders',
          `JOINS(${body.parting.side.name}; ${other.mine.name}_end)`,
          'The shoulders have other counts, so they cannot be joined stitch for stitch.',
        );
      }
    }
  }
  for (const one of made) {
    if (!one.parting) continue;
    put(
      `${one.part.piece.label}: room between the sides`,
      'room_between',
      `${one.parting.middle.name} >= STS(1)`,
      'The two sides take up all the stitches: nothing is left for the neck between them.',
    );
  }
  const picked = parts.pickedUp;
  const sleeve = of(picked?.part);
  if (picked && sleeve && body) {
    const left =
      picked.withUnderarm && underarmOf(body.part, sizes).some((many) => many !== null && many > 0);
    const rows = workedIn(body, 'armhole');
    const under = body.mine.stretches.flatMap(({ kind, name }) =>
      kind === 'leave' ? [`${body.mine.name}_${name}_at_start`, `${body.mine.name}_${name}_at_end`] : [],
    );
    put(
      'Sleeve and armhole, stitch for stitch',
      'sleeve_joins',
      `JOINS(${sleeve.mine.name}_start; 2 * my_side_sts${left ? ` + ${under.join(' + ')}` : ''})`,
      'The sleeve has another count than its armhole gives: both sides and the stitches left at the underarm.',
    );
    put(
      'Sleeve and armhole, row for row',
      'armhole_rows_join',
      `JOINS(${rows.join(' + ')}; my_armhole_rows)`,
      'The sleeve is picked up along another number of rows than the armhole has.',
    );
    put(
      'The sleeve lies flat in its armhole',
      'sleeve_fits',
      `ABS(ARMHOLEFIT(${sleeve.mine.name}_start; ${main.mine}_sts; 2 * my_armhole_rows / ${main.mine}_rows${left ? ` + (${under.join(' + ')}) / ${main.mine}_sts` : ''})) <= 8%`,
      'The sleeve is more than 8 % off the armhole it grows from, so it will pucker or flare: the pattern’s own pick-up cannot be kept with this arm and this armhole.',
    );
    put(
      'The pick-up ratio is kept',
      'ratio_kept',
      `ABS(my_side_sts / my_armhole_rows / (printed_pick / printed_pick_of * (${main.mine}_sts / ${main.mine}_rows) / (${main.printed}_sts / ${main.printed}_rows)) - 1) <= 5%`,
      'More than 5 % more or fewer stitches are picked up for so many rows than the pattern does, even as my gauge has it: spread them evenly.',
    );
    if (wishes.arm) {
      put(
        'Sleeve as wide as wanted',
        'sleeve_width',
        `ABS(${sleeve.mine.name}_start / ${main.mine}_sts - ${wishes.arm.wanted}) <= CM(1)`,
        'The sleeve is more than 1 cm off the upper arm that is wanted.',
      );
    }
  }
  if (wishes.bust && body) {
    const front = made.find(
      ({ part }) => !part.base && /^(?:(?:left|right) )?fronts?\b/iu.test(part.piece.label),
    );
    const counted = /^back\b/iu.test(body.part.piece.label) && front ? [body, front] : [body];
    counted.forEach((one, at) => {
      if (one.start.kind !== 'fit' || counted.findIndex(({ start }) => start.name === one.start.name) < at)
        return;
      put(
        `${one.part.piece.label} within half a repeat`,
        'half_a_repeat',
        `ABS(${one.start.name}_off) <= STS(${one.start.name}_multiple) / 2 + STS(0.000001)`,
        'The count is more than half a repeat off the width that is wanted: less than a whole repeat would be left.',
      );
    });
  }
}

/** Rows of an edge at the bottom of a body piece. */
function belowEdge({ shapes, rowZones }: Part, sizes: number): PerSize {
  const first = shapes.findIndex(({ kind }) => kind === 'leave');
  const below = first < 0 ? shapes.length : first;
  return addLists(
    shapes.filter((_shape, at) => at < below && rowZones[at] === 'kept').map(({ rows }) => rows),
    sizes,
  );
}

function sideRows(made: MadePart): string[] {
  const first = made.part.shapes.findIndex(({ kind }) => kind === 'leave');
  return made.stretches
    .filter((one, at) => one.rows && (first < 0 || at < first))
    .map(({ name }) => `${made.mine.name}_${name}_worked_rows`);
}

/** A piece and those it goes on from. */
function lineOf(one: MadePart, made: readonly MadePart[]): MadePart[] {
  const base = made.find(({ part }) => part === one.part.base);
  return base ? [...lineOf(base, made), one] : [one];
}
