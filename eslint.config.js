import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

/** What each room of `src/` may import from the others. Imports go one way; nothing else is allowed. */
const mayImport = {
  craft: [],
  notebook: ['craft'],
  sheet: ['craft', 'notebook'],
  pictures: ['craft', 'notebook'],
  words: ['craft', 'notebook'],
  keeping: ['notebook'],
  starters: ['craft', 'notebook', 'words'],
  page: ['craft', 'notebook', 'sheet', 'pictures', 'words', 'keeping', 'starters'],
};
const rooms = Object.keys(mayImport);
const buildAlone = 'The build and the page know nothing of each other: see "The rooms" in DEVELOPERS.md.';

const directions = rooms.map((room) => {
  const barred = rooms.filter((other) => other !== room && !mayImport[room].includes(other));
  const patterns = barred.map((other) => ({
    group: [`**/${other}`, `**/${other}/**`],
    message: `${room}/ does not import from ${other}/: see "The rooms" in DEVELOPERS.md.`,
  }));
  patterns.push({ group: ['**/build/**'], message: buildAlone });
  if (room === 'craft') {
    patterns.push({ regex: '^[^.]', message: 'craft/ imports nothing but its own files.' });
  }
  return { files: [`src/${room}/**`], rules: { 'no-restricted-imports': ['error', { patterns }] } };
});

/** What the build does beside Vite imports nothing of the page. */
const build = {
  files: ['src/build/**'],
  rules: {
    'no-restricted-imports': ['error', { patterns: [{ regex: '^\\.\\./', message: buildAlone }] }],
  },
};

/** What counts a text again must know nothing of what wrote it. */
const byItself = {
  files: ['src/words/recount/**'],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        patterns: [
          {
            regex: '^(?!\\./)',
            message: 'recount/ reads a text by itself: it imports nothing but its own files.',
          },
        ],
      },
    ],
  },
};

/** What a text is compared with must come about without what wrote it. */
const withoutTheWriter = {
  files: ['src/words/compare-statements/**'],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        patterns: [
          {
            regex:
              '^(?!\\./|\\.\\./recount$|\\.\\./source$|\\.\\./told-otherwise$|\\.\\./working/|\\.\\./\\.\\./(?:craft|notebook)(?:/|$))',
            message: 'compare-statements/ imports nothing that has a part in writing a pattern.',
          },
        ],
      },
    ],
  },
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
      // Memos and counters behind explicit versions are plain maps on purpose: see page/desk.svelte.ts.
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
