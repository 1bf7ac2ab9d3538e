/** The verdict in words, in the reader's units. Sentences first, then why, then what to do, then what stays open. */
import { twoDigits } from '../model/day.ts';
import { type Habit, METRIC } from '../model/habit.ts';
import { quantityText } from '../model/show-quantity.ts';
import type { NoVerdictReason } from './cold-side.ts';
import type { TraceEvent } from './events.ts';
import { STAMP_TOLERANCE } from './expected-band.ts';
import { pausedAtStamp } from './first-rise.ts';
import type { TraceJudgement } from './judge-trace.ts';
import { levelOf } from './level.ts';
import { MONITOR_COLDEST, MONITOR_DISTANCE } from './monitor.ts';
import { type Figure, STOP_ABOVE_FAN, type TraceVehicle } from './vehicle.ts';

/** A temperature in kelvin to whole degrees of the reader; a dash for none. */
export function degrees(kelvin: number, habit: Habit = METRIC): string {
  if (!Number.isFinite(kelvin)) return '–';
  return quantityText(
    { dimension: 'temperature', low: kelvin, high: kelvin, unit: '°C', decimals: 0 },
    habit,
  );
}

/** A figure of the vehicle; a general range is called one. */
export function figureText({ low, high, from }: Figure, habit: Habit = METRIC): string {
  const text = quantityText({ dimension: 'temperature', low, high, unit: '°C', decimals: 0 }, habit);
  if (from === 'nearest') return `${text} (nearest vehicle)`;
  return from === 'general' ? `${text} (general)` : text;
}

/** What the figure is past which nobody drives on, in words. */
export function stopText({ stopBy }: TraceVehicle, habit: Habit = METRIC): string {
  return {
    'fast stage': 'where its fan goes to the fast stage',
    'over the fan': `${differenceText(STOP_ABOVE_FAN, habit)} over its fan’s start`,
    warning: 'where its warning comes',
  }[stopBy];
}

/** A difference of temperatures. */
function differenceText(kelvin: number, habit: Habit = METRIC): string {
  return habit.temperature === '°F' ? `${Math.round(kelvin * 1.8)}\u00a0°F` : `${Math.round(kelvin)}\u00a0K`;
}

/** Seconds as minutes and seconds, `12:05`; with hours above one. */
export function clockText(seconds: number): string {
  const whole = Math.round(seconds);
  const [hours, minutes] = [Math.floor(whole / 3600), Math.floor((whole % 3600) / 60)];
  return hours > 0
    ? `${hours}:${twoDigits(minutes)}:${twoDigits(whole % 60)}`
    : `${minutes}:${twoDigits(whole % 60)}`;
}

export interface VerdictText {
  /** The verdict, one or two sentences. */
  sentence: string;
  /** What it rests on. */
  because: string;
  /** What to do next. */
  next: string;
  /** What the log leaves open, a sentence each. */
  open: string[];
}

/** A judged log in words, in the reader’s units. */
export function tell(judged: TraceJudgement, vehicle: TraceVehicle, habit: Habit = METRIC): VerdictText {
  const { verdict } = judged;
  const parts = FINDING_WORDS[verdict.finding](judged, vehicle, habit);
  const likely = verdict.sure === 'likely' ? ' Likely, not certain.' : '';
  return {
    sentence: `${verdict.stop ? 'Stop. ' : ''}${parts.sentence}${likely}`,
    because: parts.because,
    next: parts.next,
    open: [
      ...leftLines(judged, habit),
      ...verdict.open
        // The line of pump and radiator says more.
        .filter((refusal) => !(verdict.clears && refusal === 'radiator-not-asked'))
        .map((refusal) => {
          const words = REFUSALS[refusal];
          return typeof words === 'string' ? words : words(judged, vehicle, habit);
        }),
    ],
  };
}

/** What a sound log does not clear, a line for each test that does. */
function leftLines(judged: TraceJudgement, habit: Habit): string[] {
  const { clears, open } = judged.verdict;
  // What is said of a fan that was not needed or did not show is said below with its figures.
  const said = open.includes('fan-not-asked') || open.includes('fan-did-not-show');
  return (clears?.left ?? [])
    .filter(({ line }) => !(line === 'fan' && said))
    .map(({ words, by }) => `Not cleared: ${words.join(by === undefined ? '' : differenceText(by, habit))}`);
}

type Parts = Omit<VerdictText, 'open'>;
type Say = (judged: TraceJudgement, vehicle: TraceVehicle, habit: Habit) => Parts;

const LEVEL_FIRST = 'Engine off, let it cool, leave the cap alone. Then level first, and the walk.';

function endOfScale({ faults: [fault] }: TraceJudgement['sensor'], habit: Habit): string {
  return fault ? degrees(fault.to, habit) : 'the end of its scale';
}

const FINDING_WORDS: Record<TraceJudgement['verdict']['finding'], Say> = {
  sound: (judged, vehicle, habit) => {
    const { cold, course, hot } = judged;
    return cold.is === 'opens' && course.pause
      ? {
          sentence: `The thermostat opens where it should: the rise breaks off at ${degrees(course.pause.kelvin, habit)}, and it stays about ${degrees(cold.held.level, habit)}, and it should start to open at ${figureText(vehicle.opens, habit)}.`,
          because: `A thermostat standing open gives the rise no such point, it fades. From there on between ${degrees(cold.held.low, habit)} and ${degrees(cold.held.high, habit)} for ${clockText(cold.held.seconds)}. ${judged.verdict.clears?.summary ?? ''}`,
          next: 'How it holds in the wind is shown by ten minutes at one speed.',
        }
      : {
          sentence: `The thermostat holds: ${degrees(levelOf(cold), habit)} at steady speed, and it should start to open at ${figureText(vehicle.opens, habit)}.`,
          because: `${course.pause && pausedAtStamp(course, vehicle) ? `The rise breaks off at ${degrees(course.pause.kelvin, habit)}, as it does when a shut thermostat opens.` : 'A thermostat standing open would not have held this on this drive.'} Highest ${degrees(hot.highest, habit)}. ${judged.verdict.clears?.summary ?? ''}`,
          next: 'If the customer still sees it, ask when: in traffic, on a hill, with the heater on. Log that drive. If his gauge shows it while the scan tool does not, the fault is in the gauge or its sensor.',
        };
  },
  'cold-at-speed': (judged, vehicle, habit) => {
    const { cold } = judged;
    const next =
      'Before the thermostat comes out, compare scan tool and hose: a sensor that reads low draws the same line, with a poor contact even one that agreed with the air when cold.';
    if (cold.is === 'unlike sound') return { ...unlikeSound(cold, judged, vehicle, habit), next };
    const level = degrees(levelOf(cold), habit);
    const before =
      cold.is === 'falls'
        ? `warmed to ${degrees(cold.settled.before, habit)}, then sinks to ${level} at steady speed`
        : `no more than ${level} at steady speed`;
    const least = 'expected' in cold ? cold.expected : undefined;
    return {
      sentence: `The thermostat opens too early or stands open: ${before}, and it should start to open at ${figureText(vehicle.opens, habit)}.`,
      because:
        least === undefined
          ? ''
          : `On this drive and this day a sound engine would have read ${degrees(least, habit)} or more there.`,
      next,
    };
  },
  'low-throughout': ({ cold }, { opens }, habit) => ({
    sentence: `It regulates, but too low: ${degrees(levelOf(cold), habit)}, ${differenceText(opens.low - levelOf(cold), habit)} under the ${figureText(opens, habit)} where it should open.`,
    because:
      'The same figure comes back at different speeds, so something still regulates: a thermostat of a lower rating, one that opens early, or a sensor that reads low by as much.',
    next: 'Compare scan tool and hose first. If they agree, read the stamp on the thermostat.',
  }),
  'straight-past': ({ hot, course, verdict }, { opens }, habit) => ({
    sentence: `It climbs straight past ${figureText(opens, habit)} to ${degrees(hot.highest, habit)}: no heat gets to the air.`,
    because: course.pause
      ? 'The rise goes on after the opening as fast as before.'
      : `The rise does not break off where the thermostat should open.${verdict.causes.includes('sensor-reads-high') ? ' A sensor that reads high draws the same line over a cooler engine.' : ''}`,
    next: LEVEL_FIRST,
  }),
  'swings-hot': ({ hot }, _vehicle, habit) => ({
    sentence: `Hot, it falls and rises by itself${'swing' in hot ? `, by ${differenceText(hot.swing, habit)} within a minute` : ''}: air or steam passes the sensor.`,
    because:
      'Too slow for a loose wire and too quick for an engine full of coolant. Low coolant, trapped air, gas from a head gasket; less often a thermostat that sticks and lets go.',
    next: LEVEL_FIRST,
  }),
  'dips-warming': ({ dips }, _vehicle, habit) => ({
    sentence: `While it warms it falls by ${differenceText(dips?.deepest ?? 0, habit)} within seconds and comes back as quickly, more than once: air passes the sensor.`,
    because:
      'Under its opening a full circuit has no water so cold to send past the sensor. A pump held still while cold can.',
    next: 'Cold, the level; then bleed and log a cold start again. Dips that come back are gas: test for it.',
  }),
  'no-fan': ({ hot, fan }, { fanOn }, habit) => ({
    sentence: `Standing, it climbs past ${figureText(fanOn, habit)} to ${degrees(hot.highest, habit)} and no fan brings it down.`,
    because:
      fan.from === 'column'
        ? 'The log’s fan column shows no fan at that time.'
        : 'At speed it was in order; the log has no fan column, so look whether the fan turned.',
    next: 'Engine off before it boils. Then the fan: fuse and holder, relay, motor, wiring, in the order of the walk.',
  }),
  'fan-does-not-help': ({ hot }, _vehicle, habit) => ({
    sentence: `Standing, it climbs to ${degrees(hot.highest, habit)} though the log shows the fan on.`,
    because:
      'Many logs show that the fan was asked for, not that it turned. If it turns, the heat does not get to its air: fins, a radiator blocked inside, or too little flow.',
    next: `${LEVEL_FIRST} Filled and warm again, look whether the fan turns, hands away from it.`,
  }),
  'hot-at-speed': ({ hot, band, grid }, { opens }, habit) => {
    const at = 'at' in hot ? Math.round(hot.at / grid.step) : 0;
    const most = band?.high[at];
    return {
      sentence: `Too hot at speed: ${degrees(hot.highest, habit)}, with a thermostat that opens at ${figureText(opens, habit)}.`,
      because:
        most === undefined
          ? ''
          : `On this drive and this day a sound engine would have stayed under ${degrees(most, habit)}.`,
      next: LEVEL_FIRST,
    };
  },
  'holds-high': ({ hot }, { opens }, habit) => ({
    sentence: `It holds, but too high: ${'level' in hot ? degrees(hot.level, habit) : degrees(hot.highest, habit)} at steady speed, with a thermostat that opens at ${figureText(opens, habit)}.`,
    because:
      'On a mild day at moderate speed a radiator needs little of what it can do, and the thermostat little of its lift. So far above the opening, the heat does not get out as it should, or the thermostat in it is not the one of this car.',
    next: 'Cold, the level first. Then compare scan tool and hose: a sensor may read high. Then the temperature of both hoses, and the fins. Watch the reading on the way: it has little left for a hill or a hot day.',
  }),
  'too-hot': ({ hot }, vehicle, habit) => ({
    sentence: `Too hot: ${degrees(hot.highest, habit)}, past ${figureText(vehicle.stopAt, habit)}, ${stopText(vehicle, habit)}.`,
    because: 'The log does not show what it did before, so it names no cause.',
    next: LEVEL_FIRST,
  }),
  'sensor-jumps': ({ sensor }, _vehicle, habit) => {
    const fault = sensor.faults[0];
    return {
      sentence: `The sensor or its wiring: the reading jumps${fault ? ` from ${degrees(fault.from, habit)} to ${degrees(fault.to, habit)}` : ''}, faster than coolant can.`,
      because: fault
        ? `First at ${clockText(fault.at)}, ${fault.times === 1 ? 'once' : `${fault.times} such readings in all`}.`
        : '',
      next: 'Move plug and loom with the engine idling and watch the reading. What the rest of the log says about the thermostat is not to be relied on.',
    };
  },
  'sensor-open': ({ sensor }, _vehicle, habit) => ({
    sentence: `The sensor circuit is open: it reads ${endOfScale(sensor, habit)}.`,
    because:
      'Nothing connected reads as the bottom of the scale. Many controllers then run the fans and put in a figure of their own.',
    next: 'Unplug the sensor and bridge its plug: where the reading goes to the top, the wiring is sound and the sensor is open.',
  }),
  'sensor-shorted': ({ sensor }, _vehicle, habit) => ({
    sentence: `The sensor circuit is shorted: it reads ${endOfScale(sensor, habit)}.`,
    because:
      'A wire to earth reads as the top of the scale, hotter than coolant gets. Many controllers then run the fans and put in a figure of their own.',
    next: 'Unplug the sensor: where the reading falls to the bottom, the sensor is shorted; where it stays, the wire is.',
  }),
  'sensor-stands-still': ({ sensor }, _vehicle, habit) => {
    const fault = sensor.faults[0];
    return {
      sentence: `The reading leaps${fault ? ` to ${degrees(fault.to, habit)}` : ''} and never moves again: that is not the coolant.`,
      because: `${fault ? `At ${clockText(fault.at)}, from ${degrees(fault.from, habit)}. ` : ''}A controller that no longer trusts its sensor puts in a fixed figure.`,
      next: 'Read the codes, then compare scan tool and hose.',
    };
  },
  'sensor-under-air': ({ start }, _vehicle, habit) => ({
    sentence: `The sensor reads low: ${degrees(start.coolant, habit)} at the start, ${differenceText(start.underAir ?? start.underOneAir ?? 0, habit)} under the air, and coolant is never colder than the air it stood in.`,
    because:
      start.underAir === undefined
        ? 'Only one air was logged, and a morning’s sun does not make so much.'
        : 'Intake and outside air agree with each other; the coolant sensor does not.',
    next: 'Compare with infrared on the hose after a night’s standing, then measure the sensor.',
  }),
  'cannot-tell': ({ cold, hot }, _vehicle, habit) => ({
    sentence: 'This log cannot tell.',
    because: `Highest ${degrees(hot.highest, habit)}${'settled' in cold && cold.settled ? `, ${degrees(cold.settled.level, habit)} at speed` : ''}. Nothing in it is surely wrong, and nothing proves that it is right.`,
    next: 'Log again: from cold, blower off, ten minutes at one speed on a level road, then standing until the fan has come and gone.',
  }),
};

type UnlikeSound = Extract<TraceJudgement['cold'], { is: 'unlike sound' }>;

function unlikeSound(
  { sank, likeness }: UnlikeSound,
  { hot }: TraceJudgement,
  { opens }: TraceVehicle,
  habit: Habit,
): Omit<Parts, 'next'> {
  const other = Math.min(likeness.open, likeness.early);
  const fits = `Of all sound engines, heater on or off, the nearest is ${differenceText(likeness.sound, habit)} off this log on average; one whose thermostat opens early or stands open comes within ${differenceText(Math.max(1, other), habit)}.`;
  if (!sank)
    return {
      sentence: `The thermostat opens too early or stands open: no more than ${degrees(hot.highest, habit)} on this drive, and it should start to open at ${figureText(opens, habit)}.`,
      because: fits,
    };
  return {
    sentence: `The thermostat opens too early or stands open: driven, it sinks from ${degrees(sank.from, habit)} to ${degrees(sank.to, habit)}, and it should not even begin to open under ${figureText(opens, habit)}.`,
    because: `Under its opening a thermostat keeps the radiator out, and driving can only warm the engine. ${fits}`,
  };
}

const REFUSALS: Record<NoVerdictReason, string | ((...of: Parameters<Say>) => string)> = {
  'too-short': 'The log is too short: two minutes are the least, twenty are good.',
  'no-speed':
    'The log has no road speed, and what a thermostat does shows at speed. Log it too, or choose its column below.',
  'never-at-speed': 'It was never at speed, 55 km/h and more, for three minutes.',
  'outside-unknown':
    'The temperature outside is not known, so nothing says how warm a sound engine would have been. Type it below.',
  'never-settled': 'The temperature had not settled at speed when the log or the stretch ended.',
  'cold-day':
    'On so cold a day a sound engine may run this cold too. Nobody is to be blamed from this log; cover part of the grille and log again.',
  'heater-unknown':
    'With the heater on full a sound engine may be this cold on such a day. Say below whether it was off, or log again with the blower off.',
  'hot-day': 'On so warm a drive an engine with its thermostat stuck open would have held as well.',
  'near-the-limit': ({ cold }, { opens }, habit) =>
    'settled' in cold && cold.settled && cold.settled.level < opens.low
      ? `It reads ${degrees(cold.settled.level, habit)} at speed, under the ${figureText(opens, habit)} where it should start to open, by more than stamp and reading are out and by less than a thermostat is blamed for. Compare scan tool and hose, then log again.`
      : 'It is so near to the limit that sensor and stamp could make the difference.',
  'dipped-once':
    'It fell once by several degrees and came back within two minutes, and nothing on the drive explains it. Air passing the sensor does that: level first, then log again.',
  'fan-at-other-figure': ({ fanElsewhere }, { fanOn }, habit) =>
    fanElsewhere === undefined
      ? ''
      : `The fan came and went at ${degrees(fanElsewhere, habit)}, and it starts at ${figureText(fanOn, habit)}: the reading is low by the difference, or the fan is not the one of these figures. Compare scan tool and hose at idle, then judge the thermostat.`,
  'vehicle-unknown': ({ cold }, { opens }, habit) => {
    const level = cold.is === 'unknown' ? cold.settled?.level : undefined;
    const seen =
      level !== undefined && level < opens.high + STAMP_TOLERANCE
        ? `It regulates at ${degrees(level, habit)}: right for a stamp up to ${degrees(level + STAMP_TOLERANCE, habit)}, too low for a higher one. `
        : 'Whether these are the right figures depends on the stamp of its thermostat and its fan. ';
    return `${seen}Type the stamp and the fan’s figures below, or choose the vehicle.`;
  },
  'fan-not-asked': ({ asked, hot }, { fanOn }, habit) => {
    const over = asked.is === 'not asked' ? asked.secondsOver : 0;
    return over > 0
      ? `Over ${figureText(fanOn, habit)}, where the fan starts, it stood for ${clockText(over)} only; nothing is said about the fan.`
      : `The fan was not needed on this drive: highest ${degrees(hot.highest, habit)}, and it starts at ${figureText(fanOn, habit)}. Nothing is said about it.`;
  },
  'fan-did-not-show': ({ asked, fan }, { fanOn }, habit) =>
    asked.is === 'did not show'
      ? `The fan should have come at ${clockText(asked.at)}: over ${figureText(fanOn, habit)}, where it starts, for ${clockText(asked.seconds)}, to ${degrees(asked.highest, habit)}, and ${fan.from === 'column' ? 'the log’s fan column shows none' : 'nothing in the log shows that it ran'}. Let it idle up to that figure again and look.`
      : '',
  'may-read-high':
    'It begins far over the air and holds over the stamp. If it stood overnight, the sensor reads high: compare scan tool and hose.',
  'stands-still': ({ standing }, _vehicle, habit) =>
    standing
      ? `The reading stands at ${degrees(standing.to, habit)} from ${clockText(standing.at)} to the end, whatever the drive does. It did not leap there, so this log does not prove that it is not the coolant. Read the codes and compare scan tool and hose before anything is judged by it.`
      : '',
  'fan-did-not-cool': ({ asked }, _vehicle, habit) =>
    asked.is === 'came' && asked.rose
      ? `The log has the fan on from ${clockText(asked.rose.at)}, and the reading went on rising from ${degrees(asked.rose.from, habit)} to ${degrees(asked.rose.to, habit)}. Asked for and not turned, or the first of two stages: look, hands away from it.`
      : '',
  'radiator-not-asked': 'Radiator and pump were not put to work: that takes minutes at speed on a warm day.',
  'over-the-stamp': ({ hot }, { opens }, habit) =>
    hot.is === 'not hot' && hot.overStamp !== undefined
      ? `It holds ${differenceText(hot.overStamp - opens.high, habit)} over the stamp: usual with the thermostat at the pump’s inlet, too much at the outlet. Choose a vehicle built alike; compare scan tool and hose.`
      : '',
};

/** Verdicts on the thermostat; to any other the regulation's test of it has nothing to say. */
const ON_THE_THERMOSTAT: ReadonlySet<string> = new Set(['sound', 'cold-at-speed', 'low-throughout']);

/** The regulation's own measure beside the verdict; undefined where it is none on the thermostat, and beside a stop. */
export function monitorText(
  { monitor, verdict, start }: TraceJudgement,
  { opens }: TraceVehicle,
  habit: Habit = METRIC,
): string | undefined {
  if (verdict.stop || !ON_THE_THERMOSTAT.has(verdict.finding)) return undefined;
  const early = verdict.finding !== 'sound';
  const limit = `${degrees(monitor.threshold, habit)}, ${differenceText(MONITOR_DISTANCE, habit)} under ${degrees(opens.low, habit)}`;
  switch (monitor.result) {
    case 'meets':
      return `By the regulation’s own measure it passes: the coolant came to ${limit}, after ${clockText(monitor.reachedAt ?? 0)} and stayed above it.${early ? ' It looks no nearer to the stamp than that, so it can pass with a thermostat that opens too early; the verdict above stands.' : ''}`;
    case 'falls back':
      return `By the regulation’s own measure it fails: it came to ${limit}, after ${clockText(monitor.reachedAt ?? 0)} and then fell back under it for ${clockText(monitor.secondsUnderAfter)}.${early ? '' : WHOLE_DRIVE}`;
    case 'does not reach':
      return `By the regulation’s own measure it fails: it never came to ${limit}.${early ? '' : WHOLE_DRIVE}`;
    case 'does not apply':
      return `The regulation’s own measure does not apply: it was ${degrees(start.outside?.kelvin ?? Number.NaN, habit)} outside, and under ${degrees(MONITOR_COLDEST, habit)} a maker may leave it off, as remembered.`;
    case 'cannot tell':
      return `By the regulation’s own measure nothing can be said: it had not come to ${limit} when the log ended, and that may be the log’s fault.`;
  }
}

const WHOLE_DRIVE =
  ' It asks that of the whole drive; the verdict above asks it where a thermostat can hold.';

/** What happened, for the table. */
export function eventText({ kind, until, at, from, kelvin }: TraceEvent, habit: Habit = METRIC): string {
  const lasted = until === undefined ? '' : ` for ${clockText(until - at)}`;
  const course =
    from === undefined || Number.isNaN(from)
      ? ''
      : `, from ${degrees(from, habit)} to ${degrees(kelvin, habit)}`;
  switch (kind) {
    case 'start':
      return 'The log begins';
    case 'reached':
      return `First reaches ${degrees(kelvin, habit)}`;
    case 'opens':
      return 'The rise breaks off: the thermostat starts to open';
    case 'pause':
      return 'The rise breaks off';
    case 'at speed':
      return `At speed${lasted}${course}`;
    case 'standing':
      return `Standing${lasted}${course}`;
    case 'fan on':
      return 'The fan starts';
    case 'fan off':
      return 'The fan stops';
    case 'highest':
      return 'Highest';
    case 'heat soak':
      return `Engine off, heat soak${lasted}${course}`;
    case 'sensor fault':
      return `The reading is not the coolant’s: leaves ${degrees(from ?? kelvin, habit)} for ${degrees(kelvin, habit)}`;
    case 'gap':
      return `Nothing logged${lasted}`;
    case 'end':
      return 'The log ends';
  }
}
