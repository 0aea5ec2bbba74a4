import { describe, expect, it } from 'vitest';
import {
  allCells,
  changesBetween,
  checkHolds,
  choicesFor,
  likelyChoice,
  readyChecks,
  usualSettings,
  type Cell,
  type CheckCell,
  type Notebook,
  type ReadyCheck,
  type Size,
} from '../../src/notebook';
import { frontsMessage } from '../../src/notebook/fronts-message';
import { Results } from '../../src/engine';
import { WorkedSheet } from '../../src/engine/sheet';
import { cardigan } from '../../src/starters/cardigan';
import { asMade } from '../../src/notebook/cell-builders';
import { edited } from './edited';
import { blouseSleeve } from '../notebooks/blouse-sleeve';
import { vNeck } from '../notebooks/v-neck';

const ready = (id: string): ReadyCheck => readyChecks.find((check) => check.id === id)!;

async function work(notebook: Notebook): Promise<Results> {
  const results = new Results();
  results.apply(await new WorkedSheet().update(changesBetween(null, notebook)));
  return results;
}

/** The notebook with a ready-made check at its end, and the labels of the sizes where that fails. */
async function failing(notebook: Notebook, id: string, chosen: Record<string, string>) {
  const cell = ready(id).make(notebook, 'made', chosen);
  const section = notebook.sections.at(-1)!.id;
  const results = await work(edited(notebook, { do: 'add cell', section, at: 0, cell }));
  const held = notebook.sizes.map((size, at) => {
    const error = results.error(size.id, 'made', 'holds');
    if (error) throw new Error(error.message);
    return checkHolds(cell, notebook.sizes, at, {
      valueOf: (id) => results.number(id, 'made', 'holds'),
      truthOf: (id) => results.truth(id, 'made', 'holds'),
    });
  });
  return {
    cell,
    sizes: notebook.sizes.filter((_size, at) => held[at] === false).map(({ label }) => label),
    untold: notebook.sizes.filter((_size, at) => held[at] === undefined).map(({ label }) => label),
  };
}

const giving = (cell: string, key: string, size: string | null, value: number) =>
  edited(vNeck(), { do: 'give', cell, key, size, value });

const tassels: Cell = {
  kind: 'notions',
  id: 'tassels',
  label: 'Tassels at the hem',
  name: 'tassels',
  sites: { value: 20 },
  every: { value: 2 },
  startAt: { value: 1 },
  each: { value: 30 },
  waste: { value: 0.1 },
};

describe('sizes beside each other', () => {
  it('a repeat of 24 brings several sizes of the back to one count', async () => {
    const wide = giving('back-sts', 'multiple', null, 24);
    const { cell, sizes } = await failing(wide, 'differ', { count: 'back_sts' });
    const results = await work(wide);
    const counts = wide.sizes.map(({ id }) => results.number(id, 'back-sts', 'count'));
    const same = wide.sizes.filter((_size, at) => at > 0 && counts[at] === counts[at - 1]);
    expect(same.length).toBeGreaterThan(0);
    expect(sizes).toEqual(same.map(({ label }) => label));
    expect(cell.message).toMatch(/^Back stitches: the same as in the size before/);
  });

  it('the V-neck’s 8 plus 3 brings M and L both to 83 stitches; on 2 plus 1 all sizes differ', async () => {
    expect((await failing(vNeck(), 'differ', { count: 'back_sts' })).sizes).toEqual(['L']);
    const fine = allCells(vNeck()).find(({ id }) => id === 'back-sts')!;
    const cell = { ...fine, multiple: { value: 2 }, plus: { value: 1 } } as Cell;
    const narrow = edited(vNeck(), { do: 'change', cell });
    expect((await failing(narrow, 'differ', { count: 'back_sts' })).sizes).toEqual([]);
  });

  it('a cuff typed smaller than that of the size before does not grow', async () => {
    const sleeve = blouseSleeve();
    expect((await failing(sleeve, 'grow', { value: 'cuff' })).sizes).toEqual([]);
    const { id, label } = sleeve.sizes[2]!;
    const slip = edited(sleeve, { do: 'give', cell: 'cuff', key: 'value', size: id, value: 13.2 });
    expect((await failing(slip, 'grow', { value: 'cuff' })).sizes).toEqual([label]);
  });
});

describe('what a body has to pass', () => {
  it('a cuff of 30 stitches is too small for a hand of 23 cm, and the cell says whose hand that is', async () => {
    const chosen = { count: 'STS(30)', rib: 'rib', hand: 'CM(23)' };
    const { cell, sizes } = await failing(vNeck(), 'cuff', chosen);
    // 30 stitches at 17 to 10 cm, stretched 1.35 times, are 23.8 cm; 28 are 22.2.
    expect(sizes).toEqual([]);
    expect(cell.note).toMatch(
      /^The hand: 23 cm round; 95 of 100 men measure no more\. From ANSUR II.*Soldiers.*thumb/,
    );
    expect((await failing(vNeck(), 'cuff', { ...chosen, count: 'STS(28)' })).sizes).toHaveLength(9);
  });

  it('a hand measured in the notebook is taken as it is, with no word of a survey', async () => {
    const chosen = { count: 'cuff_sts', rib: 'rib', hand: 'hand' };
    const { cell, sizes } = await failing(blouseSleeve(), 'cuff', chosen);
    expect(cell.condition).toBe('PASSES(cuff_sts; rib_sts; rib_stretch; hand)');
    expect(cell).not.toHaveProperty('note');
    expect(sizes).toEqual([]);
  });

  it('a neck of 70 stitches of rib does not pass a woman’s head, one of 80 does', async () => {
    // 70 stitches are 41.2 cm, stretched 55.6; 80 are 47.1, stretched 63.5. 95 of 100 heads are within 59.7 cm.
    const chosen = { rib: 'rib', head: 'CM(59.7)' };
    expect((await failing(vNeck(), 'neck', { ...chosen, count: 'STS(70)' })).sizes).toHaveLength(9);
    const wide = await failing(vNeck(), 'neck', { ...chosen, count: 'STS(80)' });
    expect(wide.sizes).toEqual([]);
    expect(wide.cell.note).toMatch(/^The head: 59\.7 cm round; 95 of 100 women/);
  });

  it('an upper arm of 60 cm finds no room in the sleeve of its size', async () => {
    const chosen = { sleeve: 'sleeve_start_width', arm: 'upper_arm', ease: 'CM(3)' };
    const sleeve = blouseSleeve();
    expect((await failing(sleeve, 'arm', chosen)).sizes).toEqual([]);
    const strong = edited(sleeve, { do: 'enter', cell: 'upper-arm', key: 'value', entry: { value: 60 } });
    expect((await failing(strong, 'arm', { ...chosen, sleeve: 'CM(62)' })).sizes).toHaveLength(4);
    expect((await failing(strong, 'arm', { ...chosen, sleeve: 'CM(63)' })).sizes).toEqual([]);
  });
});

describe('edges', () => {
  it('two shoulders match, and a shoulder and a neck do not', async () => {
    const match = await failing(vNeck(), 'join', { one: 'shoulder_sts', other: 'front_end' });
    expect(match.sizes).toEqual([]);
    expect(match.cell.condition).toBe('JOINS(shoulder_sts; front_end)');
    const apart = await failing(vNeck(), 'join', { one: 'back_sts', other: 'front_sts' });
    expect(apart.sizes).toHaveLength(9);
    expect(apart.cell.message).toMatch(/^Back stitches and front stitches do not have the same count/);
  });

  it('a sleeve is compared with its armhole measured once round, or twice from underarm to shoulder', async () => {
    const chosen = { count: 'STS(49)', fabric: 'body', within: '8%' };
    // 49 stitches at 14 to 10 cm are 35 cm.
    const from = async (armhole: string, sides: string) =>
      (await failing(vNeck(), 'armhole', { ...chosen, armhole, sides })).sizes.length;
    expect(await from('CM(33)', '1')).toBe(0);
    expect(await from('CM(32)', '1')).toBe(9);
    expect(await from('CM(16.5)', '2')).toBe(0);
    expect(await from('CM(33)', '2')).toBe(9);
  });

  it('how far they may be apart can be chosen', async () => {
    const chosen = { count: 'STS(49)', fabric: 'body', armhole: 'CM(32)', sides: '1' };
    expect((await failing(vNeck(), 'armhole', { ...chosen, within: '10%' })).sizes).toEqual([]);
    expect((await failing(vNeck(), 'armhole', { ...chosen, within: '5%' })).sizes).toHaveLength(9);
  });
});

describe('notions', () => {
  const child: Size = { id: 'eight', label: '8', chart: { name: 'child', size: '8' } };
  const withSize = (size: Size): Notebook => ({
    ...vNeck(),
    sizes: [...vNeck().sizes, size],
    sections: [{ id: 'supplies', label: 'Notions', cells: [tassels] }],
  });

  it('a child’s size with tassels fails, with the caution as its message', async () => {
    const { cell, sizes } = await failing(withSize(child), 'child', { notions: 'tassels' });
    expect(sizes).toEqual(['8']);
    expect(cell.message).toMatch(/strangle or choke.*safety rules for children’s clothing/);
  });

  it('women’s sizes hold, and a size that follows no chart cannot be told', async () => {
    const { sizes, untold } = await failing(withSize({ id: 'me', label: 'For me' }), 'child', {
      notions: 'tassels',
    });
    expect(sizes).toEqual([]);
    expect(untold).toEqual(['For me']);
  });
});

describe('what there is to choose', () => {
  const need = (id: string, key: string) => ready(id).needs.find((one) => one.key === key)!;
  const none = () => undefined;

  it('counts are stitches and rows, and never those of a swatch', async () => {
    const results = await work(vNeck());
    const choices = choicesFor(vNeck(), need('differ', 'count'), (cell, key) => results.unit(cell, key));
    const names = choices.map(({ formula }) => formula);
    expect(names).toContain('back_sts');
    expect(names).toContain('lower_rows');
    expect(names).not.toContain('bust');
    expect(names).not.toContain('body_sts_counted');
  });

  it('the other edge of a join is counted as the first: rows to rows', async () => {
    const results = await work(vNeck());
    const unitAt = (cell: string, key: string) => results.unit(cell, key);
    const names = choicesFor(vNeck(), need('join', 'other'), unitAt, { one: 'lower_rows' }).map(
      ({ formula }) => formula,
    );
    expect(names).toContain('back_rows');
    expect(names).not.toContain('back_sts');
  });

  it('a formula that is not worked yet has no unit, so it is not offered', () => {
    const names = choicesFor(vNeck(), need('differ', 'count'), none).map(({ formula }) => formula);
    expect(names).toContain('back_sts');
    expect(names).not.toContain('lower_rows');
  });

  it('only a swatch that says how far it stretches can be of an opening', () => {
    expect(choicesFor(vNeck(), need('cuff', 'rib'), none).map(({ label }) => label)).toEqual(['Rib']);
  });

  it('a hand of the notebook is likelier than the survey’s, and the survey’s than any other length', () => {
    const hand = need('cuff', 'hand');
    const choices = choicesFor(blouseSleeve(), hand, none);
    expect(likelyChoice(choices, hand)?.formula).toBe('hand');
    const without = choices.filter(({ formula }) => formula !== 'hand');
    expect(likelyChoice(without, hand)?.formula).toBe('CM(20.2)');
  });

  it('with no likely words, what is of the cell at hand comes first', () => {
    const count = need('differ', 'count');
    const choices = choicesFor(vNeck(), count, none);
    expect(likelyChoice(choices, count, 'front-sts')?.formula).toBe('front_sts');
    expect(likelyChoice(choices, count)).toBe(choices[0]);
  });

  it('offers are written in the notebook’s own units', () => {
    const inches = { ...vNeck(), settings: { ...usualSettings, length: 'in' } } as Notebook;
    const labels = choicesFor(inches, need('arm', 'ease'), none).map(({ label }) => label);
    expect(labels[0]).toMatch(/^2 in$/);
    expect(labels).toContain('none');
  });
});

/** The V-neck with its bust as made, which may be so many stitches off what is wanted. */
function withMade(stitches: number): Notebook {
  const cell = asMade(
    'Finished bust',
    'finished_bust',
    [
      ['back_start_width', 1],
      ['front_start_width', 2],
      ['band_worked_length', 2],
    ],
    `STS(${stitches}) / body_sts / 2`,
    { name: 'made_bust' },
  );
  return edited(vNeck(), { do: 'add cell', section: 'joins-section', at: 0, cell });
}

describe('checks of how sizes are graded', () => {
  it('a bust whose back and fronts are fitted apart does not grow in even steps', async () => {
    const { sizes, cell } = await failing(withMade(8), 'steady', { made: 'made_bust' });
    expect(cell.across).toBe('steady');
    // Worked 94 (100, 117, 128, 134, 140, 157, 163, 180), where every size is to be 10.16 cm wider and a step is 5.7.
    expect(sizes).toEqual(['M', '3X', '5X']);
  });

  it('a neck stays between two numbers, the numbers included', async () => {
    const chosen = { width: 'neck_width', least: 'CM(17)', most: 'CM(20)' };
    expect((await failing(vNeck(), 'band', chosen)).sizes).toEqual(['5X']);
    expect((await failing(vNeck(), 'band', { ...chosen, most: 'CM(18)' })).sizes).toEqual([
      'XL',
      '2X',
      '3X',
      '4X',
      '5X',
    ]);
  });

  it('fronts with their bands reach the back, or are further apart than they may be', async () => {
    const chosen = {
      back: 'back_start_width',
      front: 'front_start_width',
      band: 'band_worked_length',
      bands: '2',
    };
    expect((await failing(vNeck(), 'fronts', { ...chosen, within: 'CM(15)' })).sizes).toEqual([]);
    expect((await failing(vNeck(), 'fronts', { ...chosen, within: 'CM(0.5)' })).sizes).toHaveLength(9);
  });

  it('fronts that do not meet the back are told of, wider or narrower, as the pieces are worked', async () => {
    const cell = ready('fronts').make(vNeck(), 'made', {
      back: 'back_start_width',
      front: 'front_start_width',
      band: 'band_worked_length',
      bands: '2',
      within: 'CM(4)',
    });
    expect(cell.across).toBe('meet');
    const notebook = edited(vNeck(), { do: 'add cell', section: 'joins-section', at: 0, cell });
    const results = await work(notebook);
    const number = (size: string, of: string, key: string) => results.number(size, of, key)!;
    const expected = notebook.sizes.flatMap(({ id, label }) => {
      // Stitches at 14 to 10 cm, and the rows of the band at 18.
      const back = number(id, 'back-sts', 'count') / 1.4;
      const front = number(id, 'front-sts', 'count') / 1.4;
      const beyond = 2 * front + 2 * number(id, 'band-worked', 'length') - back;
      if (Math.abs(beyond) <= 4) return [];
      const how = beyond > 0 ? 'wider' : 'narrower';
      return [
        `In ${label} the fronts, closed, are ${Math.abs(beyond).toFixed(1)}\u00a0cm ${how} than the back.`,
      ];
    });
    const texts = frontsMessage(notebook.sizes, usualSettings, (size) =>
      results.number(size, 'made', 'holds'),
    );
    expect(texts).toEqual(expected);
    expect(texts.some((one) => one.includes('wider'))).toBe(true);
    expect(texts.length).toBeLessThan(notebook.sizes.length);
  });

  it('bands that lie one on the other go round once: the cardigan meets its back within 1.5 cm in every size', async () => {
    const chosen = {
      back: 'back_start_width',
      front: 'right_front_start_width',
      band: 'button_band_length',
      within: 'CM(1.5)',
    };
    const bands = ready('fronts').needs.find(({ key }) => key === 'bands')!;
    const usual = likelyChoice(
      choicesFor(cardigan(), bands, () => undefined),
      bands,
    )!.formula;
    expect((await failing(cardigan(), 'fronts', { ...chosen, bands: usual })).sizes).toEqual([]);
    // A second band is 2.8 cm more, which no size has room for.
    expect((await failing(cardigan(), 'fronts', { ...chosen, bands: '2' })).sizes.length).toBeGreaterThan(5);
  });

  it('a band is as wide as its piece is long, and no stretch of the edge it is picked up along', () => {
    const band = ready('fronts').needs.find(({ key }) => key === 'band')!;
    const unitAt = () => undefined;
    expect(likelyChoice(choicesFor(vNeck(), band, unitAt), band)?.formula).toBe('band_worked_length');
  });

  it('a gap is told as one, and of the only size without its name', () => {
    const sizes = [
      { id: 'm', label: 'M' },
      { id: 'l', label: 'L' },
    ];
    const overlaps: Record<string, number> = { m: -1.25, l: 3.1 };
    expect(frontsMessage(sizes, usualSettings, (size) => overlaps[size])).toEqual([
      'In M the fronts, closed, are 1.3\u00a0cm narrower than the back.',
      'In L the fronts, closed, are 3.1\u00a0cm wider than the back.',
    ]);
    expect(frontsMessage(sizes.slice(1), { ...usualSettings, length: 'in' }, () => 2.54)).toEqual([
      'The fronts, closed, are 1\u00a0in wider than the back.',
    ]);
    expect(frontsMessage(sizes, usualSettings, () => 0)).toEqual([]);
  });

  it('yarn is among what can be asked to grow', () => {
    const [need] = ready('grow').needs;
    const labels = choicesFor(vNeck(), need!, () => undefined).map(({ formula }) => formula);
    expect(labels).toContain('yarn');
  });
});

describe('every ready-made check', () => {
  it.each(readyChecks.map((check) => [check.label, check] as const))(
    '“%s” is worked in the V-neck with the likely choices, beside a second of its kind',
    async (_label, check) => {
      const section = 'joins-section';
      let notebook = edited(withMade(8), { do: 'add cell', section, at: 0, cell: tassels });
      const results = await work(notebook);
      const unitAt = (cell: string, key: string) => results.unit(cell, key);
      const chosen: Record<string, string> = {};
      for (const one of check.needs) {
        const choice = likelyChoice(choicesFor(notebook, one, unitAt, chosen), one);
        expect(choice, one.label).toBeDefined();
        chosen[one.key] = choice!.formula;
      }
      for (const id of ['first', 'second']) {
        const cell: CheckCell = check.make(notebook, id, chosen);
        expect(cell.id).toBe(id);
        notebook = edited(notebook, { do: 'add cell', section, at: 0, cell });
      }
      const worked = await work(notebook);
      for (const id of ['first', 'second']) {
        expect(allCells(notebook).filter((cell) => cell.id === id)).toHaveLength(1);
        for (const size of notebook.sizes) expect(worked.error(size.id, id, 'holds')).toBeUndefined();
      }
    },
  );
});
