import { isDimension } from '../../formulas';
import { wrongSearch } from '../../analysis/solve';
import {
  choosableIn,
  chosenIn,
  isGiven,
  isResult,
  measurable,
  cellRefKey,
  type Measurable,
  type Workspace,
  exactly,
  scaleOf,
  symbolFor,
} from '../../workspace';
import { checksOf, hangsOn, inputAt, typedAt, usualWithin } from './form';
import type { Sought } from './solve-run.svelte';
import { usualBounds } from './usual-bounds';

/** What is looked at where it is no place: all checks. */
export const allChecks = 'checks';

/** What a person asks: which result is to be what, and which value may change between which bounds. */
export class SolveForm {
  /** What is looked at: the key of a place, or all checks. */
  lookedKey = $state('');
  wish: 'value' | 'nearest' = $state('value');
  wishText = $state('');
  withinText = $state('');
  inputKey = $state('');
  fromText = $state('');
  toText = $state('');
  stepText = $state('');

  readonly #workspace: Workspace;
  readonly #choosable = $derived.by(() => measurable(this.#workspace, choosableIn(this.#workspace.notebook)));
  readonly results = $derived(this.#choosable.filter(isResult));
  readonly inputs = $derived(this.#choosable.filter((choice) => isGiven(choice) && isDimension(choice.unit)));
  readonly #checks = $derived.by(() => checksOf(this.#workspace.notebook));
  readonly result = $derived(chosenIn(this.results, this.lookedKey));
  readonly input = $derived(chosenIn(this.inputs, this.inputKey));
  readonly taken = $derived.by(() => inputAt(this.#workspace.notebook, this.input ?? null));
  readonly #looked: Sought['looked'] | undefined = $derived.by(() => {
    if (this.lookedKey === allChecks) return { checks: this.#checks };
    return this.result && this.#lookedAt(this.result);
  });
  /** The cells that what is looked at hangs on. */
  readonly dependents: ReadonlySet<string> = $derived.by(() =>
    this.#looked ? hangsOn(this.#workspace.notebook, this.#looked) : new Set(),
  );
  readonly isNumber = $derived(this.result !== undefined && isDimension(this.result.unit));
  readonly whole = $derived(this.taken?.constraint?.whole ?? false);
  readonly scale = $derived.by(() => (this.input ? scaleOf(this.input, this.#workspace.settings) : 1));
  readonly symbol = $derived.by(() =>
    this.input ? symbolFor(this.input.unit, this.#workspace.settings, this.input.written) : '',
  );

  /** What is sought, or why it cannot be. */
  readonly sought: Sought | { readonly problem: string } | undefined = $derived.by(() => {
    const { settings, sizes } = this.#workspace;
    const { input, result, taken } = this;
    const looked = this.#looked;
    if (!looked)
      return this.lookedKey === ''
        ? undefined
        : { problem: 'That result is no longer in the notebook: choose another.' };
    if ('checks' in looked && looked.checks.length === 0)
      return { problem: 'There is no check in this notebook: add one on the leaf, or choose a result.' };
    if (!input || !taken) return { problem: 'Choose the value that may change.' };
    if (!this.dependents.has(input.cell)) {
      const of = result?.label ?? 'No check';
      return {
        problem: `${of} does not depend on ${input.label}: choose a value that feeds it; they stand first in the list.`,
      };
    }
    const read = [this.fromText, this.toText, this.stepText].map((text) => typedAt(text, input, settings));
    const wrong = read.find((one) => 'problem' in one);
    if (wrong && 'problem' in wrong) return wrong;
    const [from, to, step] = read.map((one) => ('value' in one ? one.value : NaN)) as [
      number,
      number,
      number,
    ];
    const search = { from, to, step, ...(this.whole ? { whole: true } : {}) };
    const sentence = wrongSearch(search);
    if (sentence) return { problem: sentence };
    const base = {
      search,
      looked,
      input: { cell: input.cell, key: input.key },
      shared: taken.shared ?? false,
      sizes,
    };
    if ('checks' in looked) return { ...base, wish: { wish: 'holds' } };
    if (!result || !this.isNumber) return { ...base, wish: { wish: 'holds' } };
    const value = typedAt(this.wishText, result, settings);
    if (this.wishText.trim() === '') {
      const error = sizes.flatMap(
        ({ id }) => this.#workspace.results(result.cell).error(id, result.cell, result.key)?.message ?? [],
      )[0];
      if (error)
        return {
          problem: `${result.label} has no result: ${error} Mend that first, or type the result you want.`,
        };
    }
    if ('problem' in value) return { problem: `What is wished of ${result.label}: ${value.problem}` };
    const within = typedAt(this.withinText, result, settings);
    if ('problem' in within || within.value < 0)
      return { problem: 'How far off may still do: type 0, or a number more than that.' };
    return { ...base, wish: { wish: this.wish, value: value.value, within: within.value } };
  });

  constructor(workspace: Workspace) {
    this.#workspace = workspace;
  }

  /** Begins with what is in focus in the grid. */
  begin(): void {
    const { position } = this.#workspace.selection;
    const begin =
      chosenIn(this.results, position && cellRefKey(position)) ??
      this.results.find(({ cell, first }) => first && cell === position?.cell) ??
      this.results.find(({ key }) => key === 'count') ??
      this.results[0];
    if (begin) this.selectGoal(cellRefKey(begin));
  }

  /** Looks at another result: what it is now is what is wished, until something else is typed. */
  selectGoal(key: string): void {
    this.lookedKey = key;
    const { settings, sizes, notebook } = this.#workspace;
    const ref = chosenIn(this.results, key);
    if (ref && isDimension(ref.unit)) {
      const values = sizes.flatMap(
        ({ id }) => this.#workspace.results(ref.cell).number(id, ref.cell, ref.key) ?? [],
      );
      const now = values[Math.floor((values.length - 1) / 2)];
      const within = usualWithin(ref.unit, settings, values.length > 0 && values.every(Number.isInteger));
      const by = scaleOf(ref, settings);
      this.wishText = now === undefined ? '' : exactly(now, by, settings);
      this.withinText = exactly(within, by, settings);
    }
    // What was moved before is kept where it leads there too.
    const hangs =
      key === allChecks
        ? hangsOn(notebook, { checks: this.#checks })
        : ref && hangsOn(notebook, this.#lookedAt(ref));
    if (!hangs || (this.input && hangs.has(this.input.cell))) return;
    const feeding = this.inputs.filter(({ cell }) => hangs.has(cell));
    // Ease is what is moved most; else what is one value for every size, and no swatch's.
    const begin =
      feeding.find(({ key }) => key === 'ease') ??
      feeding.find((each) => {
        const entered = inputAt(notebook, each);
        return entered !== undefined && 'value' in entered.entry && !entered.shared;
      }) ??
      feeding[0];
    if (begin) this.move(cellRefKey(begin));
  }

  /** Moves another input, between bounds about where it stands. */
  move(key: string): void {
    this.inputKey = key;
    const { settings, sizes, notebook } = this.#workspace;
    const ref = chosenIn(this.inputs, key);
    const entered = inputAt(notebook, ref ?? null);
    if (!ref || !entered) return;
    const by = scaleOf(ref, settings);
    const now = sizes.flatMap(
      ({ id }) => this.#workspace.results(ref.cell).number(id, ref.cell, ref.key) ?? [],
    );
    const positive = entered.constraint?.above !== undefined || entered.constraint?.least !== undefined;
    const bounds = usualBounds(
      now.map((value) => Number((value / by).toPrecision(12))),
      { positive, whole: entered.constraint?.whole ?? false },
    );
    this.fromText = exactly(bounds.from, 1, settings);
    this.toText = exactly(bounds.to, 1, settings);
    this.stepText = exactly(bounds.step, 1, settings);
  }

  #lookedAt(ref: Measurable): Sought['looked'] {
    const check = this.#checks.find((cell) => cell.id === ref.cell);
    return check && !isDimension(ref.unit)
      ? { checks: [check] }
      : { result: { cell: ref.cell, key: ref.key } };
  }
}
