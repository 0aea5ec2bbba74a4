import { type Halving, type Reading, gaugeOf, swatchToHalve, combineUncertainty } from '../../craft';
import { type Notebook, upstream } from '../../notebook';
import type { CellRef } from '../../engine';
import { allDecisions } from './decisions';
import { mayLeap, slope, stepOf, type About } from './slopes';
import { sourcesOf, tapeUncertainty, type Source } from './sources';
import type { Instead, Works } from './works';

/** What one source adds to the doubt of a result. */
export interface Share {
  /** The source; undefined for the tape that the finished piece is measured with. */
  readonly source?: Source;
  readonly label: string;
  /** How much the result changes for one unit of the source. */
  readonly slope: number;
  /** Its part in the standard uncertainty of the result, and what that is known by. */
  readonly u: number;
  readonly dof: number;
  /** Its part in the variance, from 0 to 1. */
  readonly share: number;
}

/** How sure a result is in one size. */
export interface Uncertainty {
  readonly value: number;
  readonly u: number;
  readonly dof: number;
  /** 19 times in 20 the true value is no further off. */
  readonly expanded: number;
  /** What adds to it, the most first. */
  readonly shares: readonly Share[];
  /** A count that was settled on, and is held: then nothing is in doubt. */
  readonly decided: boolean;
  /** What of the gauge that adds most would halve it. */
  readonly halving?: Halving & { readonly source: Source };
}

export interface WantedResult extends CellRef {
  /** A length that is worked from a gauge is measured once more, when it is finished: by the tape. */
  readonly isLength: boolean;
}

export interface GiveOrTake {
  readonly notebook: Notebook;
  /** Ids of the sizes, in the order that `works` answers in. */
  readonly sizes: readonly string[];
  readonly wanted: readonly WantedResult[];
  readonly works: Works;
  /** Another formula in a place, which then is no decision: what a count was before it was rounded. */
  readonly instead?: Instead;
}

/** The sheet holds this for endless degrees of freedom. */
const endless = 1e9;

/**
 * The give or take of results in every size, from what was measured: the readings of swatches, the tape, the scales.
 *
 * Counts that were settled on are held, so that what is left is smooth; each source is moved a little to either side,
 * wherever it is used at once, and the slopes are put together in quadrature and expanded by Student's factor.
 *
 * @returns a row for each wanted place, with its doubt in each size; undefined where it has no number
 *
 * Source: JCGM 100:2008 (GUM), 5.1.2 and 5.1.3 note 2 (slopes from the values themselves), annex G.
 */
export async function giveOrTake(o: GiveOrTake): Promise<(Uncertainty | undefined)[][]> {
  const { notebook, sizes, wanted, instead } = o;
  const works: Works = (work) => o.works(instead ? { ...work, instead } : work);
  const decided = allDecisions(notebook).filter((ref) => !instead || !isSameRef(ref, instead.ref));
  const dependents = new Set(wanted.flatMap(({ cell }) => [cell, ...upstream(notebook, cell)]));
  const sources = sourcesOf(notebook).filter(({ ref }) => dependents.has(ref.cell));
  const asIs = await asItIs(works, [...decided, ...wanted], sources);

  const held = decided.map((ref) => ({ ref, values: sizes.map((_size, at) => asIs(ref, at)) }));
  const steps = sources.map(({ ref }) => sizes.map((_size, at) => stepFor(asIs(ref, at))));
  const moved = (index: number, by: number) => ({
    ref: sources[index]!.ref,
    values: sizes.map((_size, at) => {
      const value = asIs(sources[index]!.ref, at);
      return value === undefined ? undefined : value + by * steps[index]![at]!;
    }),
  });
  const tried = async (indexes: readonly number[], part: number) => {
    const found = await works({
      quarantined: held,
      tries: indexes.flatMap((index) => [moved(index, -part), moved(index, part)]),
      wanted,
    });
    return new Map(indexes.map((index, at) => [index, [found[2 * at]!, found[2 * at + 1]!] as const]));
  };

  const all = sources.map((_source, index) => index);
  const whole = await tried(all, 1);
  const about = (of: typeof whole, index: number, position: number, size: number): About | undefined => {
    const here = asIs(wanted[position]!, size);
    const [low, high] = of.get(index) ?? [];
    const [below, above] = [low?.[position]?.[size], high?.[position]?.[size]];
    return here === undefined || below === undefined || above === undefined
      ? undefined
      : { here, below, above };
  };
  const unlike = all.filter((index) =>
    wanted.some((_ref, position) =>
      sizes.some((_size, size) => {
        const found = about(whole, index, position, size);
        return found !== undefined && mayLeap(found, steps[index]![size]!);
      }),
    ),
  );
  const half = unlike.length > 0 ? await tried(unlike, 0.5) : new Map<number, never>();

  return wanted.map((ref, at) =>
    sizes.map((_size, size) => {
      const value = asIs(ref, size);
      if (value === undefined) return undefined;
      const isDecided = decided.some((one) => isSameRef(one, ref));
      const shares = all.flatMap((index): Unshared[] => {
        const found = about(whole, index, at, size);
        const source = sources[index]!;
        if (!found || isDecided) return [];
        const slopeHere = slope(found, steps[index]![size]!, about(half, index, at, size));
        const { u, dof } = uncertaintyOf(source, asIs, size, sizes[size]!);
        const part = Math.abs(slopeHere) * u;
        return part > 1e-10 * Math.max(1e-6, Math.abs(value))
          ? [
              {
                source,
                label: source.inChart?.[sizes[size]!]?.label ?? source.label,
                slope: slopeHere,
                u: part,
                dof,
              },
            ]
          : [];
      });
      const fromGauge = shares.some(({ source }) => source?.kind === 'gauge');
      if (ref.isLength && fromGauge) {
        const tape = tapeUncertainty(notebook.settings);
        if (tape > 0)
          shares.push({ label: 'The tape, on the finished piece', slope: 1, u: tape, dof: Infinity });
      }
      return together(value, shares, isDecided, asIs, size);
    }),
  );
}

function isSameRef(a: CellRef, b: CellRef): boolean {
  return a.cell === b.cell && a.key === b.key;
}

type Unshared = Omit<Share, 'share'>;
type AsIs = (ref: CellRef, size: number) => number | undefined;

/** The numbers that stand in the notebook as it is. */
async function asItIs(works: Works, refs: readonly CellRef[], sources: readonly Source[]): Promise<AsIs> {
  const wanted = [
    ...refs,
    ...sources.flatMap(({ ref, gauge }) => [
      ref,
      ...(gauge?.u ? [gauge.u] : []),
      ...(gauge?.dof ? [gauge.dof] : []),
      ...(gauge?.readings.flatMap(({ count, over }) => [count, over]) ?? []),
    ]),
  ];
  const [found] = await works({ quarantined: [], tries: [null], wanted });
  const rows = new Map(wanted.map(({ cell, key }, at) => [`${cell} ${key}`, found![at]!]));
  return ({ cell, key }, size) => rows.get(`${cell} ${key}`)?.[size];
}

function stepFor(value: number | undefined): number {
  return value === undefined ? 0 : stepOf(value);
}

function uncertaintyOf(source: Source, asIs: AsIs, size: number, id: string): { u: number; dof: number } {
  const charted = source.inChart?.[id];
  if (charted) return { u: charted.u, dof: Infinity };
  if (source.u !== undefined) return { u: source.u, dof: Infinity };
  const { gauge } = source;
  const u = gauge?.u && asIs(gauge.u, size);
  const dof = gauge?.dof && asIs(gauge.dof, size);
  if (u !== undefined && dof !== undefined) return { u, dof: dof >= endless ? Infinity : dof };
  const readings = readingsOf(source, asIs, size);
  return readings ? gaugeOf(readings) : { u: 0, dof: Infinity };
}

/** What was read for a gauge, where all of it is there. */
function readingsOf(source: Source, asIs: AsIs, size: number): Reading[] | undefined {
  const readings = source.gauge?.readings.map(({ count, over }) => ({
    count: asIs(count, size) ?? NaN,
    over: asIs(over, size) ?? NaN,
  }));
  return readings?.length && readings.every(({ count, over }) => count > 0 && over > 0)
    ? readings
    : undefined;
}

function together(
  value: number,
  shares: Unshared[],
  decided: boolean,
  asIs: AsIs,
  size: number,
): Uncertainty {
  const { u, dof, expanded } = combineUncertainty(shares);
  const sorted = [...shares].sort((a, b) => b.u - a.u).map((part) => ({ ...part, share: (part.u / u) ** 2 }));
  const first = sorted.find(({ source }) => source?.kind === 'gauge');
  const readings = first && readingsOf(first.source!, asIs, size);
  const gauge = first && asIs(first.source!.ref, size);
  const halving =
    first && readings && gauge !== undefined
      ? {
          source: first.source!,
          ...swatchToHalve({
            gauge: { perCm: gauge, u: first.u, dof: first.dof },
            readings,
            part: first,
            others: sorted.filter((part) => part !== first),
          }),
        }
      : undefined;
  return { value, u, dof, expanded, shares: sorted, decided, ...(halving ? { halving } : {}) };
}
