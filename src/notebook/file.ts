import * as v from 'valibot';
import { chartNames } from '../craft';
import { allCells, usualSettings, type Cell, type Notebook } from './document';
import { longestWording, mostCells, mostSizes, mostWordings } from './edits';
import { formulaSchema, labelSchema, nameSchema } from './entry';
import { sameName } from './formula';
import { kinds } from './kinds';

/** What a saved notebook says of itself. `version` goes up whenever an older reader could misread a file. */
export const fileFormat = 'easewright notebook';
export const fileVersion = 1;

const id = v.pipe(v.string(), v.minLength(1), v.maxLength(64));

const cellBase = {
  id,
  label: labelSchema,
  name: nameSchema,
  note: v.exactOptional(v.pipe(v.string(), v.maxLength(10_000))),
  taken: v.exactOptional(v.record(v.pipe(v.string(), v.maxLength(64)), formulaSchema)),
};

/** A cell: what every cell has, and what its kind declares. */
const cellSchema = v.pipe(
  v.looseObject({ ...cellBase, kind: v.picklist(Object.keys(kinds) as Cell['kind'][]) }),
  v.rawTransform(({ dataset: { value }, addIssue, NEVER }) => {
    const own = v.safeParse(kinds[value.kind].schema, value);
    if (!own.success) {
      const issue = own.issues[0];
      addIssue({
        message: `in "${value.label}", ${v.getDotPath(issue) ?? 'a part'}: ${issue.message}`,
      });
      return NEVER;
    }
    const base = v.parse(v.object(cellBase), value);
    return { ...base, kind: value.kind, ...(own.output as object) } as Cell;
  }),
);

const adaptedSchema = v.object({
  text: v.pipe(v.string(), v.maxLength(200_000)),
  beside: v.pipe(
    v.array(v.object({ label: labelSchema, group: labelSchema, printed: id, mine: id })),
    v.maxLength(mostCells),
  ),
});

const notebookSchema = v.object({
  title: labelSchema,
  settings: v.object({
    length: v.picklist(['cm', 'in']),
    gaugeOver: v.picklist(['10 cm', '4 in']),
    decimal: v.picklist(['.', ',']),
    craft: v.optional(v.picklist(['crochet', 'knitting']), usualSettings.craft),
    terms: v.optional(v.picklist(['US', 'UK']), usualSettings.terms),
  }),
  sizes: v.pipe(
    v.array(
      v.object({
        id,
        label: labelSchema,
        chart: v.exactOptional(
          v.object({ name: v.picklist(chartNames), size: v.pipe(v.string(), v.maxLength(40)) }),
        ),
      }),
    ),
    v.minLength(1),
    v.maxLength(mostSizes),
  ),
  sections: v.pipe(
    v.array(v.object({ id, label: labelSchema, cells: v.pipe(v.array(cellSchema), v.maxLength(mostCells)) })),
    v.maxLength(1000),
  ),
  adapts: v.exactOptional(adaptedSchema),
  wording: v.exactOptional(
    v.pipe(
      v.record(
        v.pipe(v.string(), v.minLength(1), v.maxLength(300)),
        v.object({
          template: v.pipe(v.string(), v.minLength(1), v.maxLength(longestWording)),
          terms: v.picklist(['US', 'UK']),
        }),
      ),
      v.maxEntries(mostWordings),
    ),
  ),
});

export type FileRead = { readonly notebook: Notebook } | { readonly problem: string };

/** The text of a file that keeps the notebook. */
export function writeFile(notebook: Notebook): string {
  return JSON.stringify({ format: fileFormat, version: fileVersion, notebook }, null, 1);
}

/** The notebook in a file's text, or a sentence that says why there is none. Nothing in the text is run. */
export function readFile(text: string): FileRead {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return {
      problem:
        'This file is not a notebook: it cannot be read as one. Choose a file that was saved from here.',
    };
  }
  const head = v.safeParse(
    v.object({ format: v.literal(fileFormat), version: v.pipe(v.number(), v.integer()) }),
    data,
  );
  if (!head.success) {
    return { problem: 'This file is not a notebook. Choose a file that was saved from here.' };
  }
  if (head.output.version > fileVersion) {
    return {
      problem:
        'This notebook was saved by a newer version of this page. Reload the page to get that version, then open it again.',
    };
  }
  const read = v.safeParse(v.object({ notebook: notebookSchema }), data);
  if (!read.success) {
    const issue = read.issues[0];
    return {
      problem: `This notebook is damaged (${v.getDotPath(issue) ?? 'at the top'}: ${issue.message}), so it was not opened.`,
    };
  }
  const notebook = read.output.notebook as Notebook;
  const wrong = contradiction(notebook);
  return wrong ? { problem: `This notebook is damaged (${wrong}), so it was not opened.` } : { notebook };
}

/** What the shape alone cannot show: ids that stand twice. Names that clash are told on their cells. */
function contradiction(notebook: Notebook): string | undefined {
  const cells = allCells(notebook);
  if (cells.length > mostCells) return `more than ${mostCells} cells`;
  for (const [what, ids] of [
    ['sizes', notebook.sizes.map((size) => size.id)],
    ['sections', notebook.sections.map((section) => section.id)],
    ['cells', cells.map((cell) => cell.id)],
  ] as const) {
    if (new Set(ids).size !== ids.length) return `two ${what} have the same id`;
  }
  // The inputs of stretches are called by their names, so one name for two would make two inputs one.
  for (const cell of cells) {
    const parts = cell.kind === 'piece' ? cell.stretches : cell.kind === 'pickUp' ? cell.edge : [];
    if (new Set(parts.map(({ name }) => sameName(name))).size !== parts.length) {
      return `two stretches of "${cell.label}" have the same name`;
    }
  }
  return undefined;
}
