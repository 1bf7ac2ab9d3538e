/** Cards as a file and back: what the job card asks of scripts/job-transfer.js. */
import type { Job } from '../../model/job.ts';
import type { NoteDraft } from '../note/note-draft.ts';

/** A picture as it goes into a file. */
export interface PackedPicture {
  id: string;
  /** JPEG in base64. */
  jpeg: string;
}

export type ImportResult = { ok: true; jobs: Job[]; pictures: PackedPicture[] } | { ok: false; says: string };

export interface JobTransfer {
  /** Cards and their pictures, with the notes that are ready and not handed over yet. */
  exported(jobs: readonly Job[], drafts: readonly NoteDraft[], pictures?: readonly PackedPicture[]): string;
  /** Saves finished jobs for the counts, without anything of the customer; says what was saved. */
  saveFinished(jobs: readonly Job[]): string;
  /** Cards from a file or from codes, checked whole: all of them, or a sentence. */
  imported(text: string): ImportResult;
  /** The card that is here with every entry of the one that came in; nothing of either is written over. */
  merged(here: Job, other: Job): Job;
}

/** The way from device to device: what the job card asks of scripts/job-desk.js. */
export interface JobDesk {
  /** The card as a file by the device's own share sheet, or where it has none, saved. */
  share(card: DeskCard): Promise<void>;
  /** The card as codes on the screen. */
  showCode(card: DeskCard): Promise<void>;
  /** The codes of another device, by the camera or from a picture. */
  readCode(card: DeskCard): Promise<void>;
}

/** As much of the page's card as the desk needs. */
export interface DeskCard extends HTMLElement {
  readonly job: Job;
  place(selector: string): HTMLElement;
  say(selector: string, text: string): void;
  /** Takes in what came from another device and says what came of it. */
  takeText(text: string, from: string): Promise<string>;
}
