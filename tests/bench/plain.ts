import {
  areaOf,
  dropSleeveLength,
  finished,
  fitCount,
  gaugeOf,
  joinArmhole,
  lengthOf,
  stitchesIn,
  widthAt,
  workPiece,
} from '../../src/craft';

/**
 * What `garment` asks of a sheet, for one size, written out in TypeScript with no sheet at all. Gives the last width
 * and a sum over everything worked, so that none of it can be left out.
 */
export function plainGarment(cells: number, stitches: number, bust: number): { last: number; sum: number } {
  const perCm = gaugeOf([{ count: stitches, over: 10 }]).perCm;
  const rowsPerCm = gaugeOf([{ count: 16, over: 10 }]).perCm;
  const fabric = { stitches: perCm, rows: rowsPerCm };
  const nearest = (target: number, multiple: number, plus: number): number =>
    fitCount(target, [{ multiple, plus }], 'nearest').count;
  let from = bust + (0 * perCm) / perCm;
  let sum = 0;
  let made = 2;
  while (made < cells) {
    const wide = finished(from, { length: 4 });
    const back = nearest((wide / 2) * perCm, 8, 3);
    const backWidth = back / perCm;
    const sleeveLength = dropSleeveLength({ neckToWrist: 90, bodyWidth: Math.min(backWidth, 80) });
    const sleeveRows = fitCount(sleeveLength * rowsPerCm, [], 'nearest', 'even').count;
    const cuff = nearest(24 * perCm, 4, 2);
    const sideRows = fitCount(21 * rowsPerCm, [], 'nearest', 'even').count;
    const upper = joinArmhole({ sideRows, pick: 2, of: 3, underarm: 6, seam: 2 });
    const neck = nearest(back * 0.3, 2, 1);
    const panel = workPiece({
      name: '',
      worked: 'flat',
      start: back,
      ends: 'bound off',
      stretches: [
        { kind: 'even', rows: 8, fabric },
        { kind: 'even', rows: sideRows, fabric },
        {
          kind: 'taper',
          to: back - 2 * 10,
          over: sleeveRows,
          perRow: 2,
          every: 1,
          before: 0,
          after: 2,
          order: 'longFirst',
          fabric,
        },
      ],
    });
    const length = lengthOf(panel);
    sum += widthAt(panel, 0) + widthAt(panel, length) + areaOf(panel) + stitchesIn(panel) + length;
    sum += wide + back + backWidth + sleeveLength + sleeveRows + cuff + upper + neck;
    let width = backWidth + 2.5;
    made += 11;
    for (let i = 2; i <= 40 && made < cells; i++, made++) {
      switch (i % 6) {
        case 0:
          width = width + (1 / perCm) * (i % 5);
          break;
        case 1:
          width = (width + backWidth) / 2;
          break;
        case 2:
          width = width > 50 ? width - 0.5 : width + 1.5;
          break;
        case 3:
          width = fitCount(width * perCm, [], 'nearest').count / perCm;
          break;
        case 4:
          width = Math.max(width, backWidth, 30) * 0.99;
          break;
        case 5:
          width = fitCount(width * perCm, [{ multiple: 6, plus: 2 }], 'up').count / perCm;
          break;
      }
      sum += width;
    }
    from = 2 * width;
  }
  return { last: from / 2, sum };
}
