import * as v from 'valibot';
import { entrySchema } from './entry';

export const spacing = v.object({
  from: entrySchema,
  to: entrySchema,
  worked: v.picklist(['flat', 'round']),
  ends: v.picklist(['half', 'whole']),
});
