/** The fields of a calculator and the place of its answer, as markup of escaped text. The same at build and live. */
import type { Calculator, Input } from '../../calculators/declaration.ts';
import { unitsOffered } from '../../calculators/reader-units.ts';
import { isAsked } from '../../calculators/work-out.ts';
import { METRIC } from '../../model/habit.ts';
import { escapeText } from '../drawings/svg.ts';
import { type FieldText, keypadOf, writeDefault } from './calculator-field.ts';

export interface FormOptions {
  /** Prefix of the fields' ids, unique on the page. */
  prefix: string;
  /** Inside a step a reading has no default: it would be taken for this car's. */
  inStep: boolean;
  /** Defaults of this workshop in place of the declaration's, by input name. */
  given: Readonly<Record<string, string>>;
}

/** Fields that cannot be used until a script takes `disabled` away. */
export function calculatorForm(calculator: Calculator, options: FormOptions): string {
  const { sets, inputs } = calculator;
  const fields = inputs.map((input) =>
    fieldMarkup(input, isAsked(input, calculator, options.given), options),
  );
  const set =
    sets === undefined
      ? ''
      : `<div class="field wide sets" hidden><label for="${options.prefix}-set">${escapeText(sets.label)}</label>` +
        `<select id="${options.prefix}-set"></select><p class="says"></p></div>`;
  const line = options.inStep ? IN_STEP : 'Example figures. Type yours over them.';
  return (
    `<form novalidate autocomplete="off"><p class="soft example">${line}</p>` +
    `<fieldset disabled><legend class="out-of-sight">Figures</legend>${set}${fields.join('')}</fieldset></form>`
  );
}

/** Said above the fields inside a step until one is typed in. */
export const IN_STEP = 'Type what was found on this car.';

/** Where the answer stands. */
export function answerPlace(tone: string, sentence: string, detail: string): string {
  return (
    `<div class="worked"><p class="answer-sentence ${tone}" role="status">${escapeText(sentence)}</p>` +
    `<div class="answer-detail">${detail}</div></div>`
  );
}

/** What stands in a field before anybody types: the workshop's, or the declaration's unless it is a reading inside a step. */
export function standingText(input: Input, { inStep, given }: Omit<FormOptions, 'prefix'>): string {
  const waits = inStep && input.kind !== 'choice' && input.reading;
  return given[input.name] ?? (waits ? '' : input.default);
}

function fieldMarkup(input: Input, isShown: boolean, options: FormOptions): string {
  const id = `${options.prefix}-${input.name}`;
  const value = standingText(input, options);
  const entry = input.kind === 'quantity' ? writeDefault(input, value, METRIC) : { text: value, unit: '' };
  // Where somebody types the figure of a vehicle of this device, it is offered to be kept.
  const figure = input.kind === 'quantity' && input.figure ? ` data-figure="${input.figure.path}"` : '';
  return (
    `<div class="field${isWide(input) ? ' wide' : ''}" data-field="${input.name}"${figure}${isShown ? '' : ' hidden'}>` +
    `<label for="${id}">${escapeText(input.label)}</label>${entryMarkup(input, id, entry)}` +
    `<p class="says" id="${id}-says">${escapeText(input.hint ?? '')}</p></div>`
  );
}

/** Answers too long for half the width of a phone get the whole of it. */
function isWide(input: Input): boolean {
  return input.kind === 'choice' && input.options.some(({ label }) => label.length > 14);
}

function entryMarkup(input: Input, id: string, { text, unit }: FieldText): string {
  if (input.kind === 'choice')
    return `<select id="${id}" name="${input.name}">${input.options.map(({ value, label }) => option(label, value === text, value)).join('')}</select>`;
  const offered = input.kind === 'quantity' ? unitsOffered(input) : [];
  const beside =
    offered.length > 1
      ? `<select data-unit="${input.name}" aria-label="Unit of: ${escapeText(input.label)}">${offered.map((symbol) => option(symbol, symbol === unit)).join('')}</select>`
      : unit === ''
        ? ''
        : `<span data-unit="${input.name}">${escapeText(unit)}</span>`;
  return (
    `<div class="entry"><input id="${id}" name="${input.name}" value="${escapeText(text)}" type="text" ` +
    `inputmode="${keypadOf(input)}" spellcheck="false" aria-describedby="${id}-says">${beside}</div>`
  );
}

function option(label: string, isSelected: boolean, value?: string): string {
  const worth = value === undefined ? '' : ` value="${escapeText(value)}"`;
  return `<option${worth}${isSelected ? ' selected' : ''}>${escapeText(label)}</option>`;
}
