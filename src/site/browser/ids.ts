/** A short name nobody else has: letters and digits that are hard to mix up. */
export function newId(start: string): string {
  const letters = '23456789abcdefghjkmnpqrstuvwxyz';
  const random = [...crypto.getRandomValues(new Uint8Array(8))].map((each) => letters[each % letters.length]);
  return `${start}-${random.join('')}`;
}
