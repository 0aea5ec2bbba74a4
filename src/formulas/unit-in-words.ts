import {
  area,
  length,
  mass,
  massPerArea,
  plain,
  rowGauge,
  rows,
  sameUnit,
  stitchGauge,
  stitches,
  strain,
  unitSymbol,
  type Unit,
} from './units';

const named: [Unit, string][] = [
  [plain, 'a plain number'],
  [length, 'a length'],
  [area, 'an area'],
  [stitches, 'a number of stitches'],
  [rows, 'a number of rows'],
  [mass, 'a weight'],
  [stitchGauge, 'a stitch gauge'],
  [rowGauge, 'a row gauge'],
  [massPerArea, 'a weight per area'],
  [strain, 'a strain'],
  ['text', 'text'],
  ['truth', 'yes or no'],
  ['fabric', 'a fabric'],
  ['stretch', 'a stretch of a piece'],
  ['piece', 'a piece'],
  ['edge', 'a stretch of an edge'],
];

/** The unit as a sentence calls it: "a length", "a stitch gauge", "stitches² per cm". */
export function unitInWords(unit: Unit): string {
  const known = named.find(([candidate]) => sameUnit(candidate, unit));
  return known ? known[1] : unitSymbol(unit, 'cm');
}
