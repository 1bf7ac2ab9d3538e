/** What a proven cause asks for, from the repair to the hand-back: small, one file each under /data/plans/. */
import type { Joint } from '../../model/figures.ts';
import type { LayoutCondition } from '../../model/layout.ts';
import type { Stage } from '../../model/procedure.ts';
import type { WantedCoolant } from '../../model/wanted-coolant.ts';

/** One procedure of a job. Its texts may quote figures in braces. */
export interface PlannedWork {
  id: string;
  title: string;
  minutes: number;
  layout?: LayoutCondition | undefined;
  parts: string[];
  consumables: string[];
  coolant?: WantedCoolant | undefined;
  /** Those that stand at its steps and above them; `layout` where only such a drive has the danger. */
  cautions: { id: string; title: string; layout?: LayoutCondition | undefined }[];
  /** Joints tightened in it. */
  joints: { joint: Joint; layout?: LayoutCondition | undefined }[];
  /** Where it stands in a job. */
  stage: Stage;
  followedBy: string[];
}

export interface JobPlan {
  id: string;
  title: string;
  mechanism: string;
  comesBack: string;
  parts: string[];
  consumables: string[];
  coolant?: WantedCoolant | undefined;
  /** The repair first; empty when the cause has none on this shelf. */
  work: PlannedWork[];
  /** General range, packed, of each figure the texts quote. */
  general: Record<string, string>;
}
