/**
 * What a formula says of how a piece is worked, as a plan holds it. What is neither stays as it is: who works the piece
 * says what may stand there.
 *
 * @example readHowWorked('flat from WS') // { worked: 'flat', startsOn: 'WS' }
 * @example readHowWorked('round')        // { worked: 'round' }
 */
export function readHowWorked(text: string): { readonly worked: string; readonly startsOn?: 'WS' } {
  return text === 'flat from WS' ? { worked: 'flat', startsOn: 'WS' } : { worked: text };
}
