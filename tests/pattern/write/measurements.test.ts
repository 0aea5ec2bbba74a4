import { expect, it } from 'vitest';
import type { Cell, EaseCell, Notebook } from '../../../src/notebook';
import { blank } from '../../../src/starters';
import { asMade, formula } from '../../../src/notebook/cell-builders';
import { patternOf, plainText } from '../../../src/pattern';
import { sourceOf } from './source-of';

function ease(label: string, body: EaseCell['body'], by: number): EaseCell {
  const id = label.toLowerCase().replaceAll(' ', '_');
  return { kind: 'ease', id, label, name: id, by: 'length', body, ease: { value: by } };
}

/** The lines of the table of finished measurements. */
async function measured(cells: readonly Cell[]): Promise<string[]> {
  const bust = { kind: 'measure', id: 'bust', label: 'Bust', name: 'bust', unit: 'length' } as const;
  const notebook: Notebook = {
    ...blank(),
    sections: [{ id: 'all', label: 'All', cells: [{ ...bust, entry: { value: 94 } }, ...cells] }],
  };
  const text = plainText(patternOf(await sourceOf(notebook)));
  return text.split('\n').filter((line) => /bust|arm/i.test(line));
}

it('a body measure typed into an ease is called by what the ease finishes, not as finished itself', async () => {
  const lines = await measured([ease('My finished upper arm', { value: 31 }, 5)]);
  expect(lines).toEqual([
    expect.stringMatching(/^To fit: my upper arm +31\.0$/),
    expect.stringMatching(/^My finished upper arm +36\.0$/),
  ]);
});

it('a bust that body and hem are both eased from is to fit once', async () => {
  const lines = await measured([
    ease('Finished bust', { formula: 'bust' }, 10),
    ease('Finished hem', { formula: 'bust' }, 20),
  ]);
  expect(lines.filter((line) => line.startsWith('To fit'))).toEqual([
    expect.stringMatching(/^To fit: bust +94\.0$/),
  ]);
});

it('what the pieces come to is printed instead of what is wanted, by cells between them too', async () => {
  const lines = await measured([
    ease('Finished bust', { formula: 'bust' }, 10),
    ease('Finished arm', { formula: 'CM(30)' }, 5),
    formula('Bust taken', 'IF(bust > CM(0); finished_bust; bust)'),
    asMade('Finished bust', 'bust_taken', [['CM(49.9)', 2]], 'CM(1)'),
  ]);
  expect(lines).toEqual([
    expect.stringMatching(/^To fit: bust +94\.0$/),
    expect.stringMatching(/^To fit: arm +30\.0$/),
    expect.stringMatching(/^Finished arm +35\.0$/),
    expect.stringMatching(/^Finished bust +99\.8$/),
  ]);
});
