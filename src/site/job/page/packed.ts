/** A text made small for codes, and back. */

/** Bytes of the largest text that comes out of codes: a card with every list full. */
const LARGEST = 4 * 1024 * 1024;

/** The text, compressed. */
export async function packed(text: string): Promise<Uint8Array> {
  // Without the spaces that make a file readable.
  const short = JSON.stringify(JSON.parse(text));
  const stream = new Blob([short]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/** @throws when the bytes are no compressed text, or more than any card holds comes out of them */
export async function unpacked(bytes: Uint8Array): Promise<string> {
  const stream = new Blob([bytes.slice()]).stream().pipeThrough(new DecompressionStream('deflate-raw'));
  const reader = stream.getReader();
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let size = 0;
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    size += next.value.length;
    if (size > LARGEST) throw new RangeError('More than a card holds');
    parts.push(next.value.slice());
  }
  return new Blob(parts).text();
}
