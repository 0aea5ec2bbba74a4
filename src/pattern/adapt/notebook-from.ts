import {
  nameFrom,
  ownColumn,
  type Cell,
  type Notebook,
  type Section,
  type Settings,
  type Size,
} from '../../notebook';
import type { PatternReading } from '../read';
import { putAsMade } from './as-made';
import { adapting as begun, type SectionName } from './adapting';
import { fabricOf, fabricsOf, type OwnSwatch } from './fabrics';
import { putAdapted } from './followed';
import { putJoins } from './joins';
import { partsOf } from './parts';
import { underarmName } from './left-stitches';
import { makePart } from './make-part';
import type { MadePart, Making } from './making';
import { scalesOf, type Scales } from './scales';
import { wishesOf, type OwnBody } from './wishes';
import { putYarn } from './yarn';

/** What is known of the maker when the notebook is made; the rest stands as in the pattern until it is typed over. */
export interface Maker {
  readonly swatch?: OwnSwatch;
  readonly body?: OwnBody;
}

const labels: readonly (readonly [SectionName, string])[] = [
  ['swatches', 'Swatches'],
  ['wishes', 'My wishes, and the sizes they come nearest to'],
  ['printed', 'What the pattern says'],
  ['printedPieces', 'The pattern’s pieces, as printed'],
  ['followed', 'The pattern followed with my swatch'],
  ['again', 'Fitted again: my numbers'],
  ['pieces', 'Fitted again: my pieces'],
  ['joins', 'Joins and promises'],
  ['yarn', 'Yarn'],
  ['kept', 'Kept from the pattern'],
];

/**
 * The notebook that a printed pattern becomes: a column for each of its sizes and one for the maker; what the pattern
 * says; what it comes to with the maker's swatch; and all of it fitted again. Ordinary cells throughout.
 */
export function notebookFrom(
  reading: PatternReading,
  text: string,
  settings: Settings,
  maker: Maker = {},
): Notebook {
  const { pattern } = reading;
  const columns: Size[] = [...sizesOf(pattern.sizes), { id: ownColumn, label: 'Mine' }];
  const adapting = begun(pattern);
  const fabrics = fabricsOf(adapting, maker.swatch);
  const parts = partsOf(pattern);
  const wishes = wishesOf(adapting, parts, columns, maker.body ?? {});
  const made: MadePart[] = [];
  const chains: Making['chains'] = new Map();
  const main = parts.body ? fabricOf(parts.body, fabrics) : fabrics.main;
  const scales: Scales = scalesOf(adapting, parts, wishes, main, () =>
    underarmName({ adapting, parts, fabrics, scales }),
  );
  // The body first: a sleeve follows its armholes, and its armholes follow the stitches left under them.
  const order = [...parts.all].sort((a, b) => rank(a.role) - rank(b.role));
  putAdapted(adapting, wishes, main);
  for (const part of order) made.push(makePart({ adapting, parts, fabrics, scales, made, chains }, part));
  putJoins(adapting, parts, made, wishes, main);
  putAsMade(adapting, parts, made, wishes, main);
  putYarn(adapting, made, main, maker.swatch?.ball);
  putKept(reading, adapting.sections.kept);
  return {
    title: `${pattern.title}, fitted again`.slice(0, 200),
    settings: { ...settings, ...(pattern.craft ? { craft: pattern.craft } : {}) },
    sizes: columns,
    sections: labels.flatMap(([name, label]): Section[] =>
      adapting.sections[name].length > 0
        ? [{ id: `section-${name.toLowerCase()}`, label, cells: adapting.sections[name] }]
        : [],
    ),
    adapts: { text: text.slice(0, 200_000), beside: adapting.beside },
  };
}

const rank = (role: 'body' | 'sleeve' | 'other'): number => ({ body: 0, sleeve: 1, other: 2 })[role];

function sizesOf(names: readonly string[]): Size[] {
  const used = new Set<string>([ownColumn]);
  return names.map((label) => {
    const wished = nameFrom(label).replaceAll('_', '-').replace(/^-/u, '') || 'size';
    let id = wished;
    for (let number = 2; used.has(id); number++) id = `${wished}-${number}`;
    used.add(id);
    return { id, label };
  });
}

const longestNote = 9000;

/** Lines that are nothing but words to the notebook, and what was doubted, as notes. */
function putKept({ lines, diagnostics }: PatternReading, section: Cell[]): void {
  const note = (id: string, label: string, text: string): void => {
    if (text.trim() !== '')
      section.push({
        kind: 'note',
        id,
        label,
        name: id.replaceAll('-', '_'),
        text: text.slice(0, longestNote),
      });
  };
  const words = lines.filter(({ text, as }) => text.trim() !== '' && as.length === 0);
  note(
    'kept-lines',
    'Lines of the pattern kept as words',
    words.map(({ line, text }) => `${line}: ${text.trim()}`).join('\n'),
  );
  note(
    'doubts',
    'Doubts when it was put in',
    diagnostics.map(({ range, message }) => `Line ${range.line}: ${message}`).join('\n'),
  );
}
