import { guessGauge } from '../../craft';
import {
  inputsOf,
  pageWord,
  type Cell,
  type Change,
  type Notebook,
  type Settings,
  type Swatch,
} from '../../notebook';
import { writeLength, writeNumber } from '../../format';
import type { Results } from '../../engine';

/** A what-if that a notebook can be asked before anyone has thought of one. */
export interface ReadyMade {
  readonly name: string;
  readonly changes: readonly Change[];
  /** How much it changes is only guessed. */
  readonly guess?: true;
}

/** A step of ease that is seen on the body, in cm: 5 cm, or 2 inches. */
const easeStep = (settings: Settings): number => (settings.length === 'cm' ? 5 : 5.08);
/** Of ease by per cent, five of the hundred. */
const easeShare = 0.05;

/** Hooks and needles of these sizes come in steps of half a millimetre. Common practice. */
const hookStep = 0.5;

/**
 * What a designer asks first of these swatches and eases: a gauge one stitch tighter or looser, the fabric of another
 * hook, more ease or less. Only what was given is moved; what a formula works out is not.
 *
 * @example readyMade(cardigan, results).map(({ name }) => name)
 * // ['Body fabric, 15 sts to 10 cm instead of 14', …, 'Finished bust, 5 cm more ease', …]
 */
export function readyMade(notebook: Notebook, results: Pick<Results, 'number'>): ReadyMade[] {
  return notebook.sections.flatMap(({ cells }) => cells.flatMap((cell) => ofCell(notebook, results, cell)));
}

/** The stitches of a swatch, one more or fewer, its rows as they are. */
function ofStitches(
  { settings, sizes }: Notebook,
  results: Pick<Results, 'number'>,
  cell: Swatch,
): ReadyMade[] {
  const first = sizes[0]!.id;
  const counts = inputsOf(cell).filter(({ key }) => /^sts\.\d+\.count$/.test(key));
  return [1, -1].flatMap((by): ReadyMade[] => {
    const changes = counts.flatMap(({ key, entry }): Change[] => {
      const count = results.number(first, cell.id, key);
      if ('formula' in entry || count === undefined || count + by <= 0) return [];
      return [{ cell: cell.id, key, size: null, value: count + by }];
    });
    if (changes.length === 0 || changes.length < counts.length) return [];
    const [only] = changes;
    const over = results.number(first, cell.id, 'sts.0.over');
    const message =
      changes.length === 1 && over !== undefined
        ? `${count(only!.value!, settings)} sts to ${length(over, settings)} instead of ${count(only!.value! - by, settings)}`
        : `1 stitch ${by > 0 ? 'more' : 'fewer'} in each count`;
    return [{ name: `${cell.label}, ${message}`, changes }];
  });
}

/**
 * The fabric of another hook, or of other needles, as a guess: stitches and rows both change (common practice), by the rule
 * of thumb of `guessGauge`. Where the swatch does not say its hook, a stitch more or fewer says how far.
 */
function ofHook({ settings, sizes }: Notebook, results: Pick<Results, 'number'>, cell: Swatch): ReadyMade[] {
  const first = sizes[0]!.id;
  const counts = inputsOf(cell).filter(({ key }) => key.endsWith('.count'));
  const values = counts.map(({ key, entry }) =>
    'formula' in entry ? undefined : results.number(first, cell.id, key),
  );
  const stitches = values[0];
  if (stitches === undefined || values.includes(undefined)) return [];
  const named = /(\d+(?:[.,]\d+)?)\s*mm/.exec(cell.worked)?.[1];
  const hook = named === undefined ? undefined : Number(named.replace(',', '.'));
  return [1, -1].flatMap((by): ReadyMade[] => {
    // One stitch more is a thinner hook.
    const [from, to] = hook === undefined ? [stitches + by, stitches] : [hook, hook - by * hookStep];
    if (from <= 0 || to <= 0) return [];
    const guessed = values.map((value) => {
      const { perCm } = guessGauge({ perCm: value!, hook: from, other: to });
      return Math.round(perCm * 10) / 10;
    });
    if (guessed.some((value) => value <= 0)) return [];
    const changes = counts.map(({ key }, at) => ({ cell: cell.id, key, size: null, value: guessed[at]! }));
    const of = (key: string): string => count(guessed[counts.findIndex((one) => one.key === key)]!, settings);
    const over = ['sts.0.over', 'rows.0.over'].map((key) => results.number(first, cell.id, key));
    const both =
      cell.stitches.length + cell.rows.length === 2 && over[0] !== undefined && over[0] === over[1]
        ? `about ${of('sts.0.count')} sts and ${of('rows.0.count')} rows to ${length(over[0], settings)}`
        : `about ${count(Math.abs(from / to - 1) * 100, settings)} % ${by > 0 ? 'more' : 'fewer'} sts and rows`;
    const which =
      hook === undefined
        ? `${settings.craft === 'crochet' ? 'a ' : ''}${by > 0 ? 'thinner' : 'thicker'} ${pageWord(settings, 'hook or needles')} or yarn`
        : `${count(to, settings)} mm instead of ${count(from, settings)} mm`;
    return [{ name: `${cell.label}, ${which}: ${both}, a guess to be swatched`, changes, guess: true }];
  });
}

function ofCell(notebook: Notebook, results: Pick<Results, 'number'>, cell: Cell): ReadyMade[] {
  const { settings, sizes } = notebook;
  if (sizes.length === 0) return [];
  if (cell.kind === 'swatch')
    return [...ofStitches(notebook, results, cell), ...ofHook(notebook, results, cell)];
  if (cell.kind === 'ease' && !('formula' in cell.ease)) {
    const step = cell.by === 'length' ? easeStep(settings) : easeShare;
    const message = cell.by === 'length' ? length(step, settings) : '5 % of the body';
    return [1, -1].flatMap((by): ReadyMade[] => {
      const changes = sizes.flatMap(({ id }): Change[] => {
        const ease = results.number(id, cell.id, 'ease');
        return ease === undefined ? [] : [{ cell: cell.id, key: 'ease', size: id, value: ease + by * step }];
      });
      const alike = changes.length === sizes.length && new Set(changes.map(({ value }) => value)).size === 1;
      if (changes.length === 0) return [];
      return [
        {
          name: `${cell.label}, ${message} ${by > 0 ? 'more' : 'less'} ease`,
          changes: alike ? [{ ...changes[0]!, size: null }] : changes,
        },
      ];
    });
  }
  return [];
}

function count(stitches: number, { decimal }: Settings): string {
  return writeNumber(stitches, { decimal, decimals: 1, trailingZero: false });
}

function length(cm: number, { length: unit, decimal }: Settings): string {
  return `${writeLength(cm, { unit, decimal, trailingZero: false })} ${unit}`;
}
