import { keyToPaint } from './browser';
import { loads } from './sizes';

/** What is measured, bundled as it is in the page. */
type Measure = typeof import('./measure');

interface Figure {
  readonly name: string;
  readonly value: number;
  /** Left out where the figure is only told. */
  readonly budget?: number;
  readonly unit: '' | 'ms' | 'kB';
}

/** The value below which a share of a list lies. */
function quantile(list: readonly number[], share: number): number {
  const sorted = [...list].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))]!;
}

const median = (list: readonly number[]): number => quantile(list, 0.5);

/** The median of the ratios of pairs: each pair met the machine in the same state. */
function ratio({ ours, theirs }: { ours: readonly number[]; theirs: readonly number[] }): number {
  return median(ours.map((time, i) => time / theirs[i]!));
}

/**
 * Measures what the speed of the sheet and of the page is promised to be, and prints it. Gives whether all holds.
 *
 * @param thread the file of a thread that serves a sheet
 * @param dist the built page
 */
export async function bench(measure: Measure, thread: string, dist: string): Promise<boolean> {
  const figures: Figure[] = [];
  const tell = (name: string, value: number, unit: Figure['unit'], budget?: number): void => {
    figures.push({
      name,
      value: Number(value.toPrecision(4)),
      unit,
      ...(budget === undefined ? {} : { budget }),
    });
    const against = budget === undefined ? '' : ` (budget ${budget}${unit && ` ${unit}`})`;
    console.log(`${name}: ${value.toFixed(2)}${unit && ` ${unit}`}${against}`);
  };

  const opened = await measure.opening(thread, 300, 5);
  tell('opening 12 × 300, first size', median(opened.first), 'ms');
  tell('opening 12 × 300, all sizes', median(opened.all), 'ms', 1000);
  const raw300 = await measure.againstRaw(300, 120);
  tell('edit of a swatch, 12 × 300, ours ÷ raw', ratio(raw300), '', 1.5);
  tell('edit of a swatch, 12 × 1000, ours ÷ raw', ratio(await measure.againstRaw(1000, 40)), '', 1.5);
  tell(
    'edit of a swatch, 12 × 300, with 3000 unrelated ÷ without',
    ratio(await measure.withUnrelated(300, 3000, 60)),
    '',
    1.5,
  );
  tell(
    'edit of a swatch, 12 × 300, thread to results',
    median(await measure.throughThread(thread, 300, 120)),
    'ms',
    16.7,
  );
  tell('edit of a swatch, 12 × 300, raw', median(raw300.theirs), 'ms');
  tell('edit of a swatch, 12 × 300, ours ÷ plain TypeScript', ratio(await measure.againstPlain(300, 60)), '');
  const doubt = await measure.doubtAgainstPlain(300, 8);
  tell('give or take of every result, 12 × 300, ours ÷ plain TypeScript', ratio(doubt), '');
  tell('give or take of every result, 12 × 300', median(doubt.ours), 'ms');
  const painted = await keyToPaint(60);
  tell('key press to painted result, first notebook, median', median(painted), 'ms');
  tell('key press to painted result, first notebook, 95th percentile', quantile(painted, 0.95), 'ms', 50);
  const { first, later } = await loads(dist);
  tell('JavaScript and CSS before the first cells can be read, gzip', first / 1000, 'kB', 90);
  tell('loaded later, gzip', later / 1000, 'kB', 300);

  const held = figures.map(({ name, value, budget }) => ({
    name,
    value,
    budget: budget ?? null,
    holds: budget === undefined || value <= budget,
  }));
  for (const line of held) console.log(JSON.stringify(line));
  return held.every(({ holds }) => holds);
}
