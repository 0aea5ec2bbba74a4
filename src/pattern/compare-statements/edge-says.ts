import type { SideStatement } from '../verify';
import { lengths } from './expected';
import type { EdgeMeant } from './piece-meant';
import type { Mismatch } from './mismatch';

/** The stretches of an edge against what they are picked up from, and whether each is told how it comes out even. */
export function edgeSays(
  says: readonly SideStatement[],
  edge: readonly EdgeMeant[],
  unit: 'cm' | 'in',
): Mismatch[] {
  const statements: { stated: Extract<SideStatement, { kind: 'stretch' }>; groups: boolean }[] = [];
  for (const message of says) {
    if (message.kind === 'stretch') statements.push({ stated: message, groups: false });
    const last = statements.at(-1);
    if (message.kind === 'groups' && last) last.groups = true;
  }
  const meant = edge.filter(({ stitches }) => stitches > 0);
  // Their order, their names and their stitches are compared elsewhere.
  const along = statements.filter(({ stated: message }) => message.stitches > 0);
  return meant.flatMap((one, at): Mismatch[] => {
    const here = along[at];
    if (!here || !here.stated.label.includes(one.label) || here.stated.stitches !== one.stitches) return [];
    const { line } = here.stated;
    const wrong = (problem: string): Mismatch[] => [{ line, problem: `${one.label}: ${problem}` }];
    if (here.stated.along.by !== one.by) {
      return wrong(
        `it is picked up along ${words[here.stated.along.by]}, and in the notebook along ${words[one.by]}.`,
      );
    }
    if (!isAmount(here.stated, one, unit)) {
      return wrong(
        `it is picked up over another ${one.by === 'curve' ? 'length' : 'number'} than in the notebook.`,
      );
    }
    if (here.groups === one.groups) return [];
    return wrong(
      one.groups
        ? 'it does not say how it comes out even.'
        : 'it says how it comes out even, and that is not told here.',
    );
  });
}

const words = { rows: 'row ends', stitches: 'stitches', motifs: 'repeats', curve: 'a length' } as const;

function isAmount(
  { along }: Extract<SideStatement, { kind: 'stretch' }>,
  { amount }: EdgeMeant,
  unit: 'cm' | 'in',
): boolean {
  if (amount === undefined || (along.by === 'stitches' && along.count === undefined)) return true;
  if (along.by !== 'curve') return along.count === amount;
  const { values, within } = lengths([amount], unit);
  return along.unit === unit && Math.abs(along.length - values[0]!) <= within + 1e-6;
}
