import { describe, expect, it } from 'vitest';
import { allCells, type Cell, type EaseCell, type Notebook } from '../../src/notebook';
import { asMadeSuggested } from '../../src/notebook/as-made-suggested';
import { cardigan } from '../../src/starters/cardigan';
import { asMade, chosen, even, fit, formula, measure, piece, value } from '../../src/notebook/cell-builders';
import { singleSleeve } from '../../src/starters/single-sleeve';
import { notebookOf } from '../engine/notebook-of';

const ease = (label: string, name: string): EaseCell => ({
  kind: 'ease',
  id: name,
  label,
  name,
  by: 'length',
  body: value(90),
  ease: value(10),
});
const flat = (label: string, start: string): Cell =>
  piece(label, 'flat', start, [even('Body', 'wool', '40')]);
/** The widths of the pieces, by their ids. */
const widths =
  (of: Readonly<Record<string, number>>) =>
  (cell: string, key: string): number | undefined =>
    key === 'start_width' ? of[cell] : undefined;
const textOf = (cells: readonly Cell[], of: Readonly<Record<string, number>> = {}): string[] =>
  asMadeSuggested(notebookOf([...cells]), widths(of)).map((one) => `${one.of}: ${one.text}`);

describe('measurements as made that are suggested', () => {
  const bust = ease('Finished bust', 'finished_bust');
  const back = fit('Back stitches', 'finished_bust / 2 * wool_sts', 8, 3, { name: 'back_sts' });

  it('one front as wide as the back is worked once, and one of half its width twice', () => {
    const cells = [bust, back, flat('Back', 'back_sts'), flat('Front', 'back_sts')];
    expect(textOf(cells, { back: 52, front: 52 })).toEqual(['Finished bust: Back + Front']);
    expect(textOf(cells, { back: 52, front: 25 })).toEqual(['Finished bust: Back + 2 × Front']);
  });

  it('two fronts are each worked once; with widths that are not worked yet one front tells nothing', () => {
    const fronts = [flat('Left front', '30'), flat('Right front', '30')];
    expect(textOf([bust, flat('Back', '60'), ...fronts])).toEqual([
      'Finished bust: Back + Left front + Right front',
    ]);
    expect(textOf([bust, flat('Back', '60'), flat('Front', '30')])).toEqual([]);
  });

  it('bands meet edge to edge, so both go round; with buttons one lies on the other, and one goes round', () => {
    const cells = [bust, flat('Back', '60'), flat('Left front', '30'), flat('Right front', '30')];
    const fronts = 'Finished bust: Back + Left front + Right front';
    expect(textOf([...cells, flat('Band', '90')])).toEqual([`${fronts} + 2 × Band`]);
    expect(textOf([...cells, flat('Button band', '90')])).toEqual([`${fronts} + Button band`]);
    const holes = formula('Places', 'BUTTONHOLES(band_body_last; STS(3); 5; STS(2))');
    expect(textOf([...cells, flat('Band', '90'), holes])).toEqual([`${fronts} + Band`]);
  });

  it('the cardigan’s own bust is what would be suggested of it', () => {
    const whole = cardigan();
    const own = allCells(whole).find((cell) => cell.kind === 'as made')!;
    const without: Notebook = {
      ...whole,
      sections: whole.sections.map((section) => ({
        ...section,
        cells: section.cells.filter(({ kind }) => kind !== 'as made'),
      })),
    };
    const found = asMadeSuggested(without, () => undefined).find((one) => one.of === 'Finished bust')!;
    expect(found.text).toBe('Back + Right front + Left front + Button band');
    expect(found.cell).toMatchObject({ of: own.of, closes: own.closes });
  });

  it('a body worked in one is the bust and the hip, and a neckband is the neck', () => {
    const cells = [
      bust,
      ease('Finished hips', 'hips'),
      chosen('Round of the neck', 'length', value(48), { name: 'neck' }),
      chosen('Depth of the neck', 'length', value(8), { name: 'neck_depth' }),
      piece('Body', 'round', '150', [even('Body', 'wool', '40')]),
      piece('Neckband', 'round', '80', [even('Rib', 'wool', '8')]),
    ];
    expect(textOf(cells)).toEqual([
      'Finished bust: Body',
      'Finished hips: Body',
      'Round of the neck: Neckband',
    ]);
  });

  it('below the armholes is the bust, where the sides are shaped', () => {
    const shaped: Cell = {
      ...(flat('Back', 'back_sts') as Extract<Cell, { kind: 'piece' }>),
      stretches: [
        even('Hem', 'wool', '10'),
        { kind: 'evenly', name: 'waist', label: 'Waist', fabric: 'wool', to: value(70), ends: 'half' },
        {
          kind: 'leave',
          name: 'arms',
          label: 'Underarms',
          fabric: 'wool',
          atStart: value(4),
          atEnd: value(4),
        },
        even('Yoke', 'wool', '30'),
      ],
    };
    const [suggested] = asMadeSuggested(
      notebookOf([
        bust,
        ease('Finished hip', 'hip'),
        shaped,
        flat('Left front', '35'),
        flat('Right front', '35'),
      ]),
      () => undefined,
    );
    expect(suggested!.cell.of[0]).toEqual({
      width: { formula: 'back_waist_last / wool_sts' },
      times: { value: 1 },
    });
  });

  it('the sleeve starter’s cuff and top are its own, with its seam; what has one is not suggested again', () => {
    const notebook: Notebook = {
      ...singleSleeve(),
      sections: singleSleeve().sections.map((section) => ({
        ...section,
        cells: section.cells.filter(({ kind }) => kind !== 'as made'),
      })),
    };
    const found = asMadeSuggested(notebook, () => undefined);
    expect(found.map(({ cell }) => cell)).toMatchObject([
      {
        label: 'Width at the underarm, as made',
        of: [{ width: { formula: 'sleeve_end_width' } }],
        closes: 'seamed',
        less: { formula: 'SEAMSTAKE(1; seam_sts; fabric_sts)' },
      },
      {
        label: 'Round of the cuff, as made',
        of: [{ width: { formula: 'sleeve_start_width' } }],
        less: { formula: 'SEAMSTAKE(1; seam_sts; rib_sts)' },
      },
    ]);
    expect(asMadeSuggested(singleSleeve(), () => undefined)).toEqual([]);
  });

  it('nothing is suggested of a body measure, nor where two pieces could be meant', () => {
    expect(textOf([measure('Bust', 'length', value(94)), flat('Body', '60')])).toEqual([]);
    expect(
      textOf([ease('Finished upper arm', 'arm'), flat('Sleeve, left', '60'), flat('Sleeve, right', '60')]),
    ).toEqual([]);
    expect(
      textOf([bust, flat('Body', '60'), asMade('Bust', 'finished_bust', [['body_start_width', 1]], 'CM(1)')]),
    ).toEqual([]);
  });
});
