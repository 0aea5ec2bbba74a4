import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { slotsOf } from './slots';

const source = new URL('../src/', import.meta.url);

/** A pattern as it stands in the code, and the names of its params; undefined where they are put together there. */
interface Written {
  readonly where: string;
  readonly pattern: string;
  readonly params: readonly string[] | undefined;
}

/** What makes a message, with the params that it gives every one of them. */
const makers = new Map<string, readonly string[]>([
  ['CraftError', []],
  ['message', []],
  ['refusal in craft/numbers.ts', ['what', 'x']],
  ['about in notebook/constraint.ts', ['label']],
]);

function patternsIn(file: string): Written[] {
  const found: Written[] = [];
  const tree = ts.createSourceFile(
    file,
    readFileSync(new URL(file, source), 'utf8'),
    ts.ScriptTarget.Latest,
    true,
  );
  const visit = (node: ts.Node): void => {
    ts.forEachChild(node, visit);
    if (!ts.isNewExpression(node) && !ts.isCallExpression(node)) return;
    const called = node.expression.getText();
    const given = makers.get(called) ?? makers.get(`${called} in ${file}`);
    const [code, pattern, ...rest] = node.arguments ?? [];
    if (!given || !code || !pattern) return;
    const where = `${file}:${tree.getLineAndCharacterOfPosition(node.getStart()).line + 1}`;
    // What hands a pattern on is no pattern.
    if (ts.isIdentifier(pattern)) return;
    if (!ts.isStringLiteral(pattern)) {
      throw new Error(`${where}: a message has its pattern as it stands in the code.`);
    }
    const literal = rest.find(ts.isObjectLiteralExpression);
    const names = literal?.properties.map((property) => property.name?.getText());
    found.push({
      where,
      pattern: pattern.text,
      params: names?.includes(undefined) ? undefined : [...given, ...((names ?? []) as string[])],
    });
  };
  visit(tree);
  return found;
}

const patterns = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .flatMap(patternsIn);

describe('the patterns of all messages', () => {
  it('are found', () => {
    expect(patterns.length).toBeGreaterThan(150);
    expect(patterns.filter(({ params }) => params === undefined)).toEqual([]);
  });

  it('have a param for each slot and a slot for each param', () => {
    const wrong = patterns.filter(
      ({ pattern, params }) => slotsOf(pattern).toSorted().join() !== params?.toSorted().join(),
    );
    expect(wrong).toEqual([]);
  });

  it('have no number in them that is written otherwise in another notebook', () => {
    expect(patterns.filter(({ pattern }) => /\d[.,]\d|\d\s*(cm|in)\b/.test(pattern))).toEqual([]);
  });
});
