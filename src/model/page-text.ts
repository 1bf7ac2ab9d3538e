/** Where in a source, as it is shown: a number or numbers alone are pages. */
export function pageText(page: string): string {
  return /^[\d.]+(?:\s*[-–,]\s*[\d.]+)*$/.test(page) ? `page ${page}` : page;
}
