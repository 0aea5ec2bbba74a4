import type { Settings } from '../notebook';
import { knownBy, numberIn, plainOf, worthOf, type Amount } from './amount';
import { partsOf, product, productUnit, shownAmount } from './shown';
import type { Heading, TextRun, Step } from './step';
import { writeAmount } from './write-amount';

/** What a function's steps are written with. */
export class Work {
  readonly steps: Step[] = [];
  readonly settings: Settings;
  /** What the stretches of a piece are called, where that is known. */
  readonly #stretches: (piece: Amount | undefined) => readonly string[];
  #stretch: Heading | undefined;

  constructor(settings: Settings, stretches: (piece: Amount | undefined) => readonly string[] = () => []) {
    this.settings = settings;
    this.#stretches = stretches;
  }

  /** The steps that `steps` says stand under the name of a stretch: of a piece, or of the one being worked. */
  under<T>(at: number, piece: Amount | undefined, steps: () => T): T {
    this.#stretch = { at, label: this.#stretches(piece)[at] || `Stretch ${at + 1}` };
    try {
      return steps();
    } finally {
      this.#stretch = undefined;
    }
  }

  /** An amount as it stands among the numbers of a step. */
  write(given: Amount): string {
    return writeAmount(given, this.settings);
  }

  /** The same as a run of a step, which knows whose number it is. */
  part(given: Amount): TextRun {
    return { text: this.write(given), ...knownBy(given) };
  }

  /**
   * The text of a step with amounts in it.
   *
   * @example work.words`${body} − 2 × ${band}`
   */
  words(
    texts: TemplateStringsArray,
    ...put: readonly (Amount | readonly TextRun[] | string | number)[]
  ): TextRun[] {
    return texts.flatMap((text, at): readonly TextRun[] => {
      const one = put[at - 1];
      if (one === undefined) return [{ text }];
      if (typeof one !== 'object') return [{ text: `${one}${text}` }];
      return [...(isParts(one) ? one : [this.part(one)]), { text }];
    });
  }

  /** Writes a step down, and gives what it comes to. */
  say(
    says: string | readonly TextRun[],
    { of: _given, typed: _typed, counts: _counts, ...result }: Amount,
    more: Partial<Omit<Step, 'says'>> = {},
  ): Amount {
    const worth = worthOf(result);
    this.steps.push({
      says: typeof says === 'string' ? [{ text: says }] : says.filter(({ text }) => text !== ''),
      answer: this.write(result),
      ...(worth === undefined ? {} : { worth }),
      ...(this.#stretch ? { stretch: this.#stretch } : {}),
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

  /** A list in one: "24 sts, 25 sts". */
  joined(given: readonly (Amount | readonly TextRun[])[], between: string): TextRun[] {
    return given.flatMap((one, at) => this.words`${at === 0 ? '' : between}${one}`);
  }

  /**
   * A list as a sum: "24 sts + 25 sts"; three or more of the same that follow each other are one: "15 rows + 7 × 1 row".
   */
  sum(given: readonly Amount[]): TextRun[] {
    const runs: { one: Amount; times: number }[] = [];
    for (const one of given) {
      const last = runs.at(-1);
      if (last?.one.value === one.value && last.one.of === one.of) last.times++;
      else runs.push({ one, times: 1 });
    }
    const [first, ...rest] = runs.flatMap(({ one, times }) =>
      times > 2 && numberIn(one) >= 0
        ? [[{ text: ` + ${times} × ` }, this.part(one)]]
        : Array<TextRun[]>(times).fill(this.plus(one)),
    );
    if (!first) return [];
    // Before the first, a + goes, and a − stands close.
    const sign = first[0]!.text.replace(' + ', '').replace(' − ', '−');
    return [{ text: sign }, ...first.slice(1), ...rest.flat()];
  }

  /** What is added: " + 20 cm", or " − 4 cm" where it is less than nothing. */
  plus(given: Amount): TextRun[] {
    const value = numberIn(given);
    return value < 0
      ? [{ text: ' − ' }, this.part({ ...given, value: -value })]
      : [{ text: ' + ' }, this.part(given)];
  }

  /** The sizes of hooks and needles are told in millimetres everywhere. */
  hook(given: Amount): TextRun[] {
    return [{ ...this.part(given), text: `${this.write(plainOf(numberIn(given) * 10))} mm` }];
  }
}

function isParts(put: Amount | readonly TextRun[]): put is readonly TextRun[] {
  return Array.isArray(put);
}

/** How a function is shown: it writes its steps down and gives what they come to. */
export type Shows = (work: Work, ...given: Amount[]) => Amount;
