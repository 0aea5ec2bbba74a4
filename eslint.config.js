import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

/**
 * The rooms of `src/` in their order: each may import those before it. What a function's working looks like
 * (`formulas/functions/*.explain.ts`) is beside the function and is a part of `explain/`.
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
const explanations = ['src/formulas/functions/*.explain.ts', 'src/formulas/functions/explanations.ts'];
const buildAlone = 'The build and the page know nothing of each other: see "The map" in DEVELOPERS.md.';

const directionsOf = (room) => {
  const barred = order.filter(
    (other, at) =>
      at > order.indexOf(room) || (other !== room && apart.includes(room) && apart.includes(other)),
  );
  const patterns = barred.map((other) => ({
    regex: `^(?:\\.\\./)+${other}(?:/|$)`,
    message: `${room}/ does not import from ${other}/: see "The map" in DEVELOPERS.md.`,
  }));
  patterns.push({ group: ['**/build/**'], message: buildAlone });
  if (room === 'craft') {
    patterns.push({ regex: '^[^.]', message: 'craft/ imports nothing but its own files.' });
  }
  return { 'no-restricted-imports': ['error', { patterns }] };
};
const directions = [
  ...order.map((room) => ({ files: [`src/${room}/**`], rules: directionsOf(room) })),
  { files: explanations, rules: directionsOf('explain') },
];

/** What the build does beside Vite imports nothing of the page. */
const build = {
  files: ['src/build/**'],
  rules: {
    'no-restricted-imports': ['error', { patterns: [{ regex: '^\\.\\./', message: buildAlone }] }],
  },
};

/** What counts a text again must know nothing of what wrote it. */
const byItself = {
  files: ['src/pattern/verify/**'],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        patterns: [
          {
            regex: '^(?!\\./)',
            message: 'verify/ reads a text by itself: it imports nothing but its own files.',
          },
        ],
      },
    ],
  },
};

/** What a text is compared with must come about without what wrote it. */
const withoutTheWriter = {
  files: ['src/pattern/compare-statements/**'],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        patterns: [
          {
            regex:
              '^(?!\\./|\\.\\./verify$|\\.\\./source$|\\.\\./\\.\\./explain/|\\.\\./\\.\\./(?:craft|format|formulas|notebook)(?:/|$))',
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
      // Memos and counters behind explicit versions are plain maps on purpose: see workspace/workspace.svelte.ts.
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
