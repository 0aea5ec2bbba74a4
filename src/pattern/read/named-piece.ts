import { capital } from '../../format';

/**
 * The piece that a heading is about, and how many of it are made.
 *
 * @example namedPiece('SLEEVES (make both alike)') // { label: 'Sleeves', make: 2 }
 * @example namedPiece('Pocket, make 3')            // { label: 'Pocket', make: 3 }
 */
export function namedPiece(heading: string): { label: string; make: number } {
  const words: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4 };
  const match = /\(?\s*(?:make|work|knit|both)\s+(?:(\d)|(two|three|four)|alike|the same)\b.*?\)?$/iu.exec(
    heading,
  );
  const label =
    heading
      .replace(/\s*[([].*$/u, '')
      .replace(/\s*,?\s*(?:make|both) .*$/iu, '')
      .trim() || heading;
  const plural =
    /^(?:sleeves|fronts|cuffs|straps|pockets|shoulders)$/iu.test(label) || /each side/iu.test(heading);
  const make = match ? Number(match[1] ?? words[(match[2] ?? 'two').toLowerCase()]) : plural ? 2 : 1;
  return {
    label: capital(
      label.toLowerCase() === label || label.toUpperCase() === label ? label.toLowerCase() : label,
    ),
    make,
  };
}
