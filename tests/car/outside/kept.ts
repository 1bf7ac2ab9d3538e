/** What the outside figures say of the simulated car, as the site keeps it. */
import { CARS, type Compared } from './compare.ts';
import { NOT_HELD } from './not-held.ts';

export interface Missed {
  readonly what: string;
  readonly unit: string;
  readonly range: readonly [number, number];
  readonly middle: number;
  readonly source: string;
  readonly why: string;
}

export interface Figures {
  readonly made: string;
  readonly by: string;
  readonly cars: number;
  readonly held: number;
  readonly published: number;
  readonly inside: number;
  /** Rows that a figure of the model was set by; meeting them proves nothing more. */
  readonly fitted: number;
  readonly notHeld: number;
  /** The furthest from its source's range first, by the share of the nearer end. */
  readonly missed: readonly Missed[];
}

/** The hundred drawn cars beside every row, counted. */
export function summarise(compared: readonly Compared[]): Figures {
  const off = ({ row, middle }: Compared) => {
    const [low, high] = row.range;
    const end = middle < low ? low : high;
    return middle >= low && middle <= high ? 0 : Math.abs(middle - end) / Math.max(1e-9, Math.abs(end));
  };
  const missed = compared.filter((one) => off(one) > 0).sort((a, b) => off(b) - off(a));
  return {
    made: new Date().toISOString().slice(0, 10),
    by: 'npx node tests/bench/car.ts --write',
    cars: CARS,
    held: compared.length,
    published: compared.filter(({ row }) => row.kind === 'published').length,
    inside: compared.length - missed.length,
    fitted: compared.filter(({ row }) => row.fitted).length,
    notHeld: Object.keys(NOT_HELD).length,
    missed: missed.map(({ row, middle }) => ({
      what: row.what,
      unit: row.unit,
      range: row.range,
      middle: Number(middle.toPrecision(3)),
      source: row.source,
      why: row.explained?.why ?? 'not explained',
    })),
  };
}

/** Text of the file that the site reads. */
export function figuresText(figures: Figures): string {
  return `${JSON.stringify(figures, null, 1)}\n`;
}
