import * as v from 'valibot';
import { bodyMeasures, chartPoints } from '../../craft';

export const finiteSchema = v.pipe(v.number(), v.finite(), v.minValue(-1e9), v.maxValue(1e9));
const sizeId = v.pipe(v.string(), v.minLength(1), v.maxLength(64));

/** A formula may be wrong and still be kept: what is wrong is said on its cell. It may not be endless. */
export const formulaSchema = v.pipe(v.string(), v.maxLength(2000));
export const labelSchema = v.pipe(v.string(), v.maxLength(200));
export const nameSchema = v.pipe(v.string(), v.regex(/^[\p{L}_][\p{L}\p{M}\p{N}_]*$/u), v.maxLength(64));

export const entrySchema = v.union([
  v.strictObject({ value: v.nullable(finiteSchema) }),
  v.strictObject({ each: v.record(sizeId, v.nullable(finiteSchema)) }),
  v.strictObject({
    chart: v.picklist(bodyMeasures),
    point: v.picklist(chartPoints),
    own: v.exactOptional(v.record(sizeId, finiteSchema)),
  }),
  v.strictObject({ formula: formulaSchema }),
]);
