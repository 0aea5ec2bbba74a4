import * as v from 'valibot';
import { formulaSchema } from './entry';

export const check = v.object({
  condition: formulaSchema,
  message: v.pipe(v.string(), v.maxLength(500)),
  across: v.exactOptional(v.picklist(['differ', 'grow', 'steady', 'meet', 'no child'])),
});
