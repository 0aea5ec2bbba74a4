import * as v from 'valibot';
import { entrySchema } from './entry';

const repeatSchema = v.object({ multiple: entrySchema, plus: entrySchema });

export const fit = v.object({
  counts: v.picklist(['stitches', 'rows']),
  target: entrySchema,
  ...repeatSchema.entries,
  rule: v.picklist(['nearest', 'up', 'down']),
  more: v.exactOptional(v.pipe(v.array(repeatSchema), v.maxLength(10))),
  parity: v.exactOptional(v.picklist(['odd', 'even'])),
  chain: v.exactOptional(v.object({ turning: entrySchema, counts: v.boolean() })),
});
