import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, it } from 'vitest';
import { cycles } from '../src/engine/cycles';

const src = fileURLToPath(new URL('../src', import.meta.url));

/** The files that each file of `src/` imports, types too; not those it fetches later by `import()`. */
function importGraph(): Map<string, string[]> {
  const files = new Set(
    readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((file) => /\.(ts|svelte)$/.test(file)),
  );
  const importsOf = (file: string): string[] => {
    const text = readFileSync(path.join(src, file), 'utf8');
    const code = file.endsWith('.svelte')
      ? [...text.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)].map(([, script]) => script).join('\n')
      : text;
    return ts.createSourceFile(file, code, ts.ScriptTarget.ES2022).statements.flatMap((statement) => {
      if (!ts.isImportDeclaration(statement) && !ts.isExportDeclaration(statement)) return [];
      const from = statement.moduleSpecifier;
      if (!from || !ts.isStringLiteral(from) || !from.text.startsWith('.')) return [];
      const base = path.join(path.dirname(file), from.text);
      return ['', '.ts', '/index.ts'].map((end) => base + end).filter((one) => files.has(one));
    });
  };
  return new Map([...files].map((file) => [file, importsOf(file)]));
}

/** Each file that is in a circle, with the way back to it. */
function circlesIn(graph: ReadonlyMap<string, readonly string[]>): string[] {
  const files = [...graph.keys()];
  const numbers = new Map(files.map((file, number) => [file, number]));
  const imports = files.map((file) => graph.get(file)!.map((one) => numbers.get(one)!));
  return [...cycles(numbers.values(), (number) => imports[number]!).values()].map(({ path: way = [] }) =>
    way.map((number) => files[number]).join(' → '),
  );
}

it('finds a circle where there is one', () => {
  const graph = new Map([
    ['a', ['b']],
    ['b', ['c', 'd']],
    ['c', ['a']],
    ['d', []],
  ]);
  expect(circlesIn(graph)).toContain('a → b → c → a');
});

it('no files of the page import each other in a circle', () => {
  const graph = importGraph();
  expect(graph.get('main.ts')).toContain('app/index.ts');
  expect(circlesIn(graph)).toEqual([]);
});
