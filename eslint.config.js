import { readdirSync } from 'node:fs';
import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

/**
 * The rooms of `src/` in their order: each may import those before it, through their doors: `index.ts`, or `lazy.ts` for
 * what is fetched later.
 */
const order = [
  'craft',
  'formulas',
  'format',
  'notebook',
  'explain',
  'engine',
  'analysis',
  'worker',
  'pattern',
  'pictures',
  'storage',
  'starters',
  'workspace',
  'ui',
  'features',
  'app',
];
/** Rooms that do not know each other, whichever comes first. */
const apart = ['pictures', 'pattern', 'analysis'];
/** Rooms whose folders are rooms with doors of their own. */
const halls = ['analysis', 'pattern', 'pictures', 'features'];
const foldersOf = (room) =>
  readdirSync(new URL(`src/${room}`, import.meta.url), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);
/** What a function's working looks like stands beside the function and is a part of `explain/`. */
const explanations = ['src/formulas/functions/*.explain.ts', 'src/formulas/functions/explanations.ts'];
const byTheMap = 'see "The map" in DEVELOPERS.md.';
const buildAlone = `The build and the page know nothing of each other: ${byTheMap}`;

/** Paths of imports that a file may not have, as regular expressions, each with what the reader is told. */
const barredIn = (room, folder) => {
  const later = order
    .filter(
      (other, at) =>
        at > order.indexOf(room) || (other !== room && apart.includes(room) && apart.includes(other)),
    )
    .map((other) => ({
      regex: `^(?:\\.\\./)+${other}(?:/|$)`,
      message: `${room}/ does not import from ${other}/: ${byTheMap}`,
    }));
  const doors = order
    .filter((other) => other !== room)
    .map((other) => {
      const inner = ['lazy', '[\\w-]+\\.css'];
      if (halls.includes(other)) inner.push(`(?:${foldersOf(other).join('|')})(?:/lazy)?`);
      if (other === 'formulas' && room === 'explain') inner.push('functions/explanations');
      return {
        regex: `^(?:\\.\\./)+${other}/(?!(?:${inner.join('|')})$)`,
        message: `Ask ${other}/ at its door: ${byTheMap}`,
      };
    });
  const beside = halls.includes(room) ? foldersOf(room).filter((other) => other !== folder) : [];
  const inHall = beside.map((other) => ({
    // `../pictures` of a feature is a feature too, `../../pictures` the room of that name
    regex: `^${folder === undefined ? '\\./' : order.includes(other) ? '\\.\\./' : '(?:\\.\\./)+'}${other}/(?!lazy$)`,
    message: `Ask ${room}/${other}/ at its door: ${byTheMap}`,
  }));
  const all = [...later, ...doors, ...inHall, { regex: '(?:^|/)build/', message: buildAlone }];
  return room === 'craft'
    ? [...all, { regex: '^[^.]', message: 'craft/ imports nothing but its own files.' }]
    : all;
};

/** Holds for `import … from '…'` and for `import('…')`. */
const bars = (patterns) => ({
  'no-restricted-imports': ['error', { patterns }],
  'no-restricted-syntax': [
    'error',
    ...patterns.map(({ regex, message }) => ({
      selector: `ImportExpression > Literal[value=/${regex.replaceAll('/', '\\/')}/]`,
      message,
    })),
  ],
});
const directions = [
  ...order.map((room) => ({ files: [`src/${room}/**`], rules: bars(barredIn(room)) })),
  ...halls.flatMap((hall) =>
    foldersOf(hall).map((folder) => ({
      files: [`src/${hall}/${folder}/**`],
      rules: bars(barredIn(hall, folder)),
    })),
  ),
  {
    files: ['src/main.ts'],
    rules: bars([
      {
        regex: `^\\./(?:${order.join('|')})/(?!(?:${foldersOf('features').join('|')}|[\\w-]+\\.css)$)`,
        message: `Ask a room at its door: ${byTheMap}`,
      },
    ]),
  },
  { files: explanations, rules: bars(barredIn('explain')) },
];

/** What the build does beside Vite imports nothing of the page. */
const build = {
  files: ['src/build/**'],
  rules: bars([{ regex: '^\\.\\./', message: buildAlone }]),
};

/** What counts a text again must know nothing of what wrote it. */
const byItself = {
  files: ['src/pattern/verify/**'],
  rules: bars([
    {
      regex: '^(?!\\./)',
      message: 'verify/ reads a text by itself: it imports nothing but its own files.',
    },
  ]),
};

/** What a text is compared with must come about without what wrote it. */
const withoutTheWriter = {
  files: ['src/pattern/compare-statements/**'],
  rules: bars([
    {
      regex:
        '^(?!\\./|\\.\\./verify$|\\.\\./source$|\\.\\./\\.\\./(?:craft|format|formulas|notebook|explain)$)',
      message: 'compare-statements/ imports nothing that has a part in writing a pattern.',
    },
  ]),
};

export default ts.config(
  { ignores: ['dist/', 'node_modules/', 'reports/'] },
  js.configs.recommended,
  ...ts.configs.recommended,
  ...svelte.configs['flat/recommended'],
  ...svelte.configs['flat/prettier'],
  {
    languageOptions: { globals: { ...globals.browser, ...globals.node } },
    rules: {
      'no-undef': 'off',
      eqeqeq: 'error',
      'no-console': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      // Memos and counters behind explicit versions are plain maps on purpose: see workspace/calculation.svelte.ts.
      'svelte/prefer-svelte-reactivity': 'off',
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, extraFileExtensions: ['.svelte'], svelteConfig } },
  },
  { files: ['tests/bench/**', 'tests/soak/**', 'tests/published/run.js'], rules: { 'no-console': 'off' } },
  ...directions,
  build,
  byItself,
  withoutTheWriter,
);
