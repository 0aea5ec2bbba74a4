/**
 * A text with its first letter a capital, as a sentence begins.
 *
 * @example capital('back width') // 'Back width'
 */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
