import { describe, expect, it } from 'vitest';
import { workPiece } from '../../../src/craft';
import { readFile, writeFile, type Notebook, type PieceCell, type Settings } from '../../../src/notebook';
import { linesOf, patternOf, prove, type PatternDocument } from '../../../src/pattern';
import { sourceOf } from './source-of';
import { vNeck } from '../../notebooks/v-neck';

/** The V-neck with the first row of one piece on the wrong side, as it comes out of a file. */
function begunOnWrongSide(
  label: string,
  craft: Settings['craft'],
  change: Partial<PieceCell> = {},
  startsOn: 'RS' | 'WS' | 'unsaid' = 'WS',
): Notebook {
  const made = vNeck();
  const notebook: Notebook = {
    ...made,
    settings: { ...made.settings, craft },
    sections: made.sections.map((section) => ({
      ...section,
      cells: section.cells.map((cell) =>
        cell.kind === 'piece' && cell.label === label
          ? { ...cell, ...(startsOn === 'unsaid' ? {} : { startsOn }), ...change }
          : cell,
      ),
    })),
  };
  const read = readFile(writeFile(notebook));
  if ('problem' in read) throw new Error(read.problem);
  return read.notebook;
}

async function written(notebook: Notebook, label: string) {
  const source = await sourceOf(notebook);
  const document = patternOf(source);
  const part = document.parts.find(({ heading }) => heading === label)!;
  return { source, document, part, lines: linesOf(part).map(({ text }) => text) };
}

function without(document: PatternDocument, text: string): PatternDocument {
  return {
    ...document,
    parts: document.parts.map((part) => ({
      ...part,
      blocks: part.blocks.filter((block) => block.kind !== 'line' || block.text !== text),
    })),
  };
}

describe('a flat piece whose first row is on the wrong side', () => {
  it('is worked so in every size, and its rows turn from there', async () => {
    const { source, part } = await written(begunOnWrongSide('Back', 'knitting'), 'Back');
    for (const { id } of source.notebook.sizes) {
      const plan = source.plan(id, part.cell!);
      if ('problem' in plan) throw new Error(plan.problem);
      expect(
        workPiece(plan)
          .slice(0, 3)
          .map(({ side }) => side),
      ).toEqual(['WS', 'RS', 'WS']);
    }
  });

  it('says so after casting on, and is not proven without', async () => {
    const { source, document, lines } = await written(begunOnWrongSide('Back', 'knitting'), 'Back');
    expect(lines.slice(0, 2)).toEqual([expect.stringMatching(/^Cast on /u), 'Row 1 is a wrong-side row.']);
    expect(prove(document, source)).toEqual({ proven: true });
    expect(prove(without(document, lines[1]!), source)).toMatchObject({
      proven: false,
      where: expect.arrayContaining([
        expect.objectContaining({ piece: 'Back', problem: expect.stringContaining('on the wrong side') }),
      ]),
    });
  });

  it('names the side of the row that is worked into the chain', async () => {
    const { source, document, lines } = await written(begunOnWrongSide('Back', 'crochet'), 'Back');
    expect(lines[1]).toMatch(/^Row 1 \(WS\): /u);
    expect(lines.join(' ')).not.toContain('is a wrong-side row');
    expect(prove(document, source)).toEqual({ proven: true });
  });

  it('picks up from the wrong side in crochet, where picking up is that row', async () => {
    const { source, document, lines } = await written(
      begunOnWrongSide('Band, worked', 'crochet'),
      'Band, worked',
    );
    expect(lines[0]).toMatch(/^Row 1 \(WS\): with the wrong side facing, join the yarn /u);
    expect(prove(document, source)).toEqual({ proven: true });
  });

  it('picks up from the right side in knitting, and then turns', async () => {
    const { source, document, lines } = await written(
      begunOnWrongSide('Band, worked', 'knitting'),
      'Band, worked',
    );
    expect(lines[0]).toMatch(/^With the right side facing, pick up /u);
    expect(lines).toContain('Row 1 is a wrong-side row.');
    expect(prove(document, source)).toEqual({ proven: true });
  });

  it('is the default in knitting where it is picked up, since the right side faces then; a side that was chosen stays', async () => {
    const knit = begunOnWrongSide('Band, worked', 'knitting', {}, 'unsaid');
    const { source, document, part, lines } = await written(knit, 'Band, worked');
    const sides = source.notebook.sizes.map(({ id }) => {
      const plan = source.plan(id, part.cell!);
      return 'problem' in plan ? plan.problem : workPiece(plan)[0]!.side;
    });
    expect(new Set(sides)).toEqual(new Set(['WS']));
    expect(lines[0]).toMatch(/^With the right side facing, pick up /u);
    expect(lines).toContain('Row 1 is a wrong-side row.');
    expect(prove(document, source)).toEqual({ proven: true });
    // What is cast on begins on the right side, and nothing is written into the file.
    expect((await written(knit, 'Back')).lines).not.toContain('Row 1 is a wrong-side row.');
    expect(writeFile(knit)).not.toContain('startsOn');

    const chosen = await written(begunOnWrongSide('Band, worked', 'knitting', {}, 'RS'), 'Band, worked');
    expect(chosen.lines[0]).toMatch(/^With the wrong side facing, pick up /u);
    expect(chosen.lines).not.toContain('Row 1 is a wrong-side row.');
    expect(prove(chosen.document, chosen.source)).toEqual({ proven: true });
  });

  it('is no default in crochet, where the pick-up is row 1 and the right side faces', async () => {
    const { source, part, lines } = await written(
      begunOnWrongSide('Band, worked', 'crochet', {}, 'unsaid'),
      'Band, worked',
    );
    const plan = source.plan('m', part.cell!);
    expect('problem' in plan ? plan.problem : workPiece(plan)[0]!.side).toBe('RS');
    expect(lines[0]).toMatch(/^Row 1 \(RS\): with the right side facing/u);
  });

  it('is said of none that is worked in the round', async () => {
    const notebook = begunOnWrongSide('Back', 'knitting', { worked: 'round' });
    const { source, document, lines } = await written(notebook, 'Back');
    expect(lines.join(' ')).not.toMatch(/wrong.side|WS/u);
    expect(prove(document, source)).toEqual({ proven: true });
  });
});

it('a first row on no side that there is is refused in a file', () => {
  const file = writeFile(begunOnWrongSide('Back', 'knitting')).replace(
    '"startsOn": "WS"',
    '"startsOn": "XX"',
  );
  expect(file).toContain('"XX"');
  expect(readFile(file)).toHaveProperty('problem');
});
