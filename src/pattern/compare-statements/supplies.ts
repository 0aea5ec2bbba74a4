import { joinWithAnd } from '../../format';
import { allCells, type NotionsCell, type Swatch, type YarnCell } from '../../notebook';
import { asRead, lengths, longLengths, printed, type Expected, type ExpectedAmounts } from './expected';
import { resultsOf, swatchOf, type Garment } from './garment';
import { toolsMeant, workedAs } from './tools-meant';

/** What the materials have to say. @param texts the instructions: what they have in hand is listed */
export function materialsMeant(garment: Garment, texts: readonly string[]): Expected[] {
  const cells = allCells(garment.source.notebook);
  const notions = cells.filter((cell): cell is NotionsCell => cell.kind === 'notions');
  return [
    ...cells.flatMap((cell) => (cell.kind === 'yarn' ? yarnMeant(garment, cell) : [])),
    ...toolsMeant(garment),
    ...smallTools(texts, notions),
    ...notions.flatMap((cell) => notionsMeant(garment, cell)),
  ];
}

const none = (values: readonly (number | null)[]): boolean => values.every((value) => value === null);

function yarnMeant(garment: Garment, cell: YarnCell): Expected[] {
  const of = (key: string) => resultsOf(garment, cell.id, key);
  const unit = garment.source.notebook.settings.length;
  const [grams, length, balls] = [of('grams'), of('length'), of('balls')];
  if (none(grams)) return [];
  const fabrics = [...new Set(cell.uses.map(({ fabric }) => swatchOf(garment, fabric)?.label ?? fabric))];
  const label = asRead(cell.label);
  const yarn: Expected = {
    name: 'yarn',
    of: label,
    facts: {
      grams: printed(grams),
      length: none(length) ? printed([]) : longLengths(length, unit),
      unit: none(length) ? '' : unit === 'cm' ? 'm' : 'yd',
      fabrics: joinWithAnd(fabrics.map(asRead)),
    },
  };
  if (none(balls)) return [yarn];
  const reserve = of('reserve').map((share) => (share === null ? null : share * 100));
  return [
    yarn,
    {
      name: 'balls',
      of: label,
      facts: { balls: printed(balls), weight: printed(of('ballGrams'), 1), reserve: printed(reserve, 1) },
    },
  ];
}

/** Common practice lists what the instructions have in hand, where it is not among the notions. */
function smallTools(texts: readonly string[], notions: readonly NotionsCell[]): Expected[] {
  const text = texts.join('\n');
  const asksFor = (tool: RegExp): boolean =>
    tool.test(text) && !notions.some(({ label }) => tool.test(label));
  const one = (name: string, facts: Expected['facts'] = {}): Expected => ({ name, of: '', facts });
  const what = [
    ...(/\b(?:sew|seam|join row|join stitch)/iu.test(text) ? ['sew the seams'] : []),
    ...(/\bweave in\b/iu.test(text) ? ['weave in the ends'] : []),
  ];
  const has = /\b(?:tapestry|yarn|darning|wool) needle/iu;
  return [
    ...(asksFor(/\bmarkers?\b/iu) ? [one('marker')] : []),
    ...(asksFor(/\bholders?\b/iu) ? [one('holder')] : []),
    ...(what.length > 0 && !notions.some(({ label }) => has.test(label))
      ? [one('needle to sew with', { what: what.join(' and ') })]
      : []),
  ];
}

function notionsMeant(garment: Garment, cell: NotionsCell): Expected[] {
  const of = (key: string) => resultsOf(garment, cell.id, key);
  const unit = garment.source.notebook.settings.length;
  const [pieces, each] = [of('pieces'), of('each')];
  const label = asRead(cell.label);
  if (none(pieces)) return [];
  if (!each.some((length) => length !== null && length > 0)) {
    return [{ name: 'notions', of: label, facts: { pieces: printed(pieces) } }];
  }
  return [
    {
      name: 'notions by length',
      of: label,
      facts: {
        pieces: printed(pieces),
        each: lengths(each, unit),
        unit,
        length: longLengths(of('length'), unit, 1),
        'unit of the length': unit === 'cm' ? 'm' : 'yd',
      },
    },
  ];
}

const inch = 2.54;

/** A gauge that is to be printed; `rounded` where it is not what it is exactly. */
interface GaugeMeant {
  readonly amount: ExpectedAmounts;
  readonly rounded: boolean;
}

/**
 * A gauge per cm as it is to be printed. Over 4 in, what was counted over 4 in stays as it is, and so does what is too small
 * for a half; any other goes to the nearest half.
 */
function gaugeOver(perCm: number, over: '10 cm' | '4 in', countedSo: boolean): GaugeMeant {
  if (over === '10 cm') return { amount: printed([perCm * 10], 1), rounded: false };
  const exact = perCm * (4 * inch);
  const nearest = Math.floor(exact * 2 + 0.5) / 2;
  const rounded = !countedSo && nearest > 0 && Math.abs(nearest - exact) > 1e-9;
  return { amount: rounded ? { values: [nearest], within: 0 } : printed([exact], 2), rounded };
}

/** The gauge of each fabric that is worked, from its swatch. */
export function gaugeMeant(garment: Garment): Expected[] {
  const { swatches, source, sizes } = garment;
  const { notebook } = source;
  const over = notebook.settings.gaugeOver;
  const size = (sizes[0] ?? notebook.sizes[0])?.id ?? '';
  const overInches = ({ id }: Swatch, key: string, readings: readonly unknown[]): boolean =>
    readings.every((_one, at) => {
      const cm = source.number(size, id, `${key}.${at}.over`);
      return cm !== undefined && Math.abs(cm / inch - 4) < 1e-6;
    });
  return swatches.flatMap((swatch) => {
    const [stitches, rows] = (['sts', 'rows'] as const).map((key) => source.number(size, swatch.id, key));
    if (stitches === undefined || rows === undefined) return [];
    const across = gaugeOver(stitches, over, overInches(swatch, 'sts', swatch.stitches));
    const down = gaugeOver(rows, over, overInches(swatch, 'rows', swatch.rows));
    const exactly = (perCm: number) => printed(across.rounded || down.rounded ? [perCm * 10] : [], 2);
    return [
      {
        name: 'gauge',
        of: asRead(swatch.label),
        facts: {
          stitches: across.amount,
          rows: down.amount,
          over,
          'exact stitches': exactly(stitches),
          'exact rows': exactly(rows),
          worked: workedAs(garment, swatch),
        },
      },
    ];
  });
}
