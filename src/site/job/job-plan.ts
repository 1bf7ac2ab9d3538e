/** What a proven cause asks for, from the repair to the hand-back: small, one file each under /data/plans/. */
import type { Joint } from '../../model/figures.ts';
import type { LayoutCondition } from '../../model/layout.ts';

/** One procedure of a job. Its texts may quote figures in braces. */
export interface PlannedWork {
  id: string;
  title: string;
  minutes: number;
  layout?: LayoutCondition | undefined;
  parts: string[];
  consumables: string[];
  /** Those that stand at its steps and above them; `layout` where only such a drive has the danger. */
  cautions: { id: string; title: string; layout?: LayoutCondition | undefined }[];
  /** Joints tightened in it. */
  joints: { joint: Joint; layout?: LayoutCondition | undefined }[];
  /** Whether it fills or proves, so that the repair is over where it begins. */
  finishes: boolean;
  /** Whether coolant is filled in it. */
  fills: boolean;
  followedBy: string[];
}

export interface JobPlan {
  id: string;
  title: string;
  mechanism: string;
  comesBack: string;
  parts: string[];
  consumables: string[];
  /** The repair first; empty when the cause has none on this shelf. */
  work: PlannedWork[];
  /** General range, packed, of each figure the texts quote. */
  general: Record<string, string>;
}
