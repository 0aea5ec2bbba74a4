import {
  armholeFit,
  buttonholes,
  checkJoins,
  joinArmhole,
  pickUp,
  pickUpAgainstConvention,
  pickUpEdge,
  pickUpRatio,
  sidewaysRib,
  type EdgeFabric,
  type Rule,
  whole,
} from '../../craft';
import { edgeText, readEdge } from '../edge-text';
import { nth } from './choice.evaluate';
import { inGroups, inSteps, timed } from '../steps';
import type { TradeFunction } from './trade-function';

type Fitted = [multiple: number, plus: number, rule: string, ...edge: string[]];

function fittedEdge(...[multiple, plus, rule, ...edge]: Fitted) {
  const repeats = [{ multiple: whole(multiple), plus: whole(plus) }];
  return pickUpEdge(edge.map(readEdge), { repeats, rule: rule as Rule });
}

/** Stitches picked up along edges, and edges that have to meet. */
export const edges = {
  PICKUPSTITCHES: (rowsPerCm: number, stitchesPerCm: number) =>
    pickUpRatio({ rowsPerCm, stitchesPerCm }).pick,
  PICKUPROWS: (rowsPerCm: number, stitchesPerCm: number) => pickUpRatio({ rowsPerCm, stitchesPerCm }).of,
  PICKUPOFF: (rowsPerCm: number, stitchesPerCm: number) => pickUpRatio({ rowsPerCm, stitchesPerCm }).off,
  PICKUPCONVENTION: (fabric: string, rowsPerCm: number, stitchesPerCm: number) =>
    pickUpAgainstConvention({ fabric: fabric as EdgeFabric, rowsPerCm, stitchesPerCm }).difference,
  PICKUP: (rows: number, stitches: number) => {
    const { groups } = pickUp({ rows: whole(rows), stitches: whole(stitches) });
    return inGroups(
      groups.map(({ pick, skip, times = 1 }) => {
        const group = skip === 0 ? `${pick} in 1` : `${pick} of ${pick + skip}`;
        return times === 1 ? group : timed(group, times);
      }),
    );
  },
  EDGEROWS: (rows: number, pick: number, of: number) =>
    edgeText({ kind: 'rows', rows: whole(rows), pick: whole(pick), of: whole(of) }),
  EDGESTITCHES: (stitches: number) => edgeText({ kind: 'stitches', count: whole(stitches) }),
  EDGEMOTIFS: (motifs: number, each: number) =>
    edgeText({ kind: 'motifs', motifs: whole(motifs), each: whole(each) }),
  EDGECURVE: (length: number, stitchesPerCm: number) => edgeText({ kind: 'curve', length, stitchesPerCm }),
  PICKUPEDGE: (...given: Fitted) => fittedEdge(...given).total,
  PICKUPUNFITTED: (...edge: string[]) => pickUpEdge(edge.map(readEdge)).unfitted,
  PICKUPSHARE: (which: number, ...given: Fitted) =>
    nth(fittedEdge(...given).perStretch, whole(which), ['stretch of this edge', 'stretches of this edge']),
  SIDEWAYSRIB: (length: number, rowsPerCm: number, rule: string = 'nearest') =>
    sidewaysRib({ length, rowsPerCm, rule: rule as Rule }).rows,
  BUTTONHOLES: (length: number, ends: number, count: number, width: number) =>
    inSteps(
      buttonholes({
        length: whole(length),
        ends: whole(ends),
        count: whole(count),
        width: whole(width),
      }).starts.map(String),
    ),
  JOINARMHOLE: (sideRows: number, pick: number, of: number, underarm: number, seam: number) =>
    joinArmhole({
      sideRows: whole(sideRows),
      pick: whole(pick),
      of: whole(of),
      underarm: whole(underarm),
      seam: whole(seam),
    }),
  ARMHOLEFIT: (count: number, stitchesPerCm: number, armhole: number) =>
    armholeFit({ count: whole(count), stitchesPerCm, armhole }).off,
  JOINS: (...counts: number[]) => {
    const sides = counts.map((count, at) => ({ name: `side ${at + 1}`, count: whole(count) }));
    return checkJoins([{ name: 'the join', by: 'stitch', sides }]).every(({ holds }) => holds);
  },
} satisfies Record<string, TradeFunction>;
