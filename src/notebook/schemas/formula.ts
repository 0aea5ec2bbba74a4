import * as v from 'valibot';
import { formulaSchema } from './entry';

export const formula = v.object({ formula: formulaSchema });
