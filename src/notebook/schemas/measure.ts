import * as v from 'valibot';
import { entrySchema } from './entry';

export const measure = v.object({
  unit: v.picklist(['length', 'stitches', 'rows', 'mass', 'number', 'percent']),
  entry: entrySchema,
  chosen: v.exactOptional(v.literal(true)),
});
