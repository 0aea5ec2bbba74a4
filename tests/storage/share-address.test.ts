import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linkOf, longestLink, mostUnpacked, packed, textInLink, unpacked } from '../../src/storage';
import { readFile, writeFile } from '../../src/notebook';
import { cardigan, starters } from '../../src/starters';
import { withoutHanging } from '../without-hanging';

const page = 'https://example.org/easewright/';
const hashOf = (link: string): string => new URL(link).hash;

async function linkTo(text: string): Promise<string> {
  const made = await linkOf(text, page);
  if ('problem' in made) throw new Error(made.problem);
  return made.link;
}

describe('a link', () => {
  it.each(starters.map((starter) => [starter.label, starter] as const))(
    'carries %s whole',
    async (_label, starter) => {
      const link = await linkTo(writeFile(starter.make()));
      expect(link.length).toBeLessThan(longestLink);
      expect(link).toMatch(/^https:\/\/example\.org\/easewright\/#notebook=1\.[\w-]+$/);
      const found = await textInLink(hashOf(link));
      expect('text' in found && readFile(found.text)).toEqual({ notebook: starter.make() });
    },
  );

  it('that is too long says so and offers the file', async () => {
    // Words that do not pack.
    const note = fc.sample(fc.string({ minLength: 9000, maxLength: 9000 }), { seed: 5, numRuns: 6 });
    const large = {
      ...cardigan(),
      sections: note.map((text, at) => ({
        id: `${at}`,
        label: 'Notes',
        cells: [{ kind: 'note' as const, id: `n${at}`, name: `n${at}`, label: 'Note', text }],
      })),
    };
    const made = await linkOf(writeFile(large), page);
    expect('problem' in made && made.problem).toMatch(/too long for a link.*Save it as a file/);
  });

  it('with a stop or a bracket put behind it by a program still opens', async () => {
    const link = await linkTo(writeFile(cardigan()));
    for (const tail of ['.', ')', '>', '",', '\n'])
      expect(await textInLink(new URL(link).hash + tail)).toHaveProperty('text');
  });

  it('with very many stops in it is refused, with as many behind it read: each is looked at once', async () => {
    const link = await linkTo(writeFile(cardigan()));
    const stops = '.'.repeat(400_000);
    expect(await textInLink(`${new URL(link).hash}${stops}`)).toHaveProperty('text');
    // A pattern that was tried from each of them would take minutes.
    const refused = withoutHanging(() => textInLink(`${new URL(link).hash}${stops}A`));
    expect(await refused).toHaveProperty('problem');
  });

  it('that was cut, changed or made up is refused with a sentence', async () => {
    const hash = hashOf(await linkTo(writeFile(cardigan())));
    for (const wrong of [
      hash.slice(0, -300),
      '#notebook=1.',
      '#notebook=1.%%%',
      '#notebook=1.AAAA',
      `${hash}é`,
    ])
      expect(await textInLink(wrong)).toHaveProperty('problem');
    const newer = await textInLink('#notebook=2.abc');
    expect('problem' in newer && newer.problem).toContain('newer version');
    for (const cut of ['#notebook=', '#notebook=1', '#notebook=abc']) {
      const damaged = await textInLink(cut);
      expect('problem' in damaged && damaged.problem).toContain('damaged or was cut short');
    }
  });

  it('of any letters at all is refused or read, never thrown at', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ maxLength: 200 }), async (letters) => {
        const found = await textInLink(`#notebook=1.${letters}`);
        if ('text' in found) expect(readFile(found.text)).toHaveProperty('problem');
      }),
      { numRuns: 200 },
    );
  });
});

describe('what was packed', () => {
  it('unpacks to the same text', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'grapheme' }), async (text) => {
        expect(await unpacked(new Uint8Array(await packed(text)), 1e6)).toBe(text);
      }),
      { numRuns: 50 },
    );
  });

  it('to burst is given up at the cap, before it has burst', async () => {
    // 200 MB of nothing, packed to 200 kB.
    const bomb = new Uint8Array(await packed('0'.repeat(2e8)));
    expect(bomb.length).toBeLessThan(1e6);
    const before = process.memoryUsage().arrayBuffers;
    expect(await unpacked(bomb, mostUnpacked)).toBeUndefined();
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(50e6);
    expect(await unpacked(new Uint8Array(await packed('0'.repeat(1000))), 1000)).toHaveLength(1000);
    expect(await unpacked(new Uint8Array(await packed('0'.repeat(1001))), 1000)).toBeUndefined();
  });
});
