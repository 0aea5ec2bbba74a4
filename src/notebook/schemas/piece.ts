import * as v from 'valibot';
import { entrySchema, labelSchema, nameSchema } from './entry';

const base = { name: nameSchema, label: labelSchema, fabric: nameSchema };
const ends = { ...base, atStart: entrySchema, atEnd: entrySchema };
const stretchSchema = v.variant('kind', [
  v.object({ kind: v.literal('even'), ...base, rows: entrySchema }),
  v.object({
    kind: v.literal('taper'),
    ...base,
    to: entrySchema,
    over: entrySchema,
    perRow: entrySchema,
    every: v.picklist([1, 2]),
    before: entrySchema,
    after: entrySchema,
    order: v.picklist(['longFirst', 'shortFirst', 'spread']),
  }),
  v.object({ kind: v.literal('evenly'), ...base, to: entrySchema, ends: v.picklist(['half', 'whole']) }),
  v.object({ kind: v.literal('eachRepeat'), ...base, repeats: entrySchema, by: entrySchema }),
  v.object({ kind: v.literal('gather'), ...base, to: entrySchema, rounds: entrySchema }),
  v.object({ kind: v.literal('leave'), ...ends }),
  v.object({ kind: v.literal('add'), ...ends }),
  v.object({
    kind: v.literal('rows'),
    ...base,
    counts: v.pipe(v.array(entrySchema), v.minLength(1), v.maxLength(400)),
  }),
]);

export const piece = v.object({
  worked: v.picklist(['flat', 'round']),
  start: entrySchema,
  startsOn: v.exactOptional(v.picklist(['RS', 'WS'])),
  stretches: v.pipe(v.array(stretchSchema), v.maxLength(100)),
  ends: v.picklist(['bound off', 'held']),
  aside: v.exactOptional(v.literal(true)),
});
