/**
 * What the walk's script needs: written as JSON into the symptom's page what its start takes, and in a script of its own what is
 * wanted from the first answer on.
 */
import type { WalkTree } from '../../diagnosis/walk.ts';
import type { LayoutCondition, LayoutShares } from '../../model/layout.ts';
import type { TEST_WORK } from '../../model/test.ts';
import type { Needs } from './not-here.ts';
import type { PackedModel } from './packed-model.ts';

/** In the page. */
export interface WalkData {
  symptom: string;
  /** Of the questions, results and proofs; the page that has the steps carries the same one. */
  stamp: string;
  /** Vehicles that can have the complaint, when not all can. */
  needs?: Needs | undefined;
  /** All candidate causes and tests of the complaint, whatever the layout. */
  model: PackedModel;
  tree: WalkTree;
  /** Conditions of the causes and tests that not every vehicle has. */
  causeLayouts: Record<string, LayoutCondition>;
  testLayouts: Record<string, LayoutCondition>;
  /** How common each layout is that those conditions speak of. */
  layoutShares: LayoutShares;
  /** Tools each test cannot be done without. */
  tools: Record<string, string[]>;
  /** Titles of the causes. */
  causes: Record<string, string>;
}

/** In data/walks/<symptom>.js, fetched with the first answer. */
export interface WalkTexts {
  /** As in the page it belongs to. */
  stamp: string;
  /** Causes that something else makes, with the page whose walk looks for what. */
  goesOn: Record<string, { title: string; href: string }>;
  /** Tests done with a meter, or with something opened. */
  work: Record<string, (typeof TEST_WORK)[number]>;
  /** Minutes of the repair and of what follows it, on the commonest layout, for when no vehicle is chosen. */
  repairs: Record<string, [repair: number, extra: number]>;
  /** General range, packed, of each figure that questions and answers quote in braces. */
  general: Record<string, string>;
  /** Titles, questions and answers may quote figures in braces. */
  tests: Record<string, string>;
  questions: Record<string, string>;
  tools: Record<string, string>;
  /** What each feature asks. */
  layout: Record<string, string>;
  outcomes: Record<string, Record<string, string>>;
  /** Pages of the other walks a tree goes on to, by tree id. */
  trees: Record<string, { title: string; href: string }>;
}
