import * as v from 'valibot';
import { entrySchema, nameSchema } from './entry';

export const yarn = v.object({
  uses: v.pipe(v.array(v.object({ area: entrySchema, fabric: nameSchema })), v.minLength(1), v.maxLength(40)),
  reserve: entrySchema,
  ballGrams: entrySchema,
  ballLength: entrySchema,
});
