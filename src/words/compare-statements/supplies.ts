import { listed } from '../../notebook/listed';
import { allCells, type NotionsCell, type YarnCell } from '../../notebook';
import { asRead, lengths, longLengths, printed, type Expected } from './expected';
import { resultsOf, swatchOf, type Garment } from './garment';

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
      fabrics: listed(fabrics.map(asRead)),
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

function toolsMeant({ swatches, source }: Garment): Expected[] {
  const tools = new Map<string, string[]>();
  for (const { worked, label } of swatches) {
    const tool = asRead(worked);
    if (tool !== '') tools.set(tool, [...(tools.get(tool) ?? []), asRead(label)]);
  }
  const term = source.notebook.settings.terms === 'US' ? 'gauge' : 'tension';
  return [...tools].map(([of, fabrics]) => ({
    name: 'hook or needles',
    of,
    facts: { fabrics: listed(fabrics), term },
  }));
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

const overCm = { '10 cm': 10, '4 in': 4 * 2.54 } as const;

/** The gauge of each fabric that is worked, from its swatch. */
export function gaugeMeant({ swatches, source, sizes }: Garment): Expected[] {
  const { notebook } = source;
  const over = notebook.settings.gaugeOver;
  const size = (sizes[0] ?? notebook.sizes[0])?.id ?? '';
  return swatches.flatMap(({ id, label, worked }) => {
    const [stitches, rows] = (['sts', 'rows'] as const).map((key) => source.number(size, id, key));
    if (stitches === undefined || rows === undefined) return [];
    return [
      {
        name: 'gauge',
        of: asRead(label),
        facts: {
          stitches: printed([stitches * overCm[over]], 1),
          rows: printed([rows * overCm[over]], 1),
          over,
          worked: asRead(worked),
        },
      },
    ];
  });
}
