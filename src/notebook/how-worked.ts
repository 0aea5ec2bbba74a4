import type { PieceCell } from './document';

/** A flat piece whose first row is on the wrong side, as the formula of a piece names it. */
const fromWrongSide = 'flat from WS';

/**
 * How a piece is worked, as its formula says it. In the round there is no wrong side to begin on.
 *
 * @example howWorked({ worked: 'flat', startsOn: 'WS' })  // 'flat from WS'
 * @example howWorked({ worked: 'round', startsOn: 'WS' }) // 'round'
 */
export function howWorked({ worked, startsOn }: Pick<PieceCell, 'worked' | 'startsOn'>): string {
  return worked === 'flat' && startsOn === 'WS' ? fromWrongSide : worked;
}

/**
 * What a formula says of how a piece is worked, as a plan holds it. What is neither stays as it is: who works the piece
 * says what may stand there.
 *
 * @example readHowWorked('flat from WS') // { worked: 'flat', startsOn: 'WS' }
 * @example readHowWorked('round')        // { worked: 'round' }
 */
export function readHowWorked(text: string): { readonly worked: string; readonly startsOn?: 'WS' } {
  return text === fromWrongSide ? { worked: 'flat', startsOn: 'WS' } : { worked: text };
}
