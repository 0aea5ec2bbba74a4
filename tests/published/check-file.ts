import { checkExample } from './check-example';
import type { Example, Verdict } from './check-example';
import { constructionComputations } from './construction-computations';

/** The kinds of file, with the lists that hold the examples of each. */
const lists = {
  construction: ['examples'],
  fabrics: ['fabrics', 'faulty'],
  fits: ['checks'],
} as const;
type Kind = keyof typeof lists;

/** Why a file cannot be checked, as one sentence. */
export class UnreadableFile extends Error {}

/** What came of a file: lines to print, the last with the counts, and the code to end on. */
export interface Report {
  lines: string[];
  exitCode: 0 | 1;
}

/**
 * Checks a file of published examples against what is computed.
 *
 * @param kind 'construction', 'fabrics' or 'fits'
 * @param text the file, JSON
 * @throws UnreadableFile where the kind is none of these, or the file is not what it should be
 */
export function checkFile(kind: string, text: string): Report {
  if (!isKind(kind)) {
    throw new UnreadableFile(`Say which kind of file it is: ${Object.keys(lists).join(', ')}.`);
  }
  const entries = entriesOf(kind, text);
  if (kind !== 'construction') {
    const name = kind === 'fabrics' ? 'Fabrics' : 'Fits';
    return {
      lines: [
        `${name} are not computed yet: none of the ${entries.length} here was tried.`,
        '0 hold, 0 fall short',
      ],
      exitCode: 1,
    };
  }
  return checkExamples(entries.map(exampleOf));
}

function checkExamples(examples: readonly Example[]): Report {
  const counts: Record<Verdict, number> = { holds: 0, 'falls short': 0, 'not yet': 0 };
  const lines: string[] = [];
  for (const example of examples) {
    const { verdict, why } = checkExample(example, constructionComputations);
    counts[verdict]++;
    if (verdict !== 'holds') lines.push(`${verdict}: ${example.id}: ${why}`);
  }
  lines.push(`${counts.holds} hold, ${counts['falls short']} fall short, ${counts['not yet']} not yet`);
  return { lines, exitCode: counts['falls short'] > 0 ? 1 : 0 };
}

/** The examples of a file of constructions. */
export function examplesOf(text: string): Example[] {
  return entriesOf('construction', text).map(exampleOf);
}

function isKind(kind: string): kind is Kind {
  return Object.hasOwn(lists, kind);
}

function entriesOf(kind: Kind, text: string): unknown[] {
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch (error) {
    throw new UnreadableFile(`The file is not JSON (${(error as Error).message.replaceAll(/\s+/g, ' ')}).`);
  }
  const entries = isRecord(file) ? lists[kind].map((name) => file[name]).find(Array.isArray) : undefined;
  if (!entries) {
    throw new UnreadableFile(
      `The file has no list of ${kind}: it should be under “${lists[kind].join('” or “')}”.`,
    );
  }
  return entries as unknown[];
}

function exampleOf(entry: unknown, index: number): Example {
  const where = `Example ${index + 1}`;
  if (!isRecord(entry)) throw new UnreadableFile(`${where} is not an example: it has no fields.`);
  for (const field of ['id', 'topic', 'kind']) {
    if (typeof entry[field] !== 'string')
      throw new UnreadableFile(`${where} has no ${field}, which should be text.`);
  }
  if (!isRecord(entry['given']))
    throw new UnreadableFile(`${where} (${entry['id'] as string}) gives nothing.`);
  if (!Object.hasOwn(entry, 'expect')) {
    throw new UnreadableFile(`${where} (${entry['id'] as string}) does not say what it comes to.`);
  }
  return entry as unknown as Example;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
