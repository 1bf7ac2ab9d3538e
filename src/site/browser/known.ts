/** What one window knows of the things of one kind. All scripts of a page share it. */
export interface KnownItems {
  /** As they are kept, by id, whatever lies there. */
  kept: Map<string, unknown>;
  /** What the device would not take. */
  here: Map<string, unknown>;
  loaded: Promise<void> | undefined;
  whenChanged: Set<() => void>;
}
