import {
  allCells,
  type AsMadeCell,
  type Cell,
  type Entry,
  type RepeatFit,
  type Notebook,
  type PieceCell,
} from './document';
import { namesIn, sameName } from '../formulas';

/** A measurement as made that the pieces of a notebook plainly give. */
export interface AsMadeSuggested {
  /** Of the measurement that is wanted: "Finished bust". */
  readonly of: string;
  /** What it is added up from: "Back + 2 × Front". */
  readonly text: string;
  readonly cell: Pick<AsMadeCell, 'label' | 'of' | 'closes' | 'less' | 'wish' | 'within'>;
}

/** A number of a cell in the first size that has it; undefined where it is not worked. */
export type NumberAt = (cell: string, key: string) => number | undefined;

interface Part {
  readonly piece: PieceCell;
  /** The length that is added: a width of the piece, or its length. */
  readonly formula: string;
  readonly times: number;
}

type Ways = (found: Pieces) => readonly Part[] | undefined;

/** A sleeve is measured from the middle of the back; the body's own measure is the wish of it too. */
const fromMiddle =
  /(?:middle of (?:the )?back|cent(?:re|er) back|neck).*(?:wrist|cuff|sleeve)|sleeve.*middle of the back/iu;

/** Measurements that are told by their name, the more telling first, and the parts that give each. */
const measurements: readonly (readonly [name: RegExp, parts: Ways])[] = [
  [fromMiddle, fromTheMiddle],
  [/upper.?arm|biceps?|sleeve.*top|width.*underarm/iu, (found) => around(found.sleeve, 'wide')],
  [/cuff|wrist/iu, (found) => around(found.cuff ?? found.sleeve, 'narrow')],
  [/\b(?:bust|chest)/iu, (found) => round(found, 'bust')],
  [/\bhips?\b/iu, (found) => round(found, 'hip')],
  [/^(?!.*width).*\bneck\b/iu, (found) => around(found.neck, 'narrow')],
  [
    /\b(?:back|body|garment)\b.*\blength|\blength\b.*\b(?:back|body|garment)|^(?:finished )?length$/iu,
    lengthOf,
  ],
];

/**
 * Measurements as made that can be suggested: of each finished measurement that has none yet, whose name says what it is
 * of and for which there are pieces whose names say that they give it; and last of the body's measure from the middle of
 * the back to the wrist. Where that is not plain, nothing is suggested.
 *
 * @param number what the cells come to, by which one front that is half a front is told from a whole one
 * @example asMadeSuggested(notebook, number)[0]?.said // 'Back + 2 × Front + 2 × Band'
 */
export function asMadeSuggested(notebook: Notebook, number: NumberAt): AsMadeSuggested[] {
  const cells = allCells(notebook);
  const made = cells.filter((cell): cell is AsMadeCell => cell.kind === 'as made');
  const wished = new Set(
    made.flatMap(({ wish }) => ('formula' in wish ? namesIn(wish.formula).map(sameName) : [])),
  );
  const found = new Pieces(cells, number);
  const wishes = [
    ...cells.filter(isFinished),
    ...cells.filter((cell) => isFromMiddle(cell) && !isFinished(cell)),
  ];
  return wishes.flatMap((cell): AsMadeSuggested[] => {
    if (wished.has(sameName(cell.name))) return [];
    const way = measurements.find(([name]) => name.test(cell.label));
    const parts = way?.[1](found);
    return parts ? [suggested(cells, cell, parts)] : [];
  });
}

const isFromMiddle = (cell: Cell): boolean =>
  cell.kind === 'measure' && cell.unit === 'length' && fromMiddle.test(cell.label);

/** Finished measurements: what ease makes of the body's, and lengths that were chosen for the garment. */
function isFinished(cell: Cell): boolean {
  if (/\b(?:depth|band)\b/iu.test(cell.label)) return false;
  return (
    cell.kind === 'ease' ||
    (cell.kind === 'measure' &&
      cell.chosen === true &&
      cell.unit === 'length' &&
      !/^length of/iu.test(cell.label))
  );
}

/** The pieces of a garment, by what they are called. */
class Pieces {
  readonly #pieces: readonly PieceCell[];
  readonly number: NumberAt;
  /** Whether it has buttons or buttonholes. */
  readonly isButtoned: boolean;

  constructor(cells: readonly Cell[], number: NumberAt) {
    this.#pieces = cells.filter(
      (cell): cell is PieceCell => cell.kind === 'piece' && cell.aside === undefined,
    );
    this.number = number;
    this.isButtoned = cells.some(
      (cell) =>
        ((cell.kind === 'piece' || cell.kind === 'notions') && /\bbutton/iu.test(cell.label)) ||
        (cell.kind === 'formula' && /\bBUTTONHOLES\s*\(/iu.test(cell.formula)),
    );
  }

  all(name: RegExp): readonly PieceCell[] {
    return this.#pieces.filter(({ label }) => name.test(label));
  }

  /** The one piece of a name; undefined where there are none, or several. */
  #one(name: RegExp): PieceCell | undefined {
    const [first, ...others] = this.all(name);
    return others.length === 0 ? first : undefined;
  }

  get back(): PieceCell | undefined {
    return this.#one(/^back\b(?!.*\b(?:neck|band|hem)\b)/iu);
  }

  get body(): PieceCell | undefined {
    return this.#one(/^body\b/iu);
  }

  get sleeve(): PieceCell | undefined {
    return this.#one(/^(?:one )?sleeves?\b(?!.*cap)/iu);
  }

  get cuff(): PieceCell | undefined {
    return this.#one(/^cuffs?\b/iu);
  }

  get neck(): PieceCell | undefined {
    return this.#one(/^(?:neck(?:line)?(?:[ -]?band| rib| edging)?|neckband)\b/iu);
  }
}

/** Back and front, or a body worked in one; with the bands that close it. */
function round(found: Pieces, at: 'bust' | 'hip'): readonly Part[] | undefined {
  const { back, body } = found;
  const across = (piece: PieceCell, times = 1): Part => ({
    piece,
    formula: at === 'hip' ? `${piece.name}_start_width` : belowArmholes(piece),
    times,
  });
  if (body && !back) return [across(body), ...bands(found)];
  const fronts = found.all(/^(?:(?:left|right) )?fronts?\b(?!.*\b(?:band|neck|hem)\b)/iu);
  if (!back || fronts.length === 0 || fronts.length > 2) return undefined;
  if (fronts.length === 2) return [across(back), ...fronts.map((front) => across(front)), ...bands(found)];
  const front = fronts[0]!;
  const [wide, narrow] = [back, front].map(({ id }) => found.number(id, 'start_width'));
  if (!wide || !narrow) return undefined;
  // One front that is nearer to half a back is worked twice.
  return narrow < 0.75 * wide
    ? [across(back), across(front, 2), ...bands(found)]
    : [across(back), across(front)];
}

/**
 * A band is picked up along its edge, and as wide as it is long. With buttons one band lies on the other when the garment
 * is closed, so that they go round once; without, they meet edge to edge.
 *
 * Source: common practice.
 */
function bands(found: Pieces): Part[] {
  const all = found.all(/^(?:front |button ?|buttonhole ?)?bands?\b/iu);
  const [band] = all;
  if (!band || all.length > (found.isButtoned ? 2 : 1)) return [];
  return [{ piece: band, formula: `${band.name}_length`, times: found.isButtoned ? 1 : 2 }];
}

/** The width before the first stitches are left for an armhole, or the neck is shaped; at the start where nothing shapes. */
function belowArmholes({ name, stretches }: PieceCell): string {
  const above = stretches.findIndex(({ kind, label }) => kind === 'leave' || /^(?:v-)?neck\b/iu.test(label));
  const before = stretches.slice(0, above < 0 ? stretches.length : above);
  const last = before.findLast(({ kind }) => kind !== 'add' && kind !== 'leave');
  if (!last || before.every(({ kind }) => kind === 'even')) return `${name}_start_width`;
  return `${name}_${last.name}_last / ${last.fabric}_sts`;
}

function around(piece: PieceCell | undefined, end: 'wide' | 'narrow'): readonly Part[] | undefined {
  if (!piece) return undefined;
  return [{ piece, formula: end === 'wide' ? widestOf(piece) : narrowOf(piece), times: 1 }];
}

/** Picked up at the armhole a sleeve is widest where it starts; worked from the cuff, where its cap begins or it ends. */
function widestOf(piece: PieceCell): string {
  if (isFromTheTop(piece)) return `${piece.name}_start_width`;
  return piece.stretches.some(({ kind }) => kind === 'leave')
    ? belowArmholes(piece)
    : `${piece.name}_end_width`;
}

const narrowOf = (piece: PieceCell): string =>
  `${piece.name}_${isFromTheTop(piece) && /^(?:one )?sleeve/iu.test(piece.label) ? 'end' : 'start'}_width`;

/** Whether a sleeve begins at its armhole: its first stretch is not its cuff, and its last, or a label, says so. */
function isFromTheTop({ stretches }: PieceCell): boolean {
  const cuff = stretches.findIndex(
    ({ label }) => /\b(?:cuff|rib)\b/iu.test(label) && !/\bto\b/iu.test(label),
  );
  if (cuff >= 0) return cuff > 0;
  return stretches.some(({ label }) => /\barmhole to\b|\bto (?:the )?(?:wrist|cuff)\b/iu.test(label));
}

function lengthOf({ back, body }: Pieces): readonly Part[] | undefined {
  const piece = back ?? body;
  return piece && [{ piece, formula: `${piece.name}_length`, times: 1 }];
}

/** Half the back, and the sleeve with its cuff. */
function fromTheMiddle({ back, sleeve, cuff }: Pieces): readonly Part[] | undefined {
  if (!back || !sleeve) return undefined;
  return [
    { piece: back, formula: `${back.name}_end_width`, times: 0.5 },
    ...[sleeve, ...(cuff ? [cuff] : [])].map((piece) => ({
      piece,
      formula: `${piece.name}_length`,
      times: 1,
    })),
  ];
}

function suggested(cells: readonly Cell[], wish: Cell, parts: readonly Part[]): AsMadeSuggested {
  const seams = seamsOf(cells, parts);
  // By the name of a body measure alone it would not be told from it.
  const called = isFinished(wish) ? wish.label.slice(0, 180) : 'Sleeve from the middle of the back';
  return {
    of: called,
    text: parts
      .map(({ piece, times }) => `${times === 1 ? '' : `${times === 0.5 ? '½' : times} × `}${piece.label}`)
      .join(' + '),
    cell: {
      label: `${called}, as made`,
      of: parts.map(({ formula, times }) => ({ width: { formula }, times: { value: times } })),
      closes: seams === undefined ? 'edge to edge' : 'seamed',
      less: seams === undefined ? { value: 0 } : { formula: seams },
      wish: { formula: wish.name },
      within: withinOf(cells, parts),
    },
  };
}

/** What seams take of a width that goes round, where the notebook says how many stitches stand in a seam. */
function seamsOf(cells: readonly Cell[], parts: readonly Part[]): string | undefined {
  const seam = cells.find(
    (cell) => cell.kind === 'measure' && cell.unit === 'stitches' && /\bseams?\b/iu.test(cell.label),
  );
  const flat = parts.filter(({ piece, formula }) => piece.worked === 'flat' && !formula.endsWith('_length'));
  if (!seam || flat.length === 0 || flat.length < parts.length) return undefined;
  const fabric = fabricOf(flat[0]!);
  // A sleeve has one seam; a back and its front two.
  return fabric && `SEAMSTAKE(${flat.length === 1 ? 1 : 2}; ${seam.name}; ${fabric}_sts)`;
}

function fabricOf({ piece, formula }: Part): string | undefined {
  return (formula.endsWith('_end_width') ? piece.stretches.at(-1) : piece.stretches[0])?.fabric;
}

/** Half of the step that the repeats of its pieces allow; a centimetre where they have none that is plain. */
function withinOf(cells: readonly Cell[], parts: readonly Part[]): Entry {
  const across = parts.filter(({ formula }) => !formula.endsWith('_length'));
  const steps = across.map(({ piece, formula, times }) => {
    const fit =
      'formula' in piece.start && !formula.endsWith('_end_width')
        ? fitCalled(cells, piece.start.formula)
        : undefined;
    return fit && `${times} * STS(${fit.name}_multiple)`;
  });
  const fabric = across[0] && fabricOf(across[0]);
  if (!fabric || !steps.every((step) => step !== undefined)) return { value: 1 };
  return { formula: `(${steps.join(' + ')}) / ${fabric}_sts / 2` };
}

function fitCalled(cells: readonly Cell[], formula: string): RepeatFit | undefined {
  const name = sameName(formula.trim());
  return cells.find((cell): cell is RepeatFit => cell.kind === 'fit' && sameName(cell.name) === name);
}
