/**
 * What a line says is worked as another piece is, and what else it says of it: "Work as for Back.", "Same as the Back to
 * the armholes". Undefined where it says nothing of the kind.
 *
 * @example workAs('Front: Work as given for Back.', ['Back']) // { label: 'Front', piece: 'Back', more: false }
 * @example workAs('Work as Back to armholes.', ['Back'])      // { label: '', piece: 'Back', more: true }
 */
export function workAs(
  text: string,
  pieces: readonly string[],
): { label: string; piece: string; more: boolean } | undefined {
  const [, label = '', rest = ''] =
    /^\s*(?:(\p{L}[\p{L}’' -]{1,30}):\s+)?(?:(?:work|make|knit|crochet)\s+(?:exactly\s+)?(?:the\s+same\s+)?as|(?:exactly\s+)?(?:the\s+)?same\s+as)\s+(?:(?:given|described|told)\s+)?(?:for\s+)?(?:the\s+)?(\S.*)$/iu.exec(
      text,
    ) ?? [];
  const message = rest.trim().replace(/\.$/u, '').toLowerCase();
  const piece = pieces.find(
    (name) => message === name.toLowerCase() || message.startsWith(`${name.toLowerCase()} `),
  );
  return piece === undefined
    ? undefined
    : { label: label.trim(), piece, more: message !== piece.toLowerCase() };
}
