/**
 * A text, packed small (DEFLATE, RFC 1951).
 */
export async function packed(text: string): Promise<Uint8Array> {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/**
 * What was packed; undefined where it is damaged, no text, or would be larger than `most` bytes. It is counted while it
 * is unpacked: of something packed to burst, no more than `most` is ever held.
 */
export async function unpacked(bytes: Uint8Array<ArrayBuffer>, most: number): Promise<string | undefined> {
  const reader = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw')).getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  let size = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return text + decoder.decode();
      size += value.byteLength;
      if (size > most) {
        await reader.cancel();
        return undefined;
      }
      text += decoder.decode(value, { stream: true });
    }
  } catch {
    return undefined;
  }
}
