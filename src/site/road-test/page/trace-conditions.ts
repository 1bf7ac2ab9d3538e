/** What only the person knows of a road test: the day, the heater, and figures read off a car that no record holds. */
import '../../browser/page-globals.ts';
import { FIGURES, type FigurePath } from '../../../model/figures.ts';
import { readQuantity } from '../../../model/quantity.ts';
import type { DriverInput, TraceJudgement } from '../../../trace/judge-trace.ts';
import { degrees, figureText } from '../../../trace/say.ts';
import type { TypedFigures } from '../../../trace/vehicle.ts';
import { element } from '../../browser/element.ts';

/** Takes what makes a new account out of the current one. */
type Change = (from: (said: DriverInput) => DriverInput) => void;

/** The coldest and the hottest day taken, K. */
const DAYS = [220, 330] as const;

const OUTSIDE_FROM = {
  person: 'as you say',
  'ambient column': 'from the log',
  'intake column': 'judged by the intake air',
  'cold start': 'judged by the cold start',
} as const;

const TYPED: readonly { part: keyof TypedFigures; path: FigurePath; label: string }[] = [
  { part: 'stamp', path: 'thermostat.opens', label: 'Stamp on the thermostat' },
  { part: 'fanOn', path: 'fan.on', label: 'Fan starts' },
  { part: 'fanOff', path: 'fan.off', label: 'Fan stops' },
];

/** @param change called after each change; it is made to the account as it stands then, which may be a later one */
export function conditionFields(
  { start, vehicle }: TraceJudgement,
  said: DriverInput,
  change: Change,
): HTMLElement {
  const { habit } = window.headertank;
  const [coldest, hottest] = DAYS;
  const outside = temperatureField({
    id: 'trace-outside',
    label: 'Outside temperature',
    value: start.outside && degrees(start.outside.kelvin, habit),
    says: start.outside ? OUTSIDE_FROM[start.outside.from] : 'Not in the log. Type it.',
    range: DAYS,
    refuse: `Write the temperature outside, ${degrees(coldest, habit)} to ${degrees(hottest, habit)}.`,
    give: (kelvin) =>
      change(({ outside: _before, ...rest }) => (kelvin === undefined ? rest : { ...rest, outside: kelvin })),
  });
  const shown = { stamp: vehicle.opens, fanOn: vehicle.fanOn, fanOff: vehicle.fanOff };
  const figures = TYPED.map(({ part, path, label }) => {
    const typed = said.figures?.[part];
    const range = plausible(path);
    return temperatureField({
      id: `trace-${part.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`,
      label,
      value: typed === undefined ? undefined : degrees(typed, habit),
      says: typed === undefined ? `taken as ${figureText(shown[part], habit)}` : 'as you say',
      range,
      refuse: `Write one temperature, ${degrees(range[0], habit)} to ${degrees(range[1], habit)}.`,
      give: (kelvin) =>
        change((now) => {
          const { [part]: _before, ...rest } = now.figures ?? {};
          return { ...now, figures: kelvin === undefined ? rest : { ...rest, [part]: kelvin } };
        }),
    });
  });
  return element(
    'div',
    { class: 'conditions no-print' },
    ...outside,
    heaterField(said, change),
    ...(vehicle.title === undefined ? [] : [whoseField(said, change)]),
    ...figures.flat(),
  );
}

/** A stamp of 40 °C is a slip. */
function plausible(path: FigurePath): readonly [number, number] {
  const [low, high] = FIGURES[path].plausible.map((text) => {
    const read = readQuantity(text, 'temperature');
    return read.ok ? read.quantity.low : Number.NaN;
  });
  return [low ?? Number.NaN, high ?? Number.NaN];
}

interface TemperatureField {
  id: string;
  label: string;
  value: string | undefined;
  says: string;
  range: readonly [number, number];
  refuse: string;
  give(kelvin: number | undefined): void;
}

function temperatureField({ id, label, value, says, range, refuse, give }: TemperatureField): HTMLElement[] {
  const unit = window.headertank.habit.temperature ?? '°C';
  const line = element('p', { class: 'says', id: `${id}-says` }, says);
  const input = element('input', { id, type: 'text', inputmode: 'text', 'aria-describedby': line.id });
  if (value !== undefined) input.value = value;
  input.onchange = () => {
    const text = input.value.trim();
    if (text === '') return give(undefined);
    const read = readQuantity(text, 'temperature', unit);
    const one = read.ok && read.quantity.low === read.quantity.high ? read.quantity.low : Number.NaN;
    if (one >= range[0] && one <= range[1]) give(one);
    else line.textContent = refuse;
  };
  return [element('div', {}, element('label', { for: id }, label), input, line)];
}

/** A vehicle chosen because it comes nearest: its stamp and fan are then taken wider. */
function whoseField(said: DriverInput, change: Change): HTMLElement {
  const whose = element('select', { id: 'trace-whose' });
  for (const [value, label] of [
    ['this car', 'the car tested'],
    ['nearest', 'only the nearest to it'],
  ] as const)
    whose.append(new Option(label, value, false, value === (said.whose ?? 'this car')));
  whose.onchange = () => {
    const value = whose.value === 'nearest' ? 'nearest' : 'this car';
    change((now) => ({ ...now, whose: value }));
  };
  return element('div', {}, element('label', { for: 'trace-whose' }, 'The vehicle chosen is'), whose);
}

function heaterField(said: DriverInput, change: Change): HTMLElement {
  const heater = element('select', { id: 'trace-heater' });
  for (const [value, label] of [
    ['unknown', 'not known'],
    ['off', 'blower off'],
    ['on', 'on'],
  ] as const)
    heater.append(new Option(label, value, false, value === (said.heater ?? 'unknown')));
  heater.onchange = () => {
    const value = heater.value === 'off' || heater.value === 'on' ? heater.value : 'unknown';
    change((now) => ({ ...now, heater: value }));
  };
  return element(
    'div',
    {},
    element('label', { for: 'trace-heater' }, 'Heater and blower on the drive'),
    heater,
  );
}
