import type { ThemeName } from './theme';

/** How one size is drawn in every picture: a colour, and beside it a line and a mark that tell it without colour. */
export interface SizeStyle {
  readonly colour: string;
  /** Lengths of dashes and gaps in px; empty for an unbroken line. */
  readonly dash: readonly number[];
  /** An SVG path in a box from -5 to 5. */
  readonly mark: string;
  /** Whether the mark is filled with the colour; otherwise with the paper. */
  readonly filled: boolean;
}

/*
 * Our own choice, found by search: of the colours of moderate chroma with a contrast of 3.3 or more against paper
 * and grid, twelve whose least distance (CIE 1976 L*a*b*) is as large as can be, to full colour vision and to
 * protanopia, deuteranopia and tritanopia alike. The search gave more distance to the first four, six and eight,
 * since few notebooks have more sizes than that.
 */
const colours: Readonly<Record<ThemeName, readonly string[]>> = {
  light: [
    '#2f429d',
    '#cc7200',
    '#492b4d',
    '#ab78a6',
    '#762f06',
    '#669462',
    '#2f3c2e',
    '#8976cd',
    '#774d32',
    '#5f136a',
    '#a85772',
    '#7b4e8e',
  ],
  dark: [
    '#d0cb86',
    '#4b79d5',
    '#de9814',
    '#68d9f6',
    '#c55735',
    '#a2649c',
    '#b1d1b7',
    '#7b806c',
    '#bb9af4',
    '#d0a757',
    '#66aaa3',
    '#a79c69',
  ],
};

const dashes: readonly (readonly number[])[] = [
  [],
  [9, 4],
  [5, 3],
  [9, 3, 2, 3],
  [2, 3],
  [14, 4],
  [9, 3, 2, 3, 2, 3],
  [2, 5],
  [14, 3, 5, 3],
  [5, 7],
  [14, 3, 2, 3],
  [5, 3, 2, 3],
];

const shapes = {
  circle: 'M-4 0A4 4 0 1 1 4 0A4 4 0 1 1 -4 0Z',
  square: 'M-3.5 -3.5H3.5V3.5H-3.5Z',
  diamond: 'M0 -5L5 0L0 5L-5 0Z',
  up: 'M0 -4.5L4.5 3.5H-4.5Z',
  down: 'M0 4.5L4.5 -3.5H-4.5Z',
  bar: 'M-1.6 -5H1.6V5H-1.6Z',
};

const marks: readonly (readonly [keyof typeof shapes, boolean])[] = [
  ['circle', true],
  ['square', false],
  ['up', true],
  ['diamond', false],
  ['square', true],
  ['circle', false],
  ['down', true],
  ['up', false],
  ['diamond', true],
  ['down', false],
  ['bar', true],
  ['bar', false],
];

/** How many sizes can be told apart; a thirteenth looks like the first. */
export const distinctSizes = marks.length;

/**
 * How the size at a place among the notebook's sizes is drawn, the same in every picture; places are from 0.
 *
 * @example
 * sizeStyle(1, 'light').dash // [9, 4]
 */
export function sizeStyle(sizeIndex: number, theme: ThemeName): SizeStyle {
  const turn = sizeIndex % distinctSizes;
  const [shape, filled] = marks[turn]!;
  return { colour: colours[theme][turn]!, dash: dashes[turn]!, mark: shapes[shape], filled };
}
