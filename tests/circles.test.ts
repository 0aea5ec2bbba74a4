import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, it } from 'vitest';

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

/** Groups of files that reach each other, by Tarjan’s algorithm. */
function circlesIn(graph: ReadonlyMap<string, readonly string[]>): string[][] {
  const order = new Map<string, number>();
  const lowest = new Map<string, number>();
  const path: string[] = [];
  const circles: string[][] = [];
  const visit = (file: string): void => {
    order.set(file, order.size);
    lowest.set(file, order.get(file)!);
    path.push(file);
    for (const next of graph.get(file) ?? []) {
      if (!order.has(next)) visit(next);
      if (path.includes(next)) lowest.set(file, Math.min(lowest.get(file)!, lowest.get(next)!));
    }
    if (lowest.get(file) !== order.get(file)) return;
    const group = path.splice(path.indexOf(file));
    if (group.length > 1) circles.push(group);
  };
  for (const file of graph.keys()) if (!order.has(file)) visit(file);
  return circles;
}

it('finds a circle where there is one', () => {
  const graph = new Map([
    ['a', ['b']],
    ['b', ['c', 'd']],
    ['c', ['a']],
    ['d', []],
  ]);
  expect(circlesIn(graph)).toEqual([['a', 'b', 'c']]);
});

it('no files of the page import each other in a circle', () => {
  const graph = importGraph();
  expect(graph.get('main.ts')).toContain('app/index.ts');
  expect(circlesIn(graph)).toEqual([]);
});
