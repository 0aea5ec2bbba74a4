import { usualSettings, type Notebook } from '../notebook';
import { readPattern } from '../pattern/read';
import { heronPullover } from './heron-pullover';
import { notebookFrom } from '../pattern/adapt';

export { heronPullover } from './heron-pullover';
export { notebookFrom } from '../pattern/adapt';

/** An invented pattern, adapted to an invented maker: another swatch, and a wider upper arm than any of its sizes has at her bust. */
export function adaptedPullover(): Notebook {
  const reading = readPattern(heronPullover, { decimal: usualSettings.decimal });
  return notebookFrom(reading, heronPullover, usualSettings, {
    swatch: {
      stitches: 20,
      rows: 28,
      worked: '4.5 mm needles, stockinette',
      weighed: [20, 20, 17],
      ball: [50, 11_000],
    },
    body: { bust: 101, bustEase: 10, upperArm: 46, armEase: 5, length: 58, sleeveLength: 43 },
  });
}
