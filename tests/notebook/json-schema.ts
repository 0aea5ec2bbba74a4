import { toJsonSchema, toJsonSchemaDefs } from '@valibot/to-json-schema';
import * as v from 'valibot';
import { fileFormat, fileVersion } from '../../src/notebook';
import { entrySchema, formulaSchema, labelSchema, nameSchema, schemas } from '../../src/notebook/schemas';
import { cellBase, cellSchema, notebookSchema } from '../../src/notebook/file';

/** The schema of every kind of cell: what every cell has, and what its kind declares. */
const cells = Object.entries(schemas).map(([kind, schema]) =>
  toJsonSchema(
    v.object({
      ...cellBase,
      kind: v.literal(kind),
      ...(schema as v.ObjectSchema<v.ObjectEntries, undefined>).entries,
    }),
    options(),
  ),
);

function options(): Parameters<typeof toJsonSchema>[1] {
  return {
    errorMode: 'throw',
    typeMode: 'input',
    definitions: { entry: entrySchema, formula: formulaSchema, name: nameSchema, label: labelSchema },
    overrideAction({ valibotAction, jsonSchema }) {
      // JSON Schema reads patterns as Unicode's without a flag, and has no number that is not finite.
      if (valibotAction.type === 'finite') return jsonSchema;
      if (valibotAction.type !== 'regex') return undefined;
      return {
        ...jsonSchema,
        pattern: (valibotAction as unknown as { requirement: RegExp }).requirement.source,
      };
    },
  };
}

/**
 * The form of a file as a JSON Schema (draft 2020-12), made from what checks files when they are opened. What a schema
 * cannot say (ids and names that stand once, limits on the whole) is said in DEVELOPERS.md.
 */
export function fileSchema(): Record<string, unknown> {
  const notebook = toJsonSchema(notebookSchema, {
    ...options(),
    overrideSchema: ({ valibotSchema }) =>
      (valibotSchema as unknown) === cellSchema.pipe[0] ? { $ref: '#/$defs/cell' } : undefined,
  });
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'A notebook of Easewright, as it stands in a file',
    type: 'object',
    properties: {
      format: { const: fileFormat },
      version: { const: fileVersion },
      notebook: bare(notebook),
    },
    required: ['format', 'version', 'notebook'],
    $defs: {
      cell: { anyOf: cells.map(bare) },
      ...toJsonSchemaDefs(options()!.definitions!, options()),
    },
  };
}

/** Without what stands once, at the top. */
function bare({ $schema: _schema, $defs: _defs, ...schema }: ReturnType<typeof toJsonSchema>): object {
  return schema;
}
