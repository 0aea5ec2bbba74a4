import { buttonholes } from '../../../craft';
import { allCells, type PieceCell } from '../../../notebook';
import { sameName } from '../../../formulas';
import { byShape } from '../by-shape';
import { wordsFor, type FabricWords } from '../fabric-words';
import { at, stitchCount, type PieceWriter } from '../piece-writer';
import { sizeList, type BySize } from '../size-list';
import { shapeOf, spacingPhrase, type RowPlan } from '../spacing-phrase';
import type { PatternSource } from '../../source';
import { argumentsOf, argumentTokens } from '../work-out';
import type { StretchBySize } from './stretch';

/** Buttonholes along a row: the plain stitches before each and after the last, and the stitches each takes. */
export interface HolesInRow {
  readonly plan: RowPlan;
  readonly width: number;
}

const called = 'BUTTONHOLES';

/**
 * The buttonholes on the first row of a stretch, where a calculation places them along its stitches:
 * `BUTTONHOLES(band_holes_last; …)` along the stretch `holes` of the piece `band`.
 *
 * @returns the holes in each size; undefined where nothing places any, or they do not fit in some size
 */
export function buttonholesOn(
  source: PatternSource,
  writer: PieceWriter,
  piece: PieceCell,
  stretch: StretchBySize,
): BySize<HolesInRow> | undefined {
  const along = `${piece.name}_${stretch.name}_last`;
  const cell = allCells(source.notebook).find((one) => {
    const [first] = (one.kind === 'formula' && argumentTokens(one.formula, called)) || [];
    return first?.length === 1 && sameName(first[0]!.text) === sameName(along);
  });
  if (cell?.kind !== 'formula') return undefined;
  const holes = writer.sizes.map((size) => holesOf(argumentsOf(source, size, cell.formula, called) ?? []));
  return holes.every((one) => one !== undefined) ? holes : undefined;
}

function holesOf(stated: readonly (number | undefined)[]): HolesInRow | undefined {
  const [length, ends, count, width] = stated;
  if (length === undefined || ends === undefined || count === undefined || width === undefined)
    return undefined;
  try {
    const { starts, gaps } = buttonholes({ length, ends, count, width });
    const before = starts[0]! - 1;
    const last = length - (starts.at(-1)! + width - 1);
    return { plan: { kind: 'decrease', gaps: [before, ...gaps], last }, width };
  } catch {
    return undefined;
  }
}

/**
 * The row of buttonholes, and the rows worked even after it. In knitting a hole of 2 stitches is a yarn over and a
 * decrease; a wider one has no words yet, and nothing is written of it.
 *
 * "Next row (RS): sc 3, ch 2, skip 2 sts, *sc 11, ch 2, skip 2 sts; rep from * 5 more times, sc 3 [86 sts]."
 *
 * @returns whether it was written
 */
export function buttonholeLines(
  writer: PieceWriter,
  stretch: StretchBySize,
  holes: BySize<HolesInRow>,
): boolean {
  const rows = stretch.sizes.map(({ counts }) => counts.length - stretch.done);
  const widths = holes.map((one) => one && one.width);
  const knitting = writer.craft === 'knitting';
  if (rows.some((many) => many < 1) || (knitting && widths.some((width) => width !== 2))) return false;
  const { basic } = wordsFor(writer.craft, stretch.swatch?.stitch);
  const wordsOf = (sizeIndices: readonly number[]): FabricWords => ({
    ...wordsFor(writer.craft, stretch.swatch?.stitch, sideOf(stretch, sizeIndices[0]!)),
    decrease: knitting
      ? 'yo, k2tog'
      : `ch ${sizeList(at(widths, sizeIndices))}, skip ${stitches(at(widths, sizeIndices))}`,
  });
  const plans = holes.map((one) => one && one.plan);
  const all = plans.map((_plan, sizeIndex) => sizeIndex);
  const groups = byShape(plans.map((plan) => plan && shapeOf(plan, wordsOf(all))));
  const next = writer.next(all.map((sizeIndex) => sideOf(stretch, sizeIndex) ?? null));
  const count = stitchCount(stretch.sizes.map(({ counts }) => counts[stretch.done]!));
  const work = (sizeIndices: readonly number[]): string =>
    spacingPhrase(at(plans, sizeIndices), wordsOf(sizeIndices), writer.worked);
  const key = `${stretch.name} holes`;
  writer.byGroups(
    key,
    groups,
    () => writer.line(key, '{next}: {work} [{count}].', { next, work: work(all), count }),
    () =>
      writer.line(key, '{next}: work the buttonholes as follows for your size [{count}].', { next, count }),
    work,
  );
  const after = rows.map((many) => many - 1 || null);
  if (!knitting && after.some((many) => many !== null)) {
    // It is told beside the rows worked even, and is one of them: a band with one row more would be deeper than its twin.
    writer.paragraph(
      `${key} after`,
      `On the next ${writer.row}, the first of those below, work {width} {stitch} in each chain space.`,
      { width: sizeList(widths), stitch: basic },
    );
  }
  writer.even(`${stretch.name} after`, after);
  return true;
}

/** The side of the row of the holes: the sides of rows alternate from the first of the stretch. */
function sideOf(stretch: StretchBySize, sizeIndex: number): 'RS' | 'WS' | 'round' | undefined {
  const side = stretch.sizes[sizeIndex]?.side;
  if (side === undefined || side === 'round' || stretch.done % 2 === 0) return side;
  return side === 'RS' ? 'WS' : 'RS';
}

const stitches = (counts: BySize<number>): string =>
  counts.every((count) => count === null || count === 1)
    ? `${sizeList(counts)} st`
    : `${sizeList(counts)} sts`;
