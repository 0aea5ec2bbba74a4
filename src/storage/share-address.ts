import { packed, unpacked } from './packing';

/** What stands after the # of a link before the notebook, and the form it is in. */
const beginning = '#notebook=1.';
const newerForm = /^#notebook=(?:[2-9]|\d{2,})\./;

/** Characters of a link that programs still pass on whole, as common practice; longer ones are cut by some. */
export const longestLink = 32_000;

/** Bytes that a link may unpack to. */
export const mostUnpacked = 2_000_000;

/**
 * A link that carries a notebook: its text, packed, after the #, which browsers send to no one.
 *
 * @param text the text of a file
 * @param page the address of the page
 */
export async function linkOf(text: string, page: string): Promise<{ link: string } | { problem: string }> {
  // Without the spaces that make a file readable.
  const bytes = await packed(JSON.stringify(JSON.parse(text)));
  const link = page.replace(/#.*$/s, '') + beginning + inLetters(bytes);
  if (link.length <= longestLink) return { link };
  return {
    problem: `This notebook is too long for a link: it would have ${link.length.toLocaleString('en')} characters, and many programs cut links of more than ${longestLink.toLocaleString('en')}. Save it as a file, and send that.`,
  };
}

/** The text of the notebook in a link, from what stands after its #; or why there is none. */
export async function textInLink(hash: string): Promise<{ text: string } | { problem: string }> {
  if (newerForm.test(hash)) {
    return {
      problem:
        'This link was made by a newer version of this page. Reload the page to get that version, then open the link again.',
    };
  }
  const bytes = hash.startsWith(beginning) ? fromLetters(hash.slice(beginning.length)) : undefined;
  const text = bytes && (await unpacked(bytes, mostUnpacked));
  if (text !== undefined) return { text };
  return {
    problem:
      'This link is damaged or was cut short, so no notebook could be read from it. Ask for the link once more, or for the file.',
  };
}

/** Letters that need no escape in an address: base64url, RFC 4648, section 5, without padding. */
function inLetters(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

function fromLetters(letters: string): Uint8Array<ArrayBuffer> | undefined {
  // Programs that pass a link on may put a stop or a bracket behind it. Letter by letter from the end: a pattern that
  // ends there would be tried from each place again.
  let end = letters.length;
  while (end > 0 && /[).,;>\]"'\s]/.test(letters[end - 1]!)) end--;
  const own = letters.slice(0, end);
  if (!/^[\w-]*$/.test(own)) return undefined;
  try {
    return Uint8Array.from(atob(own.replaceAll('-', '+').replaceAll('_', '/')), (letter) =>
      letter.charCodeAt(0),
    );
  } catch {
    return undefined;
  }
}
