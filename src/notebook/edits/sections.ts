import type { Notebook, Section } from '../document';
import { sameName } from '../../formulas';
import { namesOf } from '../names';
import { added, copyOf, following } from './cells';
import type { Applied, Edit } from './edit';
import { inSections, shifted } from './with-cell';

type SectionEdit = Extract<Edit, { section: unknown }> & { do: `${string} section` };

export function sectionEdited(notebook: Notebook, edit: SectionEdit): Applied {
  const { sections } = notebook;
  if (edit.do === 'add section') {
    if (sections.some(({ id }) => id === edit.section.id))
      return { refused: 'That section is in the notebook already.' };
    return { notebook: { ...notebook, sections: sections.toSpliced(edit.at, 0, edit.section) } };
  }
  const section = sections.find(({ id }) => id === edit.section);
  if (!section) return { refused: 'That section is no longer there.' };
  switch (edit.do) {
    case 'remove section':
      return { notebook: { ...notebook, sections: sections.filter((other) => other !== section) } };
    case 'move section':
      return { notebook: { ...notebook, sections: shifted(sections, section.id, edit.at) ?? sections } };
    case 'relabel section': {
      const label = edit.label.trim().slice(0, 200);
      if (!label) return { refused: 'A section needs a label, such as Sleeve.' };
      return {
        notebook: { ...notebook, sections: sections.with(sections.indexOf(section), { ...section, label }) },
      };
    }
    case 'duplicate section':
      return sectionDuplicated(notebook, section, edit.id);
  }
}

/** A copy of a section whose formulas, where they use cells of the section, use the copies. */
function sectionDuplicated(notebook: Notebook, section: Section, id: string): Applied {
  const label = `${section.label}, copy`.slice(0, 200);
  let applied: Applied = {
    notebook: {
      ...notebook,
      sections: notebook.sections.toSpliced(notebook.sections.indexOf(section) + 1, 0, {
        id,
        label,
        cells: [],
      }),
    },
  };
  const renames = new Map<string, string>();
  for (const [at, cell] of section.cells.entries()) {
    const copy = { ...copyOf(applied.notebook, cell, `${id}-${at + 1}`), label: cell.label };
    const now = new Map(namesOf(copy).map(({ key, name }) => [key, name]));
    for (const { key, name } of namesOf(cell)) renames.set(sameName(name), now.get(key) ?? name);
    applied = added(applied.notebook, id, at, copy);
    if ('refused' in applied) return applied;
  }
  return inSections(applied.notebook, (cells, { id: here }) =>
    here === id ? cells.map((cell) => following(cell, renames)) : cells,
  );
}
