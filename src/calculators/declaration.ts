/**
 * What a calculator is: its questions, its arithmetic, its answer in words, and where the arithmetic is from. A calculator is
 * one file that exports one declaration; page, live answer, address and tests are made from it.
 */
import type { CalculatorId } from '../model/calculator-ids.ts';
import type { FigurePath } from '../model/figures.ts';
import type { Quantity } from '../model/quantity.ts';
import type { TorqueStage } from '../model/torque-stages.ts';
import type { Dimension } from '../model/units.ts';

interface InputBase {
  /** Key in the address; lower-case, words joined by hyphens. */
  name: string;
  /** The question, as a label. */
  label: string;
  /** A line of help under the field. */
  hint?: string;
  /** Shown and asked only when each of these choices has one of its values. */
  when?: Readonly<Record<string, readonly string[]>>;
}

/** A quantity with its unit. */
export interface QuantityInput extends InputBase {
  kind: 'quantity';
  dimension: Dimension;
  /** Unit taken when a metric reader types a bare number, and the one the default is written in. */
  unit: string;
  /** As a person writes it; '' when there is none and the answer must wait. */
  default: string;
  /** Lowest and highest value that makes sense, as a person writes them. */
  limits: readonly [string, string];
  /** Figure of the chosen vehicle that replaces the default; of a range, which end. */
  figure?: { path: FigurePath; end?: 'low' | 'middle' | 'high' };
  /** What the open job card has measured of it, if it has: the card's account is the only one. */
  card?: 'drained' | 'filled';
  /** May be left empty. */
  optional?: boolean;
  /**
   * Found on this car, so no default can stand for it: until one is typed, or the vehicle gives them all, the answer is an
   * example; from then on one that is not typed was not taken.
   */
  reading?: true;
}

/** One of a few. */
export interface ChoiceInput extends InputBase {
  kind: 'choice';
  options: readonly { value: string; label: string }[];
  default: string;
}

/** A short word, such as a currency. May be left empty. */
export interface WordInput extends InputBase {
  kind: 'word';
  default: string;
  /** What stands for the word as some type it: a sign, small letters. */
  asMeant?(typed: string): string;
  pattern: RegExp;
  /** What would be right, for the message: "three letters, such as EUR". */
  expected: string;
  /** Found on this car, as of a quantity: its example stands for no reading. */
  reading?: true;
  /** A day that live stands at the device's own. */
  today?: true;
}

export type Input = QuantityInput | ChoiceInput | WordInput;

/** What was read from the fields: SI numbers and choices. Absent when optional and empty, or not asked. */
export interface Values {
  /** SI value of a quantity input. @throws when the declaration has no such input or it was left empty */
  number(name: string): number;
  /** SI value, or undefined when the field was left empty or not asked. */
  optional(name: string): number | undefined;
  /** Half a unit of the last digit as written, in SI: how far a printed figure may be rounded. @throws as `number` */
  rounding(name: string): number;
  /** Value of a choice. @throws when the declaration has no such choice or it was not asked */
  choice(name: string): string;
  /** Text of a word, '' when left empty. */
  word(name: string): string;
}

/** Writes quantities the way this reader wants to see them. */
export interface QuantityFormatter {
  /**
   * @param si value in SI
   * @param unit metric unit to show it in when the reader has no other habit
   * @param decimals in that unit
   */
  quantity(si: number, unit: string, decimals: number): string;
  /** Both ends in one unit: "−39 to −36 °C". */
  range(low: number, high: number, unit: string, decimals: number): string;
  /** A difference of two temperatures: "12 K", or "22 °F" in the degrees of a reader who has those. */
  difference(kelvin: number, decimals?: number): string;
}

/** One line of the answer's figures. */
export interface AnswerFigure {
  label: string;
  /** Already written for the reader, unit included. */
  value: string;
  note?: string;
}

/** A drawing that says it faster. Plain data in the metric unit named; the page draws it in the reader's. */
export type Picture =
  | {
      kind: 'curve';
      title: string;
      x: Axis;
      y: Axis;
      curves: Curve[];
      points: { x: number; y: number; label: string }[];
    }
  | {
      kind: 'ladder';
      title: string;
      rungs: { id: string; label: string; celsius: number }[];
      reading: { celsius: number; label: string; to: string; below: string; above: string };
    };

export interface Axis {
  label: string;
  /** Metric unit the numbers are in. */
  unit: string;
  low: number;
  high: number;
  /** Equal steps for equal ratios; both ends above zero. */
  ratio?: boolean;
}

export interface Curve {
  points: (readonly [x: number, y: number])[];
  /** A second line that bounds a band with the first. */
  upper?: (readonly [x: number, y: number])[];
}

export interface Answer {
  /** What to do, first; a sentence or two. */
  sentence: string;
  /** Whether the sentence is good news, wants a look, or says stop. Told in its words too. */
  tone: 'fine' | 'look' | 'stop';
  figures: AnswerFigure[];
  /** What else to know: spread between sources, what was assumed, the caution that belongs to the act. */
  notes: string[];
  pictures?: Picture[];
  /** What the job card keeps of it as values, where its sentence alone would be one more book. */
  onCard?: {
    /** Off the jug, litres. */
    litres?: { drained: number; filled: number };
    /** As it is told to the customer. */
    estimate?: { book: string; price: string; most: string; parts?: string; tax?: string };
  };
}

/** A contradiction between fields: no answer, a plain message at the field that should change. */
export interface Refusal {
  refused: { name: string; message: string };
}

/** What a calculator may know of the chosen vehicle. */
export interface VehicleFacts {
  figures: Readonly<Record<string, { quantity: Quantity }>>;
  /** By joint: thread, property class, what it is screwed into. */
  bolts: Readonly<
    Record<
      string,
      { bolt: string; class?: string | undefined; into: string; stages?: readonly TorqueStage[] | undefined }
    >
  >;
}

/** Fields that belong together, filled at one press. */
export interface FieldSet {
  /** What it is called where a step names it: a joint. */
  id: string;
  label: string;
  fields: Readonly<Record<string, string>>;
}

export interface Calculator {
  id: CalculatorId;
  title: string;
  /** What it settles, a line. */
  settles: string;
  inputs: readonly Input[];
  /** What the chosen vehicle can fill in as a set, such as one of its joints. */
  sets?: { label: string; of(vehicle: VehicleFacts): FieldSet[] };
  /** The arithmetic. May throw OutOfRange; never returns NaN. */
  answer(values: Values, show: QuantityFormatter): Answer | Refusal;
  method: {
    /** The formula in words and signs. */
    formula: string;
    sources: readonly string[];
    /** Range of validity. */
    valid: string;
    /** How far it may be off, and against what. */
    error: string;
  };
  /** Other names, for search. */
  also: readonly string[];
}
