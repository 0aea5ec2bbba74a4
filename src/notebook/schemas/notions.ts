import * as v from 'valibot';
import { entrySchema } from './entry';

export const notions = v.object({
  sites: entrySchema,
  every: entrySchema,
  startAt: entrySchema,
  each: entrySchema,
  waste: entrySchema,
});
