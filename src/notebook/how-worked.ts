import type { PieceCell } from './document';

/**
 * How a piece is worked, as its formula says it. In the round there is no wrong side to begin on.
 *
 * @example howWorked({ worked: 'flat', startsOn: 'WS' })  // 'flat from WS'
 * @example howWorked({ worked: 'round', startsOn: 'WS' }) // 'round'
 */
export function howWorked({ worked, startsOn }: Pick<PieceCell, 'worked' | 'startsOn'>): string {
  return worked === 'flat' && startsOn === 'WS' ? 'flat from WS' : worked;
}
