import type { Settings } from '../../notebook';
import { numberIn, type Amount } from './amount';
import { partsOf, product, productUnit, shownAmount } from './shown';
import type { Part, Step } from './working';
import { writeAmount } from './write-amount';

/** What a function's steps are written with. */
export class Work {
  readonly steps: Step[] = [];
  readonly settings: Settings;

  constructor(settings: Settings) {
    this.settings = settings;
  }

  /** An amount as it stands among the numbers of a step. */
  write(given: Amount): string {
    return writeAmount(given, this.settings);
  }

  /** Writes a step down, and gives what it comes to. */
  say(says: string | readonly Part[], result: Amount, more: Partial<Omit<Step, 'says'>> = {}): Amount {
    this.steps.push({
      says: typeof says === 'string' ? [{ text: says }] : says,
      answer: this.write(result),
      ...more,
    });
    return result;
  }

  /** A product of two as a step, with the units that cancel struck out; `of` says what a ratio is of. */
  times(left: Amount, by: '×' | '÷', right: Amount, of?: string): Amount {
    const [a, b] = [numberIn(left), numberIn(right)];
    const result = { value: by === '×' ? a * b : a / b, unit: productUnit(left, by, right) };
    const { settings } = this;
    const shown = product(shownAmount(left, settings), by, shownAmount(right, settings), right);
    const ratio = of === undefined ? {} : { answer: `${this.write({ ...result, unit: {} })} ${of}` };
    return this.say(partsOf(shown), result, ratio);
  }

  /** A list as a sum: "24 sts + 25 sts"; three or more of the same that follow each other are one: "15 rows + 7 × 1 row". */
  sum(given: readonly Amount[]): string {
    const runs: { one: Amount; times: number }[] = [];
    for (const one of given) {
      const last = runs.at(-1);
      if (last?.one.value === one.value) last.times++;
      else runs.push({ one, times: 1 });
    }
    return runs
      .flatMap(({ one, times }) => {
        if (times > 2 && numberIn(one) >= 0) return [` + ${times} × ${this.write(one)}`];
        return Array<string>(times).fill(this.plus(one));
      })
      .join('')
      .replace(/^ \+ /, '')
      .replace(/^ − /, '−');
  }

  /** What is added: " + 20 cm", or " − 4 cm" where it is less than nothing. */
  plus(given: Amount): string {
    const value = numberIn(given);
    return value < 0 ? ` − ${this.write({ ...given, value: -value })}` : ` + ${this.write(given)}`;
  }

  /** The sizes of hooks and needles are told in millimetres everywhere. */
  hook(given: Amount): string {
    return `${this.write({ value: numberIn(given) * 10, unit: {} })} mm`;
  }
}

/** How a function is shown: it writes its steps down and gives what they come to. */
export type Shows = (work: Work, ...given: Amount[]) => Amount;
