import {
  usualSettings,
  type Cell,
  type Entry,
  type FormulaCell,
  type Notebook,
  type Size,
} from '../../src/notebook/document';

/*
 * A garment made up for the bench: chains as a designer writes them, part after part, each part from the one before,
 * and all of it from one swatch. Of fifty cells forty-five are formulas, three repeat fits, one an ease, one a piece.
 */

const sizes: readonly Size[] = Array.from({ length: 12 }, (_, index) => ({
  id: `s${index}`,
  label: `${index}`,
}));

const value = (number: number): Entry => ({ value: number });
const worked = (formula: string): Entry => ({ formula });

function formula(name: string, text: string): FormulaCell {
  return { kind: 'formula', id: name, label: name, name, formula: text };
}

/** The swatch everything depends on. */
export function swatchOf(stitches: number): Cell {
  return {
    kind: 'swatch',
    id: 'body',
    label: 'Body swatch',
    name: 'body',
    worked: '6.5 mm hook',
    stitches: [{ count: value(stitches), over: value(10) }],
    rows: [{ count: value(16), over: value(10) }],
  };
}

/** The body measurement the first part starts from: another in each size. */
const bust: Cell = {
  kind: 'measure',
  id: 'bust',
  label: 'Bust',
  name: 'bust',
  unit: 'length',
  entry: { each: Object.fromEntries(sizes.map(({ id }, index) => [id, bustOf(index)])) },
};

export function bustOf(size: number): number {
  return 76 + 6 * size;
}

/** The cells of one part; `from` is the width it starts from. */
function part(k: number, from: string): Cell[] {
  const n = (name: string): string => `${name}_${k}`;
  const cells: Cell[] = [
    {
      kind: 'ease',
      id: n('finished'),
      label: n('finished'),
      name: n('finished'),
      by: 'length',
      body: worked(from),
      ease: value(4),
    },
    fit(n('back'), `${n('finished')} / 2 * body_sts`, 8, 3),
    formula(n('back_width'), `${n('back')} / body_sts`),
    formula(n('sleeve_length'), `DROPSLEEVE(CM(90); MIN(${n('back_width')}; CM(80)))`),
    formula(n('sleeve_rows'), `ROUNDCOUNT(${n('sleeve_length')} * body_rows; "even")`),
    fit(n('cuff'), `CM(24) * body_sts`, 4, 2),
    formula(n('side_rows'), `ROUNDCOUNT(CM(21) * body_rows; "even")`),
    formula(n('upper'), `JOINARMHOLE(${n('side_rows')}; 2; 3; STS(6); STS(2))`),
    fit(n('neck'), `${n('back')} * 0.3`, 2, 1),
    {
      kind: 'piece',
      id: n('panel'),
      label: n('panel'),
      name: n('panel'),
      worked: 'flat',
      start: worked(n('back')),
      ends: 'bound off',
      stretches: [
        { kind: 'even', name: 'rib', label: 'Rib', fabric: 'body', rows: value(8) },
        { kind: 'even', name: 'plain', label: 'Plain', fabric: 'body', rows: worked(n('side_rows')) },
        {
          kind: 'taper',
          name: 'neck',
          label: 'Neck',
          fabric: 'body',
          to: worked(`${n('back')} - 2 * 10`),
          over: worked(n('sleeve_rows')),
          perRow: value(2),
          every: 1,
          before: value(0),
          after: value(2),
          order: 'longFirst',
        },
      ],
    },
    formula(n('width_1'), `${n('back_width')} + CM(2.5)`),
  ];
  // Sums along the way, as when lengths are laid against each other.
  for (let i = 2; cells.length < 50; i++) {
    const last = n(`width_${i - 1}`);
    cells.push(
      formula(
        n(`width_${i}`),
        [
          `${last} + 1 / body_sts * STS(${i % 5})`,
          `(${last} + ${n('back_width')}) / 2`,
          `IF(${last} > CM(50); ${last} - CM(0.5); ${last} + CM(1.5))`,
          `ROUNDCOUNT(${last} * body_sts) / body_sts`,
          `MAX(${last}; ${n('back_width')}; CM(30)) * 0.99`,
          `FITREPEAT(${last} * body_sts; 6; 2; "up") / body_sts`,
        ][i % 6]!,
      ),
    );
  }
  return cells;
}

function fit(name: string, target: string, multiple: number, plus: number): Cell {
  return {
    kind: 'fit',
    id: name,
    label: name,
    name,
    counts: 'stitches',
    target: worked(target),
    multiple: value(multiple),
    plus: value(plus),
    rule: 'nearest',
  };
}

/** Cells that have nothing to do with the swatch. */
function unrelated(count: number): Cell[] {
  return Array.from({ length: count }, (_, i) =>
    formula(
      `other_${i}`,
      i % 10 === 0 ? `bust + CM(${(i % 7) + 1})` : `other_${i - 1} * 1.01 - CM(${i % 3})`,
    ),
  );
}

/** A notebook of so many cells that all depend on its swatch, in twelve sizes. */
export function garment(cells: number, others = 0): Notebook {
  const parts: Cell[] = [];
  for (let k = 0; parts.length < cells - 2; k++) {
    parts.push(
      ...part(k, k === 0 ? 'bust + CM(0) * body_sts / body_sts' : `2 * width_${lastWidth}_${k - 1}`),
    );
  }
  return notebook([swatchOf(14), bust, ...parts.slice(0, cells - 2), ...unrelated(others)]);
}

/** Eleven cells come before the chain of widths in a part of fifty. */
const lastWidth = 40;

function notebook(cells: readonly Cell[]): Notebook {
  return {
    title: 'Bench',
    settings: usualSettings,
    sizes,
    sections: [{ id: 'all', label: 'All', cells }],
  };
}

/** The name of the last width in the chain of a notebook of so many cells. */
export function lastWidthOf(cells: number): string {
  const inParts = cells - 2;
  const lastPart = Math.ceil(inParts / 50) - 1;
  return `width_${inParts - 50 * lastPart - 10}_${lastPart}`;
}

/** The notebook with another count in its swatch. */
export function reswatched(before: Notebook, stitches: number): Notebook {
  const [section] = before.sections;
  const cells = section!.cells.map((cell) => (cell.id === 'body' ? swatchOf(stitches) : cell));
  return { ...before, sections: [{ ...section!, cells }] };
}
