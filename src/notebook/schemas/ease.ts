import * as v from 'valibot';
import { entrySchema } from './entry';

export const ease = v.object({ by: v.picklist(['length', 'percent']), body: entrySchema, ease: entrySchema });
