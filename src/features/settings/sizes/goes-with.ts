import { type Input, type Notebook, type Size, ownValues } from '../../../notebook';
import { showNumber, symbolFor } from '../../../workspace';

const mostNamed = 6;

/**
 * What goes with some sizes when they are removed, as the end of a sentence: ", and with it its own value: Cuff
 * (24.0 cm)". Nothing where nothing was given for them alone.
 */
export function goesWith(notebook: Notebook, gone: readonly Size[]): string {
  const values = gone.flatMap((size) => ownValues(notebook, size.id));
  if (values.length === 0) return '';
  const inWords = (input: Input, value: number): string => {
    const unit = input.unit === 'any' ? {} : input.unit;
    const { settings } = notebook;
    return `${showNumber(value, unit, settings, input.written)} ${symbolFor(unit, settings, input.written)}`.trim();
  };
  const named = [
    ...new Set(
      values.map(({ label, input, value }) =>
        gone.length === 1 ? `${label} (${inWords(input, value)})` : label,
      ),
    ),
  ];
  const more = named.length > mostNamed ? ` and ${named.length - mostNamed} more` : '';
  const shown = named.slice(0, mostNamed).join('; ') + more;
  if (values.length === 1) return `, and with it its own value: ${shown}`;
  return `, and with ${gone.length === 1 ? 'it its' : 'them their'} ${values.length} own values: ${shown}`;
}
