/**
 * A label or a sentence as it goes on within another: its capital small, but where it is an abbreviation's.
 *
 * @example uncapital('Back width') // 'back width'
 * @example uncapital('RS facing')  // 'RS facing'
 */
export function uncapital(text: string): string {
  return /^\p{Lu}\p{Ll}/u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}
