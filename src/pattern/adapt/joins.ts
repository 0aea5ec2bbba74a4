import type { PerSize } from '../read';
import { check } from '../../notebook';
import type { Adapting } from './adapting';
import type { Fabric } from './fabrics';
import {
  addLists,
  rowsIn,
  underarmOf,
  type GarmentPart,
  type Parts,
  type PickedUp,
  type RowZone,
} from './parts';
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

/** What the joins are told of: the pieces as they are made, and the one that the body is measured on. */
interface Joining {
  readonly made: readonly MadePart[];
  readonly body: MadePart;
  /** The other pieces of the body. */
  readonly others: readonly MadePart[];
  readonly sizes: number;
  put(label: string, name: string, condition: string, message: string): void;
}

/**
 * A check for each join that the pattern itself keeps in every size: sides, armholes, shoulders, sleeves; and what the
 * fitting again promises.
 */
export function putJoins(
  { collector, sections, pattern }: Adapting,
  parts: Parts,
  made: readonly MadePart[],
  wishes: Wishes,
  main: Fabric,
): void {
  const put: Joining['put'] = (label, name, condition, message) =>
    void collector.put(sections.joins, check(label, condition, message, { name }));
  const body = made.find(({ part }) => part === parts.body);
  const others = made.filter(({ part }) => part.role === 'body' && part !== parts.body);
  const joining = body && { made, body, others, sizes: pattern.sizes.length, put };
  if (joining) {
    // In the order in which they are sewn.
    putShoulders(joining);
    putSideSeams(joining);
    putArmholes(joining);
  }
  putRoomBetween(made, put);
  if (joining && parts.pickedUp) putSleeve(joining, parts.pickedUp, wishes, main);
  if (joining && wishes.bust) putHalfARepeat(joining);
}

function putSideSeams({ body, others, sizes, put }: Joining): void {
  const below = (part: GarmentPart): PerSize =>
    addLists([rowsIn(part, 'lower', sizes), belowEdge(part, sizes)], sizes);
  for (const other of others) {
    if (other.part.base || !alike(below(body.part), below(other.part))) continue;
    const name = other.part.piece.label;
    put(
      `Side seams, ${body.part.piece.label} and ${name}`,
      'side_seams',
      `JOINS(${sideRows(body).join(' + ')}; ${sideRows(other).join(' + ')})`,
      `${body.part.piece.label} and ${name} have other numbers of rows below the armhole, so the side seam will not lie flat.`,
    );
  }
}

function putArmholes({ made, body, others, sizes, put }: Joining): void {
  const armhole = rowsIn(body.part, 'armhole', sizes);
  for (const other of others) {
    const line = lineOf(other, made);
    const total = addLists(
      line.map(({ part }) => rowsIn(part, 'armhole', sizes)),
      sizes,
    );
    const rows = line.flatMap((one) => workedIn(one, 'armhole'));
    if (!alike(armhole, total) || rows.length === 0) continue;
    put(
      `Armholes, ${body.part.piece.label} and ${other.part.piece.label}`,
      'armholes',
      // Equal, and no seam: each armhole takes a sleeve.
      `${workedIn(body, 'armhole').join(' + ')} = ${rows.join(' + ')}`,
      'The armholes have other numbers of rows, so the shoulders do not meet.',
    );
  }
}

function putShoulders({ body, others, put }: Joining): void {
  const { parted } = body.part.piece;
  if (!body.parting || !parted) return;
  const side = `(${body.mine.name}_end - ${body.parting.middle.name}) / 2`;
  for (const other of others) {
    const ends = other.part.shapes.at(-1)?.ends ?? other.part.piece.start.count;
    if (!alike(ends, parted.side)) continue;
    put(
      `Shoulders, ${body.part.piece.label} and ${other.part.piece.label}`,
      'shoulders',
      // Told by the last row of the piece, so that words and drawing know whose edge it is.
      `JOINS(${side}; ${other.mine.name}_end)`,
      'The shoulders have other counts, so they cannot be joined stitch for stitch.',
    );
  }
}

function putRoomBetween(made: readonly MadePart[], put: Joining['put']): void {
  for (const { part, parting } of made) {
    if (!parting) continue;
    put(
      `${part.piece.label}: room between the sides`,
      'room_between',
      `${parting.middle.name} >= STS(1)`,
      'The two sides take up all the stitches: nothing is left for the neck between them.',
    );
  }
}

/** A sleeve that grows out of the armhole: stitch for stitch, row for row, flat, at the pattern's ratio, and as wide. */
function putSleeve(
  { made, body, sizes, put }: Joining,
  picked: PickedUp,
  { arm }: Wishes,
  { mine, printed }: Fabric,
): void {
  const sleeve = made.find(({ part }) => part === picked.part)?.mine.name;
  if (sleeve === undefined) return;
  const left = picked.withUnderarm && underarmOf(body.part, sizes).some((many) => many !== null && many > 0);
  const under = body.mine.stretches
    .flatMap(({ kind, name }) =>
      kind === 'leave' ? [`${body.mine.name}_${name}_at_start`, `${body.mine.name}_${name}_at_end`] : [],
    )
    .join(' + ');
  put(
    'Sleeve and armhole, stitch for stitch',
    'sleeve_joins',
    `JOINS(${sleeve}_start; 2 * my_side_sts${left ? ` + ${under}` : ''})`,
    'The sleeve has another count than its armhole gives: both sides and the stitches left at the underarm.',
  );
  put(
    'Sleeve and armhole, row for row',
    'armhole_rows_join',
    `JOINS(${workedIn(body, 'armhole').join(' + ')}; my_armhole_rows)`,
    'The sleeve is picked up along another number of rows than the armhole has.',
  );
  put(
    'The sleeve lies flat in its armhole',
    'sleeve_fits',
    `ABS(ARMHOLEFIT(${sleeve}_start; ${mine}_sts; 2 * my_armhole_rows / ${mine}_rows${left ? ` + (${under}) / ${mine}_sts` : ''})) <= 8%`,
    'The sleeve is more than 8 % off the armhole it grows from, so it will pucker or flare: the pattern’s own pick-up cannot be kept with this arm and this armhole.',
  );
  put(
    'The pick-up ratio is kept',
    'ratio_kept',
    `ABS(my_side_sts / my_armhole_rows / (printed_pick / printed_pick_of * (${mine}_sts / ${mine}_rows) / (${printed}_sts / ${printed}_rows)) - 1) <= 5%`,
    'More than 5 % more or fewer stitches are picked up for so many rows than the pattern does, even as my gauge has it: spread them evenly.',
  );
  if (!arm) return;
  put(
    'Sleeve as wide as wanted',
    'sleeve_width',
    `ABS(${sleeve}_start / ${mine}_sts - ${arm.wanted}) <= CM(1)`,
    'The sleeve is more than 1 cm off the upper arm that is wanted.',
  );
}

function putHalfARepeat({ made, body, put }: Joining): void {
  const front = made.find(
    ({ part }) => !part.base && /^(?:(?:left|right) )?fronts?\b/iu.test(part.piece.label),
  );
  const counted = /^back\b/iu.test(body.part.piece.label) && front ? [body, front] : [body];
  counted.forEach(({ part, start }, at) => {
    if (start.kind !== 'fit' || counted.findIndex((one) => one.start.name === start.name) < at) return;
    put(
      `${part.piece.label} within half a repeat`,
      'half_a_repeat',
      `ABS(${start.name}_off) <= STS(${start.name}_multiple) / 2 + STS(0.000001)`,
      'The count is more than half a repeat off the width that is wanted: less than a whole repeat would be left.',
    );
  });
}

/** Rows of an edge at the bottom of a body piece. */
function belowEdge({ shapes, rowZones }: GarmentPart, sizes: number): PerSize {
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
