import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellById, readFile, writeFile } from '../../src/notebook';
import { starters } from '../../src/starters';
import { vNeck } from '../notebooks/v-neck';

const problem = (text: string): string => {
  const read = readFile(text);
  return 'problem' in read ? read.problem : '';
};
/** A cell of the starter in a parsed file. */
const cell = (file: ReturnType<typeof JSON.parse>, id: string) =>
  file.notebook.sections
    .flatMap((section: { cells: { id: string }[] }) => section.cells)
    .find((candidate: { id: string }) => candidate.id === id);

const altered = (change: (file: ReturnType<typeof JSON.parse>) => void): string => {
  const file = JSON.parse(writeFile(vNeck()));
  change(file);
  return JSON.stringify(file);
};

describe('a file', () => {
  it.each(starters.map((starter) => [starter.label, starter] as const))(
    'keeps the starter %s whole',
    (_label, starter) => {
      expect(readFile(writeFile(starter.make()))).toEqual({ notebook: starter.make() });
    },
  );

  it('that is no notebook is refused with a sentence', () => {
    expect(problem('')).toContain('not a notebook');
    expect(problem('PK\u0003\u0004')).toContain('not a notebook');
    expect(problem('null')).toContain('not a notebook');
    expect(problem('{"format":"something else","version":1}')).toContain('not a notebook');
  });

  it('from a newer version says so', () => {
    expect(problem(altered((file) => (file.version = 3)))).toContain('newer version');
  });

  it.each<[string, (file: ReturnType<typeof JSON.parse>) => void, string]>([
    [
      'a text where a number belongs',
      (file) => (cell(file, 'finished-bust').ease = { value: 'wide' }),
      'ease',
    ],
    ['an unknown kind of cell', (file) => (file.notebook.sections[0].cells[0].kind = 'oracle'), 'kind'],
    ['no sizes', (file) => (file.notebook.sizes = []), 'sizes'],
    ['a number beyond all measure', (file) => (cell(file, 'finished-bust').ease = { value: 1e300 }), 'ease'],
    ['a name that is none', (file) => (cell(file, 'bust').name = 'a b'), 'name'],
    ['a formula without end', (file) => (cell(file, 'body-length').formula = '1+'.repeat(5000)), 'formula'],
    [
      'two stretches of one name',
      (file) => (cell(file, 'back').stretches[1].name = 'Lower'),
      'the same name',
    ],
    ['an id that stands twice', (file) => (cell(file, 'rib').id = 'bust'), 'the same id'],
  ])('with %s is refused and says where', (_what, change, where) => {
    const text = problem(altered(change));
    expect(text).toContain('damaged');
    expect(text).toContain(where);
  });

  it('from before the craft and its terms were kept opens as crochet in US terms', () => {
    const older = altered((file) => {
      delete file.notebook.settings.craft;
      delete file.notebook.settings.terms;
    });
    expect(readFile(older)).toEqual({ notebook: vNeck() });
    expect(vNeck().settings).toMatchObject({ craft: 'crochet', terms: 'US' });
  });

  it('keeps its craft and terms, and refuses others', () => {
    const textOf = (settings: object) =>
      altered((file) => (file.notebook.settings = { ...file.notebook.settings, ...settings }));
    const read = readFile(textOf({ craft: 'knitting', terms: 'UK' }));
    expect('notebook' in read && read.notebook.settings).toMatchObject({ craft: 'knitting', terms: 'UK' });
    expect(problem(textOf({ terms: 'elsewhere' }))).toContain('terms');
  });

  it('keeps how a check looks across the sizes, and refuses another way', () => {
    const across = (how: unknown) => altered((file) => (cell(file, 'shoulders').across = how));
    const read = readFile(across('differ'));
    expect('notebook' in read && cellById(read.notebook, 'shoulders')).toHaveProperty('across', 'differ');
    expect(problem(across('shrink'))).toContain('across');
  });

  it('keeps a formula that is wrong, to be put right', () => {
    const read = readFile(altered((file) => (cell(file, 'body-length').formula = 'bust + + *')));
    expect(read).toHaveProperty('notebook');
  });

  it('brings no field that the document does not have, and nothing that reaches a prototype', () => {
    const text = altered((file) => {
      file.notebook.extra = 1;
      file.notebook.sections[0].cells[0].onclick = 'alert(1)';
    }).replace('"title"', '"__proto__":{"polluted":1},"title"');
    const read = readFile(text);
    expect(read).toEqual({ notebook: vNeck() });
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  it('of any JSON at all is refused or read, never thrown at', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(readFile(JSON.stringify(value))).toHaveProperty('problem');
        readFile(altered((file) => (file.notebook.sections[0].cells[0].stitches = value)));
        readFile(altered((file) => (file.notebook.sizes = value)));
      }),
      { numRuns: 300 },
    );
  });
});
