import type { Change, Notebook, WhatIf } from '../document';
import { withChanges } from '../what-if';
import { mostWhatIfs, mostWhatIfsOn, type Applied, type Edit } from './edit';

type WhatIfEdit = Extract<Edit, { whatIf: unknown }>;

const fullyOn = `${mostWhatIfsOn} what-ifs can be on at once: switch one off first.`;
const mostChanges = 1000;

export function whatIfEdited(notebook: Notebook, edit: WhatIfEdit): Applied {
  const whatIfs = notebook.whatIfs ?? [];
  const isFull = (without?: WhatIf): boolean =>
    whatIfs.filter((one) => one.on && one !== without).length >= mostWhatIfsOn;
  if (edit.do === 'add what-if') {
    if (whatIfs.length >= mostWhatIfs) {
      return { refused: `A notebook has at most ${mostWhatIfs} what-ifs: delete one first.` };
    }
    if (whatIfs.some(({ id }) => id === edit.whatIf.id)) {
      return { refused: 'That what-if is in the notebook already.' };
    }
    if (edit.whatIf.on && isFull()) return { refused: fullyOn };
    return put(notebook, [...whatIfs, { ...edit.whatIf, name: named(edit.whatIf.name) || 'What if' }]);
  }
  const whatIf = whatIfs.find(({ id }) => id === edit.whatIf);
  if (!whatIf) return { refused: 'That what-if is no longer in the notebook.' };
  const others = whatIfs.filter((one) => one !== whatIf);
  const changeTo = (next: WhatIf): Applied =>
    put(
      notebook,
      whatIfs.map((one) => (one === whatIf ? next : one)),
    );
  switch (edit.do) {
    case 'remove what-if':
      return put(notebook, others);
    case 'rename what-if': {
      const name = named(edit.name);
      return name
        ? changeTo({ ...whatIf, name })
        : { refused: 'A what-if needs a name, such as 7.5 mm hook.' };
    }
    case 'switch what-if':
      return edit.on && isFull(whatIf) ? { refused: fullyOn } : changeTo({ ...whatIf, on: edit.on });
    case 'change what-if': {
      const { change } = edit;
      const wrong = withChanges(notebook, [change]).refused[0];
      if (wrong) return { refused: wrong.sentence };
      const at = whatIf.changes.findIndex((one) => isSameRef(one, change));
      // What goes in for all sizes, or is a formula, leaves nothing of what went in for one.
      const kept = whatIf.changes.filter((one, index) =>
        index === at || (change.size === null && one.cell === change.cell && one.key === change.key)
          ? false
          : true,
      );
      if (kept.length >= mostChanges) return { refused: `A what-if has at most ${mostChanges} changes.` };
      return changeTo({ ...whatIf, changes: at < 0 ? [...kept, change] : kept.toSpliced(at, 0, change) });
    }
    case 'take out of what-if':
      return changeTo({
        ...whatIf,
        changes: whatIf.changes.filter((one) => !isSameRef(one, edit.change)),
      });
    case 'make what-if': {
      const { notebook: made, refused } = withChanges(notebook, whatIf.changes);
      return refused.length > 0 ? { refused: refused[0]!.sentence } : put(made, others);
    }
  }
}

/** Whether two changes are of the same value, so that one takes the place of the other. */
function isSameRef(
  one: Pick<Change, 'cell' | 'key' | 'size'>,
  other: Pick<Change, 'cell' | 'key' | 'size'>,
): boolean {
  return one.cell === other.cell && one.key === other.key && one.size === other.size;
}

function named(name: string): string {
  return name.trim().slice(0, 200);
}

function put(notebook: Notebook, whatIfs: readonly WhatIf[]): Applied {
  const { whatIfs: _before, ...rest } = notebook;
  return { notebook: whatIfs.length > 0 ? { ...rest, whatIfs } : rest };
}
