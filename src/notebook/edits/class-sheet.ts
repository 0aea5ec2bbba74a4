import type { ClassSheet, Notebook } from '../document';
import { furthestBack, mostOnClassSheet, type Applied } from './edit';

/** The notebook with another class sheet, or with none. What is on it twice stays once, where it stood first. */
export function classSheetSet(notebook: Notebook, sheet: ClassSheet | null): Applied {
  const { classSheet: _before, ...rest } = notebook;
  if (!sheet) return { notebook: rest };
  const seen = new Set<string>();
  const results = sheet.results.flatMap((result) => {
    const key = JSON.stringify([result.cell, result.key]);
    if (seen.has(key)) return [];
    seen.add(key);
    const { back = 0, ...where } = result;
    return [back > 0 ? { ...where, back: Math.min(Math.floor(back), furthestBack) } : where];
  });
  if (results.length > mostOnClassSheet) {
    return { refused: `A class sheet holds at most ${mostOnClassSheet} results: take one off first.` };
  }
  return { notebook: { ...rest, classSheet: { ...sheet, results } } };
}
