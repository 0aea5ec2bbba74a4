import * as v from 'valibot';
import { basicStitches } from '../document';
import { entrySchema } from './entry';

const reading = v.object({ count: entrySchema, over: entrySchema });
const readings = v.pipe(v.array(reading), v.minLength(1), v.maxLength(30));

export const swatch = v.object({
  worked: v.pipe(v.string(), v.maxLength(200)),
  stitch: v.exactOptional(v.picklist([...basicStitches.crochet, ...basicStitches.knitting])),
  stitches: readings,
  rows: readings,
  asWorked: v.exactOptional(v.object({ stitches: reading, rows: reading })),
  weighed: v.exactOptional(v.object({ width: entrySchema, length: entrySchema, grams: entrySchema })),
  pulled: v.exactOptional(v.object({ relaxed: entrySchema, stretched: entrySchema })),
  hung: v.exactOptional(
    v.object({ width: entrySchema, length: entrySchema, grams: entrySchema, stretched: entrySchema }),
  ),
  heights: v.exactOptional(v.pipe(v.array(entrySchema), v.maxLength(100))),
});
