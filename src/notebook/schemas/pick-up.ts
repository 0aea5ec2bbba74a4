import * as v from 'valibot';
import { entrySchema, labelSchema, nameSchema } from './entry';

const base = { name: nameSchema, label: labelSchema };
const partSchema = v.variant('kind', [
  v.object({ kind: v.literal('rows'), ...base, rows: entrySchema, pick: entrySchema, of: entrySchema }),
  v.object({ kind: v.literal('stitches'), ...base, count: entrySchema }),
  v.object({ kind: v.literal('motifs'), ...base, motifs: entrySchema, each: entrySchema }),
  v.object({ kind: v.literal('curve'), ...base, length: entrySchema, gauge: entrySchema }),
]);

export const pickUp = v.object({
  edge: v.pipe(v.array(partSchema), v.maxLength(60)),
  multiple: entrySchema,
  plus: entrySchema,
  rule: v.picklist(['nearest', 'up', 'down']),
});
