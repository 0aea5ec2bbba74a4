import { howSurveyed, surveyed, surveySource, type Sample } from '../craft';
import { measureLabel } from './as-made-message';
import type { CheckCell, Notebook, Settings } from './document';
import { nameFrom, nameTable, withFreeName } from './names';
import { sameName } from '../formulas';
import { writeLength, writeNumber } from '../format';
import type { ReadyChoice, ReadyNeed } from './ready-choices';

/** A check that is ready made: told what it is of, it makes the cell. */
export interface ReadyCheck {
  readonly id: string;
  readonly label: string;
  readonly about: string;
  readonly needs: readonly ReadyNeed[];
  /** @param chosen what stands in the formula for each need, by its key */
  make(notebook: Notebook, id: string, chosen: Readonly<Record<string, string>>): CheckCell;
}

const pulled = (key: string, label: string): ReadyNeed => ({
  key,
  label,
  from: 'pulled swatches',
  likely: [/rib/i],
  lacking: 'No swatch says how far it stretches: open a swatch and add that to it.',
});

const body = (key: 'hand' | 'head', label: string): ReadyNeed => ({
  key,
  label,
  from: 'lengths',
  likely: [new RegExp(`\\b${key}\\b`, 'i')],
  offers: (settings) => (['women', 'men'] as const).map((sample) => ofSurvey(sample, key, settings)),
});

function ofSurvey(sample: Sample, key: 'hand' | 'head', settings: Settings): ReadyChoice {
  const cm = surveyed(sample, key, 95);
  return { label: `${written(cm, settings)}: 95 of 100 ${sample} of a survey`, formula: `CM(${cm})` };
}

function written(cm: number, { length, decimal }: Settings): string {
  return `${writeLength(cm, { unit: length, decimal })} ${length}`;
}

/** A length that is one of a few, or one of the notebook. */
function lengths(key: string, label: string, cm: readonly number[]): ReadyNeed {
  return {
    key,
    label,
    offers: (settings) =>
      cm.map((one) => ({
        label: one === 0 ? 'none' : written(one, settings),
        formula: `CM(${one})`,
      })),
  };
}

/** What the note of a check says of a measurement taken from the survey. */
function noteOn(key: 'hand' | 'head', formula: string | undefined): { note?: string } {
  const sample = (['women', 'men'] as const).find((one) => formula === `CM(${surveyed(one, key, 95)})`);
  if (!sample) return {};
  const cm = surveyed(sample, key, 95);
  return {
    note: `The ${key}: ${cm} cm round; 95 of 100 ${sample} measure no more. From ${surveySource}. ${howSurveyed[key].caution!} Your own measurement wins.`,
  };
}

/** The cell of a check, under a name that is free. */
function made(
  notebook: Notebook,
  id: string,
  cell: Pick<CheckCell, 'label' | 'condition' | 'message' | 'across' | 'note'>,
): CheckCell {
  const label = cell.label.slice(0, 200);
  return withFreeName(notebook, { kind: 'check', id, name: nameFrom(label), ...cell, label }) as CheckCell;
}

/** What a name stands for, in the words of its cell. */
function called(notebook: Notebook, name: string): string {
  return nameTable(notebook).get(sameName(name))?.label ?? name;
}

/** What was chosen for a need; a name that is missing shows in the formula, where the cell says so. */
const inWords = (chosen: Readonly<Record<string, string>>, key: string): string => chosen[key] || key;

/** Ready-made checks, in the order they are offered. */
export const readyChecks: readonly ReadyCheck[] = [
  {
    id: 'differ',
    label: 'Neighboring sizes differ',
    about:
      'A wide repeat can bring two sizes to the same count, so that one of them is graded in name only. Fails in a size with the count of the size before it.',
    needs: [{ key: 'count', label: 'Which count', from: 'counts' }],
    make: (notebook, id, chosen) => {
      const what = called(notebook, inWords(chosen, 'count'));
      return made(notebook, id, {
        label: `${what} from size to size`,
        condition: inWords(chosen, 'count'),
        message: `${what}: the same as in the size before, so the two come out as one size here. Change the ease, the repeat or its rule.`,
        across: 'differ',
      });
    },
  },
  {
    id: 'grow',
    label: 'Every size is larger than the one before',
    about:
      'A slip in one column, or rounding down, can leave a size no larger than the smaller one beside it. Fails in a size that does not grow.',
    needs: [{ key: 'value', label: 'What has to grow', from: 'measured' }],
    make: (notebook, id, chosen) => {
      const what = called(notebook, inWords(chosen, 'value'));
      return made(notebook, id, {
        label: `${what} grows with the size`,
        condition: inWords(chosen, 'value'),
        message: `${what}: no more than in the size before. Look at what was typed for these two sizes, and at what was rounded.`,
        across: 'grow',
      });
    },
  },
  {
    id: 'steady',
    label: 'Sizes grow in even steps',
    about:
      'Two repeats rounded apart can make one size jump and the next stand still. Fails in a size whose step is further from the step that is wanted than its repeats make necessary.',
    needs: [
      {
        key: 'made',
        label: 'Which measurement as made',
        from: 'as made',
        likely: [/bust|chest/i],
        lacking: 'No cell says what a measurement comes to as made: add one of that kind.',
      },
    ],
    make: (notebook, id, chosen) => {
      const name = inWords(chosen, 'made');
      const what = measureLabel(called(notebook, name));
      return made(notebook, id, {
        label: `${what} grows in even steps`,
        condition: `${name}_difference / (2 * ${name}_within)`,
        message: `${what}: the step from the size before is more than one repeat off the step that is wanted. Fit the pieces together, or choose a smaller repeat.`,
        note: 'How far it is from the wanted measurement, in steps of its repeats; from size to size it may change by one.',
        across: 'steady',
      });
    },
  },
  {
    id: 'band',
    label: 'A width stays between two numbers',
    about:
      'A neck that takes all the rounding of its shoulders wanders from size to size. Fails in a size where the width is outside the two numbers.',
    needs: [
      { key: 'width', label: 'Which width', from: 'lengths', likely: [/neck/i] },
      lengths('least', 'At least', [14, 12, 16, 18, 20]),
      lengths('most', 'At most', [20, 18, 22, 24, 26]),
    ],
    make: (notebook, id, chosen) => {
      const what = called(notebook, inWords(chosen, 'width'));
      return made(notebook, id, {
        label: `${what} stays in bounds`,
        condition: `IF(${inWords(chosen, 'width')} < ${inWords(chosen, 'least')}; FALSE(); ${inWords(chosen, 'width')} <= ${inWords(chosen, 'most')})`,
        message: `${what} is outside its bounds in this size. Move stitches between it and what lies beside it, in pairs.`,
      });
    },
  },
  {
    id: 'fronts',
    label: 'The fronts meet',
    about:
      'Closed, two fronts and their bands have to be as wide as the back, or the side seams do not hang at the sides. A button band under the other counts once. Fails where they are further apart than they may be, and says by how much.',
    needs: [
      { key: 'back', label: 'Width of the back', from: 'lengths', likely: [/back.*start/i, /back/i] },
      { key: 'front', label: 'Width of one front', from: 'lengths', likely: [/front.*start/i, /front/i] },
      {
        ...lengths('band', 'Width of one band', [0]),
        from: 'lengths',
        // A band is picked up along its edge, and as wide as its piece is long.
        likely: [/^(?:\w+_)?band_(?:worked_|piece_)?length$/i, /width.*band|band_width/i, /band/i],
      },
      {
        key: 'bands',
        label: 'Closed, the bands lie',
        offers: () => [
          { label: 'one on the other', formula: '1' },
          { label: 'edge to edge', formula: '2' },
        ],
      },
      lengths('within', 'Apart at most', [5, 2.5, 7.5, 10]),
    ],
    make: (notebook, id, chosen) => {
      const band = `${chosen['bands'] === '2' ? '2 * ' : ''}${inWords(chosen, 'band')}`;
      const beyond = `2 * ${inWords(chosen, 'front')} + ${band} - ${inWords(chosen, 'back')}`;
      return made(notebook, id, {
        label: 'The fronts meet',
        condition: `IF(ABS(${beyond}) <= ${inWords(chosen, 'within')}; CM(0); ${beyond})`,
        message: 'Fit back and fronts together, or change the band.',
        note: 'How much wider than the back the fronts are, closed; less than 0 where they are narrower, and 0 where they meet as nearly as is allowed.',
        across: 'meet',
      });
    },
  },
  {
    id: 'arm',
    label: 'The upper arm fits the sleeve',
    about:
      'In charts the upper arm grows faster than the armhole in larger sizes. Fails where the sleeve is not wider than the arm by its ease.',
    needs: [
      {
        key: 'sleeve',
        label: 'Round of the sleeve at its top',
        from: 'lengths',
        likely: [/sleeve.*(start|end)/i],
      },
      { key: 'arm', label: 'Upper arm', from: 'lengths', likely: [/upper.?arm/i] },
      {
        key: 'ease',
        label: 'Ease at least',
        offers: (settings) =>
          [5, 0, 2.5, 7.5, 10].map((cm) => ({
            label: cm === 0 ? 'none' : written(cm, settings),
            formula: `CM(${cm})`,
          })),
      },
    ],
    make: (notebook, id, chosen) =>
      made(notebook, id, {
        label: 'Upper arm in the sleeve',
        condition: `${inWords(chosen, 'sleeve')} >= ${inWords(chosen, 'arm')} + ${inWords(chosen, 'ease')}`,
        message:
          'The sleeve leaves the upper arm less room than its ease asks for, so it will bind. Make its top wider, or its gauge looser.',
      }),
  },
  {
    id: 'cuff',
    label: 'The hand fits through the cuff',
    about:
      'A cuff that fits the wrist has to stretch over the hand, by as much as its rib gives. Fails where it does not stretch far enough.',
    needs: [
      { key: 'count', label: 'Stitches of the cuff', from: 'stitches', likely: [/cuff/i] },
      pulled('rib', 'Swatch of the cuff'),
      body('hand', 'Hand, round the knuckles'),
    ],
    make: (notebook, id, chosen) =>
      made(notebook, id, {
        label: 'Hand through the cuff',
        condition: passing(chosen, 'hand'),
        message:
          'The cuff, stretched, does not pass the hand. Give it more stitches, or a rib that stretches further.',
        ...noteOn('hand', chosen['hand']),
      }),
  },
  {
    id: 'neck',
    label: 'The head fits through the neck',
    about:
      'A neck without an opening has to stretch over the head. Fails where it does not stretch far enough.',
    needs: [
      { key: 'count', label: 'Stitches round the neck', from: 'stitches', likely: [/neck/i] },
      pulled('rib', 'Swatch of the neck'),
      body('head', 'Head'),
    ],
    make: (notebook, id, chosen) =>
      made(notebook, id, {
        label: 'Head through the neck',
        condition: passing(chosen, 'head'),
        message:
          'The neck, stretched, does not pass the head. Make it wider or deeper, or give it an opening that buttons.',
        ...noteOn('head', chosen['head']),
      }),
  },
  {
    id: 'join',
    label: 'Joined edges match',
    about:
      'Edges that are sewn or worked together have the same count: shoulder and shoulder, sleeve and pick-up, rib and the row before it. Fails where they do not.',
    needs: [
      { key: 'one', label: 'One edge', from: 'counts' },
      { key: 'other', label: 'The other edge', from: 'counts', unitOf: 'one' },
    ],
    make: (notebook, id, chosen) => {
      const one = called(notebook, inWords(chosen, 'one'));
      const other = called(notebook, inWords(chosen, 'other'));
      return made(notebook, id, {
        label: `${one} joined to ${other.toLowerCase()}`,
        condition: `JOINS(${inWords(chosen, 'one')}; ${inWords(chosen, 'other')})`,
        message: `${one} and ${other.toLowerCase()} do not have the same count, so they cannot be joined one to one. Correct one of them, or space the difference evenly along the join.`,
      });
    },
  },
  {
    id: 'armhole',
    label: 'The sleeve lies flat in its armhole',
    about:
      'A sleeve that is much wider than its armhole flares, a narrower one puckers. Fails beyond 8 %, which is our own default; choose another, or change it in the formula.',
    needs: [
      { key: 'count', label: 'Stitches of the sleeve at the armhole', from: 'stitches', likely: [/sleeve/i] },
      {
        key: 'fabric',
        label: 'Swatch of the sleeve',
        from: 'swatches',
        likely: [/sleeve/i],
        lacking: 'There is no swatch yet: add one.',
      },
      { key: 'armhole', label: 'Armhole', from: 'lengths', likely: [/^armhole$/i, /armhole/i] },
      {
        key: 'sides',
        label: 'It is measured',
        offers: () => [
          { label: 'from the underarm to the shoulder', formula: '2' },
          { label: 'all the way round', formula: '1' },
        ],
      },
      {
        key: 'within',
        label: 'Apart by no more than',
        offers: ({ decimal }) =>
          [8, 5, 10, 12].map((share) => ({
            label: `${writeNumber(share, { decimal, decimals: 0 })} %`,
            formula: `${share}%`,
          })),
      },
    ],
    make: (notebook, id, chosen) => {
      const round =
        chosen['sides'] === '1' ? inWords(chosen, 'armhole') : `2 * ${inWords(chosen, 'armhole')}`;
      const fabric = inWords(chosen, 'fabric');
      return made(notebook, id, {
        label: 'Sleeve and armhole',
        condition: `ABS(ARMHOLEFIT(${inWords(chosen, 'count')}; ${fabric}_sts; ${round})) <= ${inWords(chosen, 'within')}`,
        message:
          'The sleeve and its armhole are too far apart: wider, it flares; narrower, it puckers. Pick up fewer or more stitches, or change the depth of the armhole.',
        note: 'Where stitches lie across the underarm, add their width to the length of the armhole in the formula.',
      });
    },
  },
  {
    id: 'child',
    label: 'No notions on children’s garments',
    about:
      'Cords, ties and buttons can strangle or choke a baby or a child. Fails in every size that follows a child’s or a baby’s chart and has any.',
    needs: [
      {
        key: 'notions',
        label: 'Which notions',
        from: 'notions',
        lacking: 'This notebook has no notions, so there is nothing to check.',
      },
    ],
    make: (notebook, id, chosen) => {
      const what = called(notebook, inWords(chosen, 'notions'));
      return made(notebook, id, {
        label: `${what}, and children`,
        condition: inWords(chosen, 'notions'),
        message:
          'This size is a child’s: cords, ties, buttons and glued-on parts can strangle or choke. Keep them off, or follow the safety rules for children’s clothing where the garment is worn or sold; many countries restrict cords at neck and hem.',
        across: 'no child',
      });
    },
  },
];

function passing(chosen: Readonly<Record<string, string>>, body: 'hand' | 'head'): string {
  const rib = inWords(chosen, 'rib');
  return `PASSES(${inWords(chosen, 'count')}; ${rib}_sts; ${rib}_stretch; ${inWords(chosen, body)})`;
}
