/**
 * What a calculator is: its questions, its arithmetic, its answer in words, and where the arithmetic is from. A calculator is
 * one file that exports one declaration; page, live answer, address and tests are made from it.
 */
import type { CalculatorId } from '../model/calculator-ids.ts';
import type { FigurePath } from '../model/figures.ts';
import type { Dimension } from '../model/units.ts';

interface InputBase {
  /** Key in the address; lower-case, words joined by hyphens. */
  name: string;
  /** The question, as a label. */
  label: string;
  /** A line of help under the field. */
  hint?: string;
  /** Shown and asked only when another choice has one of these values. */
  when?: { name: string; is: readonly string[] };
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
  figure?: { path: FigurePath | `torque.${string}`; end?: 'low' | 'middle' | 'high' };
  /** May be left empty. */
  optional?: boolean;
}

/** One of a few. */
export interface ChoiceInput extends InputBase {
  kind: 'choice';
  options: readonly { value: string; label: string }[];
  default: string;
}

export type Input = QuantityInput | ChoiceInput;

/** What was read from the fields: SI numbers and choices. Absent when optional and empty, or not asked. */
export interface Values {
  /** SI value of a quantity input. @throws when the declaration has no such input or it was left empty */
  number(name: string): number;
  /** SI value, or undefined when the field was left empty or not asked. */
  optional(name: string): number | undefined;
  choice(name: string): string;
}

/** Writes quantities the way this reader wants to see them. */
export interface Shower {
  /**
   * @param si value in SI
   * @param unit metric unit to show it in when the reader has no other habit
   * @param decimals in that unit
   */
  quantity(si: number, unit: string, decimals: number): string;
  /** Both ends in one unit: "−39 to −36 °C". */
  range(low: number, high: number, unit: string, decimals: number): string;
}

/** One line of the answer's figures. */
export interface AnswerFigure {
  label: string;
  /** Already written for the reader, unit included. */
  value: string;
  note?: string;
}

/** A drawing that says it faster. Plain data: the page draws it. */
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
  low: number;
  high: number;
  /** Where numbers stand. */
  ticks: number[];
}

export interface Curve {
  label: string;
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
  /** What else to know: spread between sources, what was assumed. */
  notes: string[];
  picture?: Picture;
}

/** A contradiction between fields: no answer, a plain message at the field that should change. */
export interface Refusal {
  refused: { name: string; message: string };
}

export interface Calculator {
  id: CalculatorId;
  title: string;
  /** What it settles, a line. */
  settles: string;
  inputs: readonly Input[];
  /** The arithmetic. May throw OutOfRange; never returns NaN. */
  answer(values: Values, show: Shower): Answer | Refusal;
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
