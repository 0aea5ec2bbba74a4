import {
  inputsOf,
  writeLength,
  writeNumber,
  type Cell,
  type Change,
  type Notebook,
  type Settings,
} from '../../notebook';
import type { Results } from '../../sheet';

/** A what-if that a notebook can be asked before anyone has thought of one. */
export interface ReadyMade {
  readonly name: string;
  readonly changes: readonly Change[];
}

/** A step of ease that is seen on the body, in cm: 5 cm, or 2 inches. */
const easeStep = (settings: Settings): number => (settings.length === 'cm' ? 5 : 5.08);
/** Of ease by per cent, five of the hundred. */
const easeShare = 0.05;

/**
 * What a designer asks first of these swatches and eases: a gauge one stitch tighter or looser, more ease or less. Only
 * what was given is moved; what a formula works out is not.
 *
 * @example readyMade(jacket, results).map(({ name }) => name)
 * // ['Body fabric, 15 sts to 10 cm in place of 14', …, 'Finished bust, 5 cm more ease', …]
 */
export function readyMade(notebook: Notebook, results: Pick<Results, 'number'>): ReadyMade[] {
  return notebook.sections.flatMap(({ cells }) => cells.flatMap((cell) => ofCell(notebook, results, cell)));
}

function ofCell(notebook: Notebook, results: Pick<Results, 'number'>, cell: Cell): ReadyMade[] {
  const { settings, sizes } = notebook;
  const first = sizes[0]?.id;
  if (first === undefined) return [];
  if (cell.kind === 'swatch') {
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
      const said =
        changes.length === 1 && over !== undefined
          ? `${count(only!.value!, settings)} sts to ${length(over, settings)} in place of ${count(only!.value! - by, settings)}`
          : `1 stitch ${by > 0 ? 'more' : 'fewer'} in each count`;
      return [{ name: `${cell.label}, ${said}`, changes }];
    });
  }
  if (cell.kind === 'ease' && !('formula' in cell.ease)) {
    const step = cell.by === 'length' ? easeStep(settings) : easeShare;
    const said = cell.by === 'length' ? length(step, settings) : '5 % of the body';
    return [1, -1].flatMap((by): ReadyMade[] => {
      const changes = sizes.flatMap(({ id }): Change[] => {
        const ease = results.number(id, cell.id, 'ease');
        return ease === undefined ? [] : [{ cell: cell.id, key: 'ease', size: id, value: ease + by * step }];
      });
      const alike = changes.length === sizes.length && new Set(changes.map(({ value }) => value)).size === 1;
      if (changes.length === 0) return [];
      return [
        {
          name: `${cell.label}, ${said} ${by > 0 ? 'more' : 'less'} ease`,
          changes: alike ? [{ ...changes[0]!, size: null }] : changes,
        },
      ];
    });
  }
  return [];
}

function count(stitches: number, { decimal }: Settings): string {
  return writeNumber(stitches, { decimal, places: 1, trailingZero: false });
}

function length(cm: number, { length: unit, decimal }: Settings): string {
  return `${writeLength(cm, { unit, decimal, trailingZero: false })} ${unit}`;
}
