/**
 * What a column of a logged road test can be, the names it goes by and the units it comes in.
 *
 * English names and abbreviations follow SAE J1979 / ISO 15031-5 (ECT, VSS, RPM, LOAD_PCT, IAT, AAT; from memory),
 * with the everyday words of some other languages, because a scan tool speaks the language it was bought in.
 */
export const ROLES = [
  'time',
  'coolant',
  'outlet',
  'speed',
  'rpm',
  'load',
  'intake',
  'ambient',
  'fan',
] as const;
export type Role = (typeof ROLES)[number];

/** What is measured over time: every role but the time. */
export const SIGNALS = ROLES.filter((role) => role !== 'time');
export type Signal = Exclude<Role, 'time'>;

export type ColumnKind = 'time' | 'temperature' | 'speed' | 'rotation' | 'share' | 'switch';

interface RoleKind {
  label: string;
  kind: ColumnKind;
  /** Names in order of trust; tried on the plain words of a header. */
  names: readonly RegExp[];
  /** Words that make it something else. */
  not?: RegExp;
}

export const ROLE_KINDS: Record<Role, RoleKind> = {
  time: {
    label: 'Time',
    kind: 'time',
    names: [
      /^(elapsed |relative |log |rel )?(time|zeit|tijd|temps|tiempo|tempo)( s| sec| secs| seconds| ms| min)?$/,
      /\b(time ?stamp|elapsed|uhrzeit|zeitstempel|heure|hora|seconds|millis|milliseconds|epoch|clock)\b/,
      /\b(time|zeit|tijd|tid|czas)\b/,
      /^(t|s|sec|secs|ms|datetime|date time)$/,
    ],
    not: /\b(run ?time since|injection|dwell|ignition|advance|since|distance)\b/,
  },
  coolant: {
    label: 'Coolant temperature',
    kind: 'temperature',
    names: [
      /\b(ect|clt|coolant|kuhlmittel\w*|kuhlwasser\w*|koelvloeistof\w*|refroidissement|refrigerante)\b/,
      /\b(water|wasser|engine|motor\w*|moteur)[ _]?temp\w*\b/,
      /\b(wtemp|watertemp|cts|tclt|tcool|thw)\b/,
    ],
    not: /\b(oil|ol|huile|level|pressure|flow|pump|target|desired|setpoint|request\w*|fan|intake|air|radiator|outlet|inlet|hose|2|b)\b/,
  },
  outlet: {
    label: 'Second temperature: hose or radiator outlet',
    kind: 'temperature',
    names: [
      /\b(radiator|kuhler\w*|rad)\b.*\b(outlet|out|temp\w*|exit|austritt\w*)\b/,
      /\b(outlet|return|lower|bottom)\b.*\b(hose|temp\w*)\b|\bhose\b/,
      /\b(ect|clt|coolant)\b.*\b(2|b|outlet)\b|\bect2\b|\brct\b/,
    ],
    not: /\b(oil|level|pressure|flow|fan|air|target|desired)\b/,
  },
  speed: {
    label: 'Road speed',
    kind: 'speed',
    names: [
      /\b(vss|vehicle speed|road speed|fahrzeuggeschwindigkeit|vehiclespeed)\b/,
      /\b(geschwindigkeit|vitesse|velocidad|velocita|snelheid|speedo\w*)\b/,
      /\b(gps speed|speed gps|speed|kmh|km h|kph|mph|mi h)\b/,
    ],
    not: /\b(engine|motor|fan|pump|idle|turbo|rpm|wheel|target|desired|input|output|wind|limit\w*|moteur)\b/,
  },
  rpm: {
    label: 'Engine speed',
    kind: 'rotation',
    names: [
      /\b(rpm|engine speed|enginespeed|motordrehzahl|drehzahl|regime|toerental|n mot|nmot)\b/,
      /\b(rev\w*|u min|tr min)\b/,
    ],
    not: /\b(fan|pump|turbo|target|desired|idle|input|output|wheel)\b/,
  },
  load: {
    label: 'Engine load',
    kind: 'share',
    names: [
      /\b(load pct|calculated load|calc load|engine load|calculated engine load|motorlast|charge)\b/,
      /\b(load|last)\b/,
    ],
    not: /\b(absolute|alternator|generator|pedal|max|min|torque)\b/,
  },
  intake: {
    label: 'Intake air temperature',
    kind: 'temperature',
    names: [
      /\b(iat|intake air temp\w*|intake temp\w*|ansaugluft\w*|charge air temp\w*|manifold air temp\w*)\b/,
      /\b(intake|ansaug\w*|admission)\b/,
    ],
    not: /\b(pressure|map|flow|maf|valve)\b/,
  },
  ambient: {
    label: 'Outside temperature',
    kind: 'temperature',
    names: [
      /\b(aat|ambient\w*|outside\w*|outdoor\w*|aussen\w*|umgebung\w*|exterieure?)\b/,
      /\b(oat|external temp\w*)\b/,
    ],
    not: /\b(pressure|barometric|light|humidity)\b/,
  },
  fan: {
    label: 'Radiator fan, running or asked for',
    kind: 'switch',
    names: [
      /\b(radiator fan|cooling fan|engine fan|fan speed|fan relay|fan duty|fan state|fan command|fan request)\b/,
      /\b(fan|lufter|ventilateur|ventilador|ventola|koelventilator)\b/,
    ],
    not: /\b(blower|cabin|interior|hvac)\b/,
  },
};

/** A unit as a log writes it, to SI: value × factor + offset. */
export interface LogUnit {
  symbol: string;
  kind: ColumnKind;
  factor: number;
  offset: number;
  /** Plain spellings, lower case, without degree signs and brackets. */
  spellings: readonly string[];
}

const unit = (
  kind: ColumnKind,
  symbol: string,
  factor: number,
  offset: number,
  spellings: readonly string[],
): LogUnit => ({ kind, symbol, factor, offset, spellings });

/** Rotation is kept in revolutions a minute and share in hundredths, as model/units.ts does. */
const LOG_UNITS: readonly LogUnit[] = [
  unit('temperature', '°C', 1, 273.15, ['c', 'degc', 'deg c', 'celsius', 'grad c', 'gradc', 'degrees c']),
  unit('temperature', '°F', 5 / 9, 273.15 - 160 / 9, ['f', 'degf', 'deg f', 'fahrenheit', 'degrees f']),
  unit('temperature', 'K', 1, 0, ['k', 'kelvin']),
  unit('speed', 'km/h', 1 / 3.6, 0, ['kmh', 'km/h', 'kph', 'km h']),
  unit('speed', 'mph', 0.44704, 0, ['mph', 'mi/h', 'miles/h', 'mi h']),
  unit('speed', 'm/s', 1, 0, ['m/s', 'm s', 'mps']),
  unit('speed', 'knots', 1852 / 3600, 0, ['kn', 'kt', 'knots']),
  unit('rotation', 'rpm', 1, 0, ['rpm', '1/min', 'u/min', 'tr/min', 'r/min', 'min-1', '/min']),
  unit('share', '%', 0.01, 0, ['%', 'pct', 'percent', 'prozent']),
  unit('share', '0 to 1', 1, 0, ['0 to 1']),
  unit('switch', 'as written', 1, 0, ['as written', '%', 'rpm', 'v', 'on/off', 'bool', '0/1']),
  unit('time', 's', 1, 0, ['s', 'sec', 'secs', 'second', 'seconds', 'sek']),
  unit('time', 'ms', 0.001, 0, ['ms', 'msec', 'millis', 'milliseconds']),
  unit('time', 'min', 60, 0, ['min', 'mins', 'minute', 'minutes']),
  unit('time', 'h', 3600, 0, ['h', 'hr', 'hours']),
  unit('time', 'days', 86400, 0, ['d', 'days', 'serial day']),
];

/** Units a column of this kind can have. */
export function unitsFor(kind: ColumnKind): readonly LogUnit[] {
  return LOG_UNITS.filter((each) => each.kind === kind);
}

/** The unit of this kind that a text names, if it does. */
export function unitNamed(kind: ColumnKind, text: string): LogUnit | undefined {
  const plain = text
    .toLowerCase()
    .replace(/[°º˚\ufffd[\]()]/g, '')
    .replace(/\s+/g, ' ')
    .trim();
  return unitsFor(kind).find((each) => each.symbol.toLowerCase() === plain || each.spellings.includes(plain));
}
