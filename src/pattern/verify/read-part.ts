import { amountsIn } from './amounts';
import type { PrintedKind, PrintedPart, PrintedTable } from './printed';
import { sentenceReaders } from './sentence-readers';
import type { Statement, Unread } from './statement';

/** What a part says, and what of it could not be read. */
export interface PartRead {
  readonly statements: readonly Statement[];
  readonly unread: readonly Unread[];
}

/** Longer than any sentence that is read. */
const longest = 6000;

const bare = (text: string): string => text.replace(/\s+/gu, ' ').trim();

/**
 * What the sentences and tables of a part that is not a piece say.
 *
 * @example
 * readPart({ kind: 'gauge', heading: 'Gauge', blocks: [{ kind: 'paragraph', text: 'Rib: 24 sts and 30 rows to 10 cm.' }] })
 * // { statements: [{ name: 'gauge', of: 'Rib', facts: { stitches: [24], rows: [30], over: '10 cm', 'exact stitches': [], 'exact rows': [], worked: '' }, … }], unread: [] }
 */
export function readPart({ kind, blocks }: PrintedPart): PartRead {
  const statements: Statement[] = [];
  const unread: Unread[] = [];
  // An amount of balls is of the yarn that was told before it.
  let before = '';
  blocks.forEach((block, at) => {
    if (block.kind === 'table') {
      const table = readTable(kind, block, at);
      statements.push(...table.statements);
      unread.push(...table.unread);
      return;
    }
    const read = readSentence(kind, bare(block.text));
    if (!read) {
      unread.push({ text: block.text, at: { block: at } });
      return;
    }
    if (read.name === 'yarn') before = read.of;
    statements.push({ ...read, of: read.name === 'balls' ? before : read.of, at: { block: at } });
  });
  return { statements, unread };
}

function readSentence(kind: PrintedKind, text: string): Omit<Statement, 'at'> | undefined {
  if (kind === 'piece' || text.length > longest) return undefined;
  for (const { name, pattern, read } of sentenceReaders[kind]) {
    const found = pattern.exec(text);
    if (!found) continue;
    const { of = '', facts = {} } = read(found.groups ?? {});
    return { name, of, facts };
  }
  return undefined;
}

const joins = { caption: 'Joins marked on the schematic', head: 'Join,What meets' };

function readTable(kind: PrintedKind, { caption, head, rows }: PrintedTable, block: number): PartRead {
  if (kind === 'abbreviations') {
    return {
      statements: rows.map(([short = '', long = ''], row) => ({
        name: 'abbreviation',
        of: short,
        facts: { 'stands for': long },
        at: { block, row },
      })),
      unread: [],
    };
  }
  if (kind === 'measurements' && caption === joins.caption && head.join() === joins.head) {
    return {
      statements: rows.map(([label = '', meets = ''], row) => ({
        name: 'join on the schematic',
        of: label,
        facts: { 'what meets': meets },
        at: { block, row },
      })),
      unread: [],
    };
  }
  const unit = /\bin (?:(centimet(?:re|er)s)|inches)\b/iu.exec(caption);
  const whole: Unread[] = [{ text: caption, at: { block } }];
  if (kind !== 'measurements' || !unit) return { statements: [], unread: whole };
  const unread: Unread[] = [];
  const statements: Statement[] = [
    {
      name: 'sizes of a table',
      of: '',
      facts: { sizes: head.slice(1).join(' | ') },
      at: { block },
    },
  ];
  rows.forEach(([label = '', ...cells], row) => {
    const values = cells.map((cell) => amountsIn(cell));
    if (values.some((value) => value?.length !== 1)) {
      unread.push({ text: [label, ...cells].join(' '), at: { block, row } });
      return;
    }
    statements.push({
      name: /^The schematic\b/u.test(caption) ? 'measurement of the schematic' : 'measurement',
      of: label,
      facts: { values: values.map((value) => value![0]!), unit: unit[1] ? 'cm' : 'in' },
      at: { block, row },
    });
  });
  return { statements, unread };
}
