import { usualSettings, type Notebook } from '../notebook';

/** Nothing yet: one size, and a section for the swatches that everything begins with. */
export function blank(): Notebook {
  return {
    title: 'Untitled',
    settings: usualSettings,
    sizes: [{ id: 'one', label: 'One size' }],
    sections: [{ id: 'swatches', label: 'Swatches', cells: [] }],
  };
}
