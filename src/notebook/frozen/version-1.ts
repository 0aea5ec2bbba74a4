import * as v from 'valibot';

/*
 * The file as it was in version 1, frozen: a file of that version is checked by this before it is brought to the next,
 * whatever became of the document since. Nothing here follows a change elsewhere, so its lists and limits are its own.
 */

const finiteSchema = v.pipe(v.number(), v.finite(), v.minValue(-1e9), v.maxValue(1e9));
const sizeId = v.pipe(v.string(), v.minLength(1), v.maxLength(64));

/** A formula may be wrong and still be kept: what is wrong is said on its cell. It may not be endless. */
const formulaSchema = v.pipe(v.string(), v.maxLength(2000));
const labelSchema = v.pipe(v.string(), v.maxLength(200));
const nameSchema = v.pipe(v.string(), v.regex(/^[\p{L}_][\p{L}\p{M}\p{N}_]*$/u), v.maxLength(64));

const entrySchema = v.union([
  v.strictObject({ value: v.nullable(finiteSchema) }),
  v.strictObject({ each: v.record(sizeId, v.nullable(finiteSchema)) }),
  v.strictObject({
    chart: v.picklist([
      'bust',
      'neckToWrist',
      'backWaistLength',
      'crossBack',
      'armLengthToUnderarm',
      'upperArm',
      'armholeDepth',
      'waist',
      'hips',
    ]),
    point: v.picklist(['lower', 'middle', 'upper']),
    own: v.exactOptional(v.record(sizeId, finiteSchema)),
  }),
  v.strictObject({ formula: formulaSchema }),
]);

const measure = v.object({
  unit: v.picklist(['length', 'stitches', 'rows', 'mass', 'number', 'percent']),
  entry: entrySchema,
  chosen: v.exactOptional(v.literal(true)),
});

const reading = v.object({ count: entrySchema, over: entrySchema });
const readings = v.pipe(v.array(reading), v.minLength(1), v.maxLength(30));

const swatch = v.object({
  worked: v.pipe(v.string(), v.maxLength(200)),
  stitch: v.exactOptional(v.picklist(['sc', 'hdc', 'dc', 'tr', 'stockinette', 'garter'])),
  stitches: readings,
  rows: readings,
  asWorked: v.exactOptional(v.object({ stitches: reading, rows: reading })),
  weighed: v.exactOptional(v.object({ width: entrySchema, length: entrySchema, grams: entrySchema })),
  pulled: v.exactOptional(v.object({ relaxed: entrySchema, stretched: entrySchema })),
  hung: v.exactOptional(
    v.object({ width: entrySchema, length: entrySchema, grams: entrySchema, stretched: entrySchema }),
  ),
  heights: v.exactOptional(v.pipe(v.array(entrySchema), v.maxLength(100))),
});

const ease = v.object({ by: v.picklist(['length', 'percent']), body: entrySchema, ease: entrySchema });

const formula = v.object({ formula: formulaSchema });

const repeatSchema = v.object({ multiple: entrySchema, plus: entrySchema });

const fit = v.object({
  counts: v.picklist(['stitches', 'rows']),
  target: entrySchema,
  ...repeatSchema.entries,
  rule: v.picklist(['nearest', 'up', 'down']),
  more: v.exactOptional(v.pipe(v.array(repeatSchema), v.maxLength(10))),
  parity: v.exactOptional(v.picklist(['odd', 'even'])),
  chain: v.exactOptional(v.object({ turning: entrySchema, counts: v.boolean() })),
});

const spacing = v.object({
  from: entrySchema,
  to: entrySchema,
  worked: v.picklist(['flat', 'round']),
  ends: v.picklist(['half', 'whole']),
});

const partBase = { name: nameSchema, label: labelSchema };
const partSchema = v.variant('kind', [
  v.object({ kind: v.literal('rows'), ...partBase, rows: entrySchema, pick: entrySchema, of: entrySchema }),
  v.object({ kind: v.literal('stitches'), ...partBase, count: entrySchema }),
  v.object({ kind: v.literal('motifs'), ...partBase, motifs: entrySchema, each: entrySchema }),
  v.object({ kind: v.literal('curve'), ...partBase, length: entrySchema, gauge: entrySchema }),
]);

const pickUp = v.object({
  edge: v.pipe(v.array(partSchema), v.maxLength(60)),
  multiple: entrySchema,
  plus: entrySchema,
  rule: v.picklist(['nearest', 'up', 'down']),
});

const stretchBase = { name: nameSchema, label: labelSchema, fabric: nameSchema };
const ends = { ...stretchBase, atStart: entrySchema, atEnd: entrySchema };
const stretchSchema = v.variant('kind', [
  v.object({ kind: v.literal('even'), ...stretchBase, rows: entrySchema }),
  v.object({
    kind: v.literal('taper'),
    ...stretchBase,
    to: entrySchema,
    over: entrySchema,
    perRow: entrySchema,
    every: v.picklist([1, 2]),
    before: entrySchema,
    after: entrySchema,
    order: v.picklist(['longFirst', 'shortFirst', 'spread']),
  }),
  v.object({
    kind: v.literal('evenly'),
    ...stretchBase,
    to: entrySchema,
    ends: v.picklist(['half', 'whole']),
  }),
  v.object({ kind: v.literal('eachRepeat'), ...stretchBase, repeats: entrySchema, by: entrySchema }),
  v.object({ kind: v.literal('gather'), ...stretchBase, to: entrySchema, rounds: entrySchema }),
  v.object({ kind: v.literal('leave'), ...ends }),
  v.object({ kind: v.literal('add'), ...ends }),
  v.object({
    kind: v.literal('rows'),
    ...stretchBase,
    counts: v.pipe(v.array(entrySchema), v.minLength(1), v.maxLength(400)),
  }),
]);

const piece = v.object({
  worked: v.picklist(['flat', 'round']),
  start: entrySchema,
  startsOn: v.exactOptional(v.picklist(['RS', 'WS'])),
  stretches: v.pipe(v.array(stretchSchema), v.maxLength(100)),
  ends: v.picklist(['bound off', 'held']),
  aside: v.exactOptional(v.literal(true)),
});

const yarn = v.object({
  uses: v.pipe(v.array(v.object({ area: entrySchema, fabric: nameSchema })), v.minLength(1), v.maxLength(40)),
  reserve: entrySchema,
  ballGrams: entrySchema,
  ballLength: entrySchema,
});

const notions = v.object({
  sites: entrySchema,
  every: entrySchema,
  startAt: entrySchema,
  each: entrySchema,
  waste: entrySchema,
});

const check = v.object({
  condition: formulaSchema,
  message: v.pipe(v.string(), v.maxLength(500)),
  across: v.exactOptional(v.picklist(['differ', 'grow', 'no child'])),
});

const note = v.object({ text: v.pipe(v.string(), v.maxLength(10_000)) });

const shapes = { measure, swatch, ease, formula, fit, spacing, pickUp, piece, yarn, notions, check, note };

const id = v.pipe(v.string(), v.minLength(1), v.maxLength(64));

/** What every cell has in a file. */
const cellBase = {
  id,
  label: labelSchema,
  name: nameSchema,
  note: v.exactOptional(v.pipe(v.string(), v.maxLength(10_000))),
  taken: v.exactOptional(v.record(v.pipe(v.string(), v.maxLength(64)), formulaSchema)),
};

/** A cell: what every cell has, and what its kind declares. */
const cellSchema = v.pipe(
  v.looseObject({ ...cellBase, kind: v.picklist(Object.keys(shapes) as (keyof typeof shapes)[]) }),
  v.rawTransform(({ dataset: { value }, addIssue, NEVER }) => {
    const own = v.safeParse(shapes[value.kind], value);
    if (!own.success) {
      const issue = own.issues[0];
      addIssue({
        message: `in "${value.label}", ${v.getDotPath(issue) ?? 'a part'}: ${issue.message}`,
      });
      return NEVER;
    }
    const base = v.parse(v.object(cellBase), value);
    return { ...base, kind: value.kind, ...(own.output as object) };
  }),
);

const adaptedSchema = v.object({
  text: v.pipe(v.string(), v.maxLength(200_000)),
  beside: v.pipe(
    v.array(v.object({ label: labelSchema, group: labelSchema, printed: id, mine: id })),
    v.maxLength(10_000),
  ),
});

const changeBase = {
  cell: id,
  key: v.pipe(v.string(), v.minLength(1), v.maxLength(200)),
  size: v.nullable(id),
};

const whatIfSchema = v.object({
  id,
  name: labelSchema,
  on: v.boolean(),
  changes: v.pipe(
    v.array(
      v.union([
        v.strictObject({ ...changeBase, value: finiteSchema }),
        v.strictObject({ ...changeBase, size: v.null(), formula: formulaSchema }),
      ]),
    ),
    v.maxLength(1000),
  ),
});

/** A notebook as it stood in a file of version 1. */
export const versionOne = v.object({
  title: labelSchema,
  settings: v.object({
    length: v.picklist(['cm', 'in']),
    gaugeOver: v.picklist(['10 cm', '4 in']),
    decimal: v.picklist(['.', ',']),
    craft: v.optional(v.picklist(['crochet', 'knitting']), 'crochet'),
    terms: v.optional(v.picklist(['US', 'UK']), 'US'),
    tapeWithin: v.exactOptional(v.pipe(v.number(), v.minValue(0), v.maxValue(100))),
    scaleWithin: v.exactOptional(v.pipe(v.number(), v.minValue(0), v.maxValue(1000))),
  }),
  sizes: v.pipe(
    v.array(
      v.object({
        id,
        label: labelSchema,
        chart: v.exactOptional(
          v.object({
            name: v.picklist(['woman', 'man', 'child', 'baby']),
            size: v.pipe(v.string(), v.maxLength(40)),
          }),
        ),
      }),
    ),
    v.minLength(1),
    v.maxLength(100),
  ),
  sections: v.pipe(
    v.array(v.object({ id, label: labelSchema, cells: v.pipe(v.array(cellSchema), v.maxLength(10_000)) })),
    v.maxLength(1000),
  ),
  adapts: v.exactOptional(adaptedSchema),
  classSheet: v.exactOptional(
    v.object({
      results: v.pipe(
        v.array(
          v.object({
            cell: id,
            key: v.pipe(v.string(), v.minLength(1), v.maxLength(200)),
            back: v.exactOptional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(12))),
          }),
        ),
        v.maxLength(200),
      ),
      size: v.exactOptional(id),
    }),
  ),
  wording: v.exactOptional(
    v.pipe(
      v.record(
        v.pipe(v.string(), v.minLength(1), v.maxLength(300)),
        v.object({
          template: v.pipe(v.string(), v.minLength(1), v.maxLength(2000)),
          terms: v.picklist(['US', 'UK']),
        }),
      ),
      v.maxEntries(2000),
    ),
  ),
  whatIfs: v.exactOptional(v.pipe(v.array(whatIfSchema), v.maxLength(50))),
});
