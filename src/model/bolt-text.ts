/** A bolt and its hole as a line: "M6 8.8 into aluminium"; the class only where it is known. */
export function boltText(bolt: { bolt: string; class?: string | undefined; into: string }): string {
  return [bolt.bolt, bolt.class, 'into', bolt.into].filter((part) => part !== undefined).join(' ');
}
