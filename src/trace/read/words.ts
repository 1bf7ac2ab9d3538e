/** A header as plain words: `CoolantTemp_C` and `Kühlmitteltemperatur` alike. */
export function plainWords(heading: string): string {
  return heading
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .replaceAll('ß', 'ss')
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();
}
