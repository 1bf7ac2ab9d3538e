/** Id of an element of the form for a field's path: a path has strokes and dots, which an id may not have. */
export function fieldId(start: 'vehicle' | 'says', path: string): string {
  return `${start}-${path.replace(/[^A-Za-z0-9_-]/g, '-')}`;
}
