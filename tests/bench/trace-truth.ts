/**
 * Truth against verdict on the road tests of two makers, with the car's own stamp and fan, with the figures of the
 * nearest car on the shelf, and with none. Prints and never fails: npx node tests/bench/trace-truth.ts [tests] [first] [first|second]
 */
import type { VehicleFigures } from '../../src/trace/vehicle.ts';
import { shelf } from '../shelf/shelf.ts';
import { MAKERS, ownFigures, type RoadTest, type Scored, scored } from '../trace/both-makers.ts';
import { countBy } from '../trace/run-simulation.ts';

const [count = 260, first = 40_000] = process.argv.slice(2, 4).map(Number);
const only = process.argv[4];

const shelfCars: readonly VehicleFigures[] = [...shelf.records.vehicle.values()].flatMap(({ data }) => {
  if (!data.figures['thermostat.opens'] || data.layout.power === 'battery electric') return [];
  const figures = Object.entries(data.figures).flatMap(([path, figure]) =>
    figure ? [[path, { quantity: figure.is }] as const] : [],
  );
  return [{ title: data.title, layout: data.layout, figures: Object.fromEntries(figures) }];
});

/** The car on the shelf whose stamp, and then whose fan, is nearest. */
function nearest({ stamp, fanOn }: RoadTest): VehicleFigures | undefined {
  const far = ({ figures }: VehicleFigures) =>
    Math.abs((figures['thermostat.opens']?.quantity.low ?? 0) - 273.15 - stamp) +
    0.2 * Math.abs((figures['fan.on']?.quantity.low ?? 400) - 273.15 - fanOn);
  return shelfCars.reduce((a, b) => (far(b) < far(a) ? b : a));
}

const SHORT: Record<string, string> = {
  'cold-at-speed': 'cold',
  'low-throughout': 'low',
  'straight-past': 'past',
  'swings-hot': 'swings',
  'fan-does-not-help': 'fan no help',
  'hot-at-speed': 'hot speed',
  'holds-high': 'high',
  'sensor-jumps': 'jumps',
  'sensor-open': 'open',
  'sensor-shorted': 'short',
  'sensor-stands-still': 'still',
  'sensor-under-air': 'under air',
  'cannot-tell': "can't tell",
};

function table(all: readonly Scored[]): void {
  const findings = [...countBy(all, ({ finding }) => finding).keys()].sort();
  const faults = [...countBy(all, ({ fault }) => fault).keys()];
  const cell = (text: string | number) => String(text || '·').padStart(11);
  console.log(
    `${''.padEnd(24)}${findings.map((each) => cell(SHORT[each] ?? each)).join('')}${cell('wrong')}`,
  );
  for (const fault of faults) {
    const part = all.filter((each) => each.fault === fault);
    const counts = countBy(part, ({ finding }) => finding);
    const wrong = part.filter(isWrong).length;
    console.log(
      `${fault.padEnd(24)}${findings.map((each) => cell(counts.get(each) ?? 0)).join('')}${cell(wrong)}`,
    );
  }
}

function isWrong({ score }: Scored): boolean {
  return score === 'wrong blame' || score === 'missed';
}

for (const [maker, make] of Object.entries(MAKERS)) {
  if (only !== undefined && only !== maker) continue;
  const tests = Array.from({ length: count }, (_, at) => make(first + at));
  for (const [figures, sheetFor] of [
    ['exact', ownFigures],
    ['nearest', nearest],
    ['none', () => undefined],
  ] as const) {
    const all = tests.map((each) =>
      scored(each, sheetFor(each), figures === 'nearest' ? 'nearest' : 'this car'),
    );
    const scores = countBy(all, ({ score }) => score);
    const share = (name: string) => `${name} ${scores.get(name) ?? 0}`;
    console.log(
      `\n${maker} maker, ${count} from ${first}, figures ${figures}: ${['right', 'cannot tell', 'missed', 'wrong blame'].map(share).join(', ')}`,
    );
    table(all);
    const wrong = all.filter(isWrong);
    if (wrong.length > 0)
      console.log(
        `  ${wrong.map(({ number, fault, finding }) => `${number} ${fault} -> ${finding}`).join('; ')}`,
      );
    const why = countBy(
      all.filter(({ score }) => score === 'cannot tell').flatMap(({ open }) => open),
      (each) => each,
    );
    console.log(`  left open: ${[...why].map(([reason, times]) => `${reason} ${times}`).join(', ')}`);
  }
}
