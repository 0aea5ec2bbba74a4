import * as v from 'valibot';
import { entrySchema } from './entry';

export const asMade = v.object({
  of: v.pipe(v.array(v.object({ width: entrySchema, times: entrySchema })), v.minLength(1), v.maxLength(40)),
  closes: v.picklist(['edge to edge', 'overlapped', 'seamed']),
  less: entrySchema,
  wish: entrySchema,
  within: entrySchema,
});
