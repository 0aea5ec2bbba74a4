import { readdirSync, readFileSync } from 'node:fs';
import { inspect } from 'node:util';
import { describe, expect, test } from 'vitest';
import * as craft from '../src/craft';
import { asWritten, examplesIn, worked, type Example } from './examples';

const titled = (example: Example) => [`${example.file}: ${example.code}`, example] as const;

/** Fails with both in sight: what is written, and what came. */
function expectAsStated({ says }: Example, value: unknown): void {
  const holds = asWritten(says);
  expect(holds?.(value) ? says : inspect(value, { depth: 9, breakLength: 100 })).toBe(says);
}

describe('every example in src/craft gives what stands beside it', () => {
  const cuff: craft.Piece = {
    name: 'Cuff',
    worked: 'flat',
    start: 28,
    stretches: [{ kind: 'even', rows: 2, fabric: { stitches: 1.4, rows: 1 } }],
  } as craft.Piece;

  test.each(examplesIn('craft').map(titled))('%s', async (_title, example) => {
    expectAsStated(example, await worked(example, { ...craft, cuff }));
  });
});

/** Elsewhere an example may be about names that stand for more than a line could hold: that one is for who reads. */
async function runs(example: Example): Promise<boolean> {
  if (!asWritten(example.says)) return false;
  try {
    await worked(example, craft);
  } catch (problem) {
    return !(problem instanceof ReferenceError || problem instanceof SyntaxError);
  }
  return true;
}

describe.each(['formulas', 'format', 'notebook', 'analysis', 'pattern', 'pictures', 'storage'])(
  'every example in src/%s that needs nothing but its file gives what stands beside it',
  async (room) => {
    const found: Example[] = [];
    for (const example of examplesIn(room)) if (await runs(example)) found.push(example);
    test.each(found.map(titled))('%s', async (_title, example) => {
      expectAsStated(example, await worked(example, craft));
    });
  },
);

test('every example that is for who reads calls what there is', () => {
  const source = new URL('../src/', import.meta.url);
  const files = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter((file) =>
    /\.(ts|svelte)$/.test(file),
  );
  const declared = new Set(
    files.flatMap((file) =>
      [
        ...readFileSync(new URL(file, source), 'utf8').matchAll(
          /(?:function|const|class) ([A-Za-z]\w*)|^ {2}(?:async |readonly )?([A-Za-z]\w*)[(=<]/gm,
        ),
      ].map(([, name, method]) => name ?? method),
    ),
  );
  const rooms = readdirSync(source, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  const calls = rooms.flatMap(({ name }) =>
    examplesIn(name).flatMap(({ file, code }) => {
      const called = /^(?:(?:const|let) [^=]+ = )?(?:await )?(?:new )?([A-Za-z]\w*)\(/.exec(code)?.[1];
      return called === undefined ? [] : [{ file, called }];
    }),
  );
  expect(calls.length).toBeGreaterThan(150);
  expect(calls.filter(({ called }) => !declared.has(called))).toEqual([]);
});
