import { fireEvent, render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { tick } from 'svelte';
import { describe, expect, it, onTestFinished, vi } from 'vitest';
import FormulaEditor from '../../../src/features/formula-editor/FormulaEditor.svelte';
import NotebookGrid from '../../../src/features/grid/NotebookGrid.svelte';
import type { Checked } from '../../../src/engine';
import { formula, measure, notebookOf } from '../../engine/notebook-of';
import { workspaceWith } from '../../workspace/local-workspace';
import { until } from '../../until';

const notebook = notebookOf(
  [
    measure('bust', 'length', { each: { s: 84, m: 94 } }),
    measure('ease', 'length', 20),
    formula('back', 'bust / 2'),
  ],
  ['s', 'm'].map((id) => ({ id, label: id.toUpperCase() })),
);

async function open(begin = '= ') {
  const { workspace, settled } = workspaceWith(notebook);
  await settled();
  const user = userEvent.setup();
  render(NotebookGrid, { workspace, folded: false });
  await vi.dynamicImportSettled();
  const commit = vi.fn(() => undefined as string | undefined);
  const done = vi.fn();
  render(FormulaEditor, {
    workspace,
    ref: { cell: 'back', key: 'value' },
    label: 'Formula of back',
    text: begin,
    replaced: true,
    commit,
    done,
  });
  const field = await screen.findByRole<HTMLInputElement>('combobox', { name: 'Formula of back' });
  await until(() => expect(document.activeElement).toBe(field));
  const inWords = (): string => document.getElementById(field.getAttribute('aria-describedby')!)!.textContent;
  const styleOf = (text: string): string | undefined =>
    [...document.querySelectorAll('.colours span')].find((part) => part.textContent === text)?.classList[0];
  return { workspace, user, field, commit, done, inWords, styleOf };
}

const cellNamed = (name: string): HTMLElement => screen.getByRole('button', { name });

it('a field that scrolls when its editor is already closed troubles nobody', async () => {
  const { workspace } = workspaceWith(notebook);
  const none = { commit: () => undefined, done: () => {}, text: '= bust', replaced: false };
  const { unmount } = render(FormulaEditor, {
    workspace,
    ref: { cell: 'back', key: 'value' },
    label: 'Formula of back',
    ...none,
  });
  const field = screen.getByRole('combobox', { name: 'Formula of back' });
  await until(() => expect(document.activeElement).toBe(field));
  const failed = vi.fn((event: ErrorEvent) => event.preventDefault());
  window.addEventListener('error', failed);
  unmount();
  field.dispatchEvent(new Event('scroll'));
  window.removeEventListener('error', failed);
  expect(failed).not.toHaveBeenCalled();
});

describe('a formula being typed', () => {
  it('has names, functions and numbers each in their colour, and a name that there is not is marked', async () => {
    const { user, styleOf, field } = await open();
    await user.type(field, 'MAX(bust; elbow) * 2 + "x');
    expect(['MAX', 'bust', 'elbow', '2', '"x'].map(styleOf)).toEqual([
      'function',
      'name',
      'unknown',
      'number',
      'text',
    ]);
    expect(document.querySelector('.colours')?.textContent).toBe(field.value);
  });

  it('does not mark a word that may yet become a name', async () => {
    const { user, styleOf, field } = await open();
    await user.type(field, 'bus');
    expect(styleOf('bus')).toBe('name');
    await user.type(field, 'y');
    expect(styleOf('busy')).toBe('unknown');
  });

  it('tells what it gives before it is taken: bust and ease are a length', async () => {
    const { user, inWords, commit, field } = await open();
    await user.type(field, 'bust + ease');
    await until(() => expect(inWords()).toContain('gives a length'));
    expect(commit).not.toHaveBeenCalled();
  });

  it('tells the arguments of the function that is being filled in, and what the next one takes', async () => {
    const { user, inWords, field } = await open();
    await user.type(field, 'FITREPEAT(bust; ');
    expect(inWords()).toMatch(/FITREPEAT\s+needs wanted; multiple; plus\. May add .*— a plain number/s);
    expect(inWords()).not.toMatch(/[[\]]/);
  });

  it('offers names with their label and what they are, and Tab takes the first', async () => {
    const { user, field } = await open();
    await user.type(field, 'bus');
    expect(screen.getByRole('option', { name: /^bust/ }).textContent).toMatch(/bust.*a length/s);
    await user.keyboard('{Tab}');
    expect(field.value).toBe('= bust');
    expect(document.activeElement).toBe(field);
  });

  it.each([
    ['of ten thousand characters', 'bust + '.repeat(1429), /at most \d+ characters/],
    ['with five hundred brackets', '('.repeat(500), /at most \d+ deep/],
    ['that goes wrong before its end', 'bust bust + 1', /An operator/],
  ])('%s says why it cannot be, without being taken', async (_what, text, why) => {
    const { inWords, commit, field } = await open();
    await fireEvent.input(field, { target: { value: text } });
    await until(() => expect(inWords()).toMatch(why));
    expect(commit).not.toHaveBeenCalled();
  });

  it('asks about what stands there at the end, not about every letter on the way', async () => {
    const { workspace, inWords, field } = await open();
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    onTestFinished(() => void vi.useRealTimers());
    const answers: ((checked: Checked<string>) => void)[] = [];
    const wanted: string[] = [];
    workspace.formulas.evaluate = (typed) => {
      wanted.push(typed);
      return new Promise((answer) => answers.push(answer));
    };
    await fireEvent.input(field, { target: { value: 'bust' } });
    await until(() => expect(wanted).toEqual(['bust']));
    for (const value of ['bust + ea', 'bust + eas', 'bust + ease', 'bust + ease * 2']) {
      await fireEvent.input(field, { target: { value } });
      await vi.advanceTimersByTimeAsync(200);
    }
    expect(wanted).toEqual(['bust']);
    answers[0]!({ unit: 'truth' });
    await until(() => expect(wanted).toEqual(['bust', 'bust + ease * 2']));
    expect(inWords()).not.toContain('yes or no');
    answers[1]!({ unit: { length: 1 } });
    await until(() => expect(inWords()).toContain('gives a length'));
  });
});

describe('pointing at the grid', () => {
  it('puts the name of a value in the formula, and the focus stays', async () => {
    const { user, field, done } = await open();
    await user.click(cellNamed('bust, size M: 94.0 cm'));
    expect(field.value).toBe('= bust');
    expect(document.activeElement).toBe(field);
    await user.keyboard(' + ');
    await user.click(cellNamed('ease, every size: 20.0 cm'));
    expect(field.value).toBe('= bust + ease');
    expect(done).not.toHaveBeenCalled();
  });

  it('at another value at once takes it instead, whatever size is pointed at', async () => {
    const { user, field } = await open();
    await user.click(cellNamed('bust, size S: 84.0 cm'));
    await user.click(cellNamed('bust, size M: 94.0 cm'));
    expect(field.value).toBe('= bust');
    await user.click(cellNamed('ease, every size: 20.0 cm'));
    expect(field.value).toBe('= ease');
  });

  it('at a label puts the name of its cell', async () => {
    const { user, field } = await open();
    await user.click(cellNamed('bust: change the label'));
    expect(field.value).toBe('= bust');
  });

  it('at the value being worked out puts nothing: it cannot use itself', async () => {
    const { user, field } = await open();
    await user.click(cellNamed('back, size M: 47.0 cm'));
    expect(field.value).toBe('= ');
  });

  it('with a finger counts when the finger is lifted, so that the grid can be scrolled', async () => {
    const { field } = await open();
    const bust = cellNamed('bust, size M: 94.0 cm');
    await fireEvent.pointerDown(bust, { pointerType: 'touch', button: 0 });
    await tick();
    expect(field.value).toBe('= ');
    await fireEvent.click(bust);
    await tick();
    expect(field.value).toBe('= bust');
  });
});

it('the functions are listed when they are asked for, each with an example', async () => {
  const { user } = await open();
  await user.click(cellNamed('Function list'));
  await user.type(await screen.findByRole('searchbox'), 'foundation');
  expect(await screen.findByText('FOUNDATIONCHAIN(back_sts; STS(3); "counts")')).toBeDefined();
  await user.click(cellNamed('Put FOUNDATIONCHAIN in the formula'));
  expect(screen.getByRole<HTMLInputElement>('combobox', { name: 'Formula of back' }).value).toBe(
    '= FOUNDATIONCHAIN(',
  );
});
