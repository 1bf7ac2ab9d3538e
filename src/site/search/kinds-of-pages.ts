/** Which kind each page of the index is. */
export interface KindsOfPages {
  kinds: string[];
  /** Places in the list above, the pages in the order of their ids. */
  ofPages: number[];
}
