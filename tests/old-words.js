/*
 * Names in the code that hold a word of the project's old dialect, which the field has a word for.
 *
 *     node tests/old-words.js
 *
 * lists them with their files. `tests/old-words.test.ts` runs the same search.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'svelte/compiler';
import ts from 'typescript';

/** Each old word, and what a name says instead. */
const instead = {
  leaf: 'grid, background',
  desk: 'workspace',
  shelf: 'store',
  pen: 'autosaver',
  place: 'ref, range, index, position',
  places: 'refs, decimals',
  spot: 'position',
  spots: 'positions',
  told: 'message, events, stated, or what it is',
  tell: 'announce, report',
  telling: 'scheduler',
  said: 'message, announcement, text, stated',
  heard: 'announced, received',
  look: 'preview, refresh, check',
  looks: 'appearance, style',
  looking: 'preview, run',
  asked: 'request, wanted, question',
  moving: 'sweep, motion',
  standing: 'status, role',
  stands: 'state',
  beside: 'others, neighbour, background',
  besides: 'others',
  aside: 'suspended, quarantined, secondary',
  doubt: 'uncertainty, diagnostic',
  doubts: 'uncertainties, diagnostics',
  trouble: 'error, problem',
  troubles: 'errors, problems',
  patience: 'watchdog, timeout',
  knots: 'stronglyConnectedComponents',
  feeds: 'dependents',
  fed: 'precedents, dependents',
  must: 'constraint',
  remembered: 'memoize',
  emptying: 'clear',
  spreading: 'fill',
  listed: 'joinWithAnd, or what the list is of',
  recount: 'verify',
  otherwise: 'alternative, differences',
  keeping: 'storage',
  thinning: 'retention',
  become: 'set, change to',
  take: 'apply, accept, read, choose',
  lay: 'layout',
};

/** Names that stay, by what they are. */
const stays = [
  // Keys of the file format and of edits, which the journal stores
  { names: ['aside', 'beside', 'takeOver'], why: 'a key of the file format, or the name of an edit' },
  // What the page calls it
  { names: ['giveOrTake', 'GiveOrTake', 'loadGiveOrTake', 'give-or-take'], why: 'what the page calls it' },
  // The tokens of the theme are the names of its custom properties in CSS
  {
    names: ['leaf', 'trouble'],
    in: /(^|\/)(theme|contrast|icons|palette|chart-style|block|colours|schematic-block|silhouette-svg)[\w.]*\.ts$/,
    why: 'a colour of the theme',
  },
];

const root = fileURLToPath(new URL('..', import.meta.url));

/** The words of a name: `firstRowOf`, `first-row-of` and `FIRST_ROW_OF` alike. */
const wordsOf = (name) => name.split(/(?=[A-Z][a-z])|[_\-.]/).map((word) => word.toLowerCase());

const oldIn = (name, file) =>
  stays.some((one) => one.names.includes(name) && (!one.in || one.in.test(file)))
    ? []
    : wordsOf(name).filter((word) => Object.hasOwn(instead, word));

function identifiersOf(file, text) {
  const names = new Set();
  const ofScript = (code) => {
    const visit = (node) => {
      if (ts.isIdentifier(node) || ts.isPrivateIdentifier(node)) names.add(node.text.replace('#', ''));
      ts.forEachChild(node, visit);
    };
    visit(ts.createSourceFile(file, code, ts.ScriptTarget.ES2022));
  };
  if (!file.endsWith('.svelte')) ofScript(text);
  else {
    for (const [, code] of text.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)) ofScript(code);
    const visit = (node) => {
      if (node === null || typeof node !== 'object') return;
      if (node.type === 'Identifier') names.add(node.name);
      for (const value of Object.values(node)) visit(value);
    };
    visit(parse(text, { modern: true }).fragment);
  }
  return names;
}

/**
 * Lists every file name and identifier with an old word.
 *
 * @returns {{ file: string, name: string, say: string }[]}
 */
export function oldNames() {
  const files = execFileSync('git', ['ls-files', '-co', '--exclude-standard', 'src', 'tests'], {
    cwd: root,
    encoding: 'utf8',
  })
    .split('\n')
    .filter((file) => /\.(ts|js|svelte)$/.test(file));
  return files.flatMap((file) => {
    const base = path.basename(file).replace(/(\.(test|svelte|signature|docs|evaluate|explain))?\.\w+$/, '');
    const folders = path.dirname(file).split('/');
    const names = [base, ...folders];
    if (!file.includes('old-words')) {
      names.push(...identifiersOf(file, readFileSync(path.join(root, file), 'utf8')));
    }
    return names.flatMap((name) => {
      const old = oldIn(name, file);
      return old.length > 0 ? [{ file, name, say: old.map((word) => instead[word]).join('; ') }] : [];
    });
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const found = oldNames();
  for (const { file, name, say } of found) process.stdout.write(`${file}: ${name} (say ${say})\n`);
  process.stdout.write(`${found.length} names with an old word.\n`);
  process.exitCode = found.length > 0 ? 1 : 0;
}
