import * as v from 'valibot';
import { chartNames } from '../craft';
import { allCells, usualSettings, type Cell, type Notebook } from './document';
import {
  furthestBack,
  longestWording,
  mostCells,
  mostOnClassSheet,
  mostSizes,
  mostWhatIfs,
  mostWhatIfsOn,
  mostWordings,
} from './edits';
import { fileFormat, fileVersion } from './file-head';
import { sameName } from '../formulas';
import { tooDeep, tooMuch } from './file-limits';
import { largestFile } from './limits';
import { versionOne } from './frozen/version-1';
import { migrated } from './migrations';
import { finiteSchema, formulaSchema, labelSchema, nameSchema, schemas } from './schemas';

const id = v.pipe(v.string(), v.minLength(1), v.maxLength(64));

/** What every cell has in a file. */
export const cellBase = {
  id,
  label: labelSchema,
  name: nameSchema,
  note: v.exactOptional(v.pipe(v.string(), v.maxLength(10_000))),
  taken: v.exactOptional(v.record(v.pipe(v.string(), v.maxLength(64)), formulaSchema)),
};

/** A cell: what every cell has, and what its kind declares. */
export const cellSchema = v.pipe(
  v.looseObject({ ...cellBase, kind: v.picklist(Object.keys(schemas) as Cell['kind'][]) }),
  v.rawTransform(({ dataset: { value }, addIssue, NEVER }) => {
    const own = v.safeParse(schemas[value.kind], value);
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

/** A notebook as it stands in a file. Fields that came later are optional: older files do not have them. */
export const notebookSchema = v.object({
  title: labelSchema,
  settings: v.object({
    length: v.picklist(['cm', 'in']),
    gaugeOver: v.picklist(['10 cm', '4 in']),
    decimal: v.picklist(['.', ',']),
    craft: v.optional(v.picklist(['crochet', 'knitting']), usualSettings.craft),
    terms: v.optional(v.picklist(['US', 'UK']), usualSettings.terms),
    tapeWithin: v.exactOptional(v.pipe(v.number(), v.minValue(0), v.maxValue(100))),
    scaleWithin: v.exactOptional(v.pipe(v.number(), v.minValue(0), v.maxValue(1000))),
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
  classSheet: v.exactOptional(
    v.object({
      results: v.pipe(
        v.array(
          v.object({
            cell: id,
            key: v.pipe(v.string(), v.minLength(1), v.maxLength(200)),
            back: v.exactOptional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(furthestBack))),
          }),
        ),
        v.maxLength(mostOnClassSheet),
      ),
      size: v.exactOptional(id),
    }),
  ),
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
  whatIfs: v.exactOptional(v.pipe(v.array(whatIfSchema), v.maxLength(mostWhatIfs))),
});

export type FileRead = { readonly notebook: Notebook } | { readonly problem: string };

/** The notebook in a file's text, or a sentence that says why there is none. Nothing in the text is run. */
export function readFile(text: string): FileRead {
  if (text.length > largestFile) {
    return { problem: `This file is larger than any notebook, so it was not opened.` };
  }
  if (tooDeep(text)) {
    return {
      problem: 'This file is not a notebook: it has more levels than a notebook has, so it was not opened.',
    };
  }
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
    v.object({ format: v.literal(fileFormat), version: v.pipe(v.number(), v.integer(), v.minValue(1)) }),
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
  const much = tooMuch(data);
  if (much) return { problem: `This file is not a notebook: it has ${much}, so it was not opened.` };
  // A file of an older version is checked as what it was before it is brought to this one.
  const old = earlier[head.output.version];
  const before = old && v.safeParse(v.object({ notebook: old }), data, { abortEarly: true });
  if (before && !before.success) return damaged(before.issues[0]);
  const read = v.safeParse(v.object({ notebook: notebookSchema }), migrated(data, head.output.version), {
    abortEarly: true,
  });
  if (!read.success) return damaged(read.issues[0]);
  const notebook = read.output.notebook as Notebook;
  const wrong = contradiction(notebook);
  return wrong ? { problem: `This notebook is damaged (${wrong}), so it was not opened.` } : { notebook };
}

/** The frozen schemas of earlier versions. */
const earlier: Readonly<Record<number, v.GenericSchema>> = { 1: versionOne };

function damaged(issue: v.BaseIssue<unknown>): { problem: string } {
  return {
    problem: `This notebook is damaged (${shortened(`${v.getDotPath(issue) ?? 'at the top'}: ${issue.message}`)}), so it was not opened.`,
  };
}

/** What a file says may be endless; what is said of it is not. */
function shortened(text: string): string {
  return text.length > 200 ? `${text.slice(0, 200)} …` : text;
}

/** What the shape alone cannot show: ids that stand twice. Names that clash are told on their cells. */
function contradiction(notebook: Notebook): string | undefined {
  const cells = allCells(notebook);
  for (const [what, ids] of [
    ['sizes', notebook.sizes.map((size) => size.id)],
    ['sections', notebook.sections.map((section) => section.id)],
    ['cells', cells.map((cell) => cell.id)],
    ['what-ifs', (notebook.whatIfs ?? []).map((whatIf) => whatIf.id)],
  ] as const) {
    if (new Set(ids).size !== ids.length) return `two ${what} have the same id`;
  }
  if ((notebook.whatIfs ?? []).filter(({ on }) => on).length > mostWhatIfsOn) {
    return `more than ${mostWhatIfsOn} what-ifs are on`;
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
