/** What the practice page fetches: the list of cases, the cases of a complaint, vehicles, the simulated car. */
import '../../browser/page-globals.ts';
import { loadScript } from '../../browser/load-script.ts';
import { unpacked } from '../../job/page/packed.ts';
import type { ShelfSheet } from '../../vehicle/vehicle-sheet.ts';
import { Diagnoser } from '../../walk/page/diagnose.ts';
import type { WalkTexts } from '../../walk/walk-data.ts';
import type { PracticeCase, PracticeIndex, PracticePack } from '../practice-data.ts';

/** The cases of one complaint, ready to be played. */
export interface Bench {
  pack: PracticePack;
  texts: WalkTexts;
  diagnoser: Diagnoser;
  cases: PracticeCase[];
}

/** A script runs once, so what it brought is kept, and one that failed is asked for again. */
function once<T>(load: () => Promise<T>): () => Promise<T> {
  let begun: Promise<T> | undefined;
  return () => {
    begun ??= load().catch((error: unknown) => {
      begun = undefined;
      throw error;
    });
    return begun;
  };
}

/** Every complaint with its codes. @throws Error when it cannot be had */
export const loadIndex = once(async (): Promise<PracticeIndex> => {
  const index = new Promise<PracticeIndex>((resolve) => {
    window.headertank.receivePracticeIndex = resolve;
  });
  await loadScript('../data/practice');
  return index;
});

const benches = new Map<string, () => Promise<Bench>>();

/** @throws Error when it cannot be had, or the site has changed under the page */
export function loadBench(symptom: string): Promise<Bench> {
  const load = benches.get(symptom) ?? once(() => fetchBench(symptom));
  benches.set(symptom, load);
  return load();
}

async function fetchBench(symptom: string): Promise<Bench> {
  const pack = new Promise<PracticePack>((resolve) => {
    window.headertank.receivePractice = resolve;
  });
  const texts = new Promise<WalkTexts>((resolve) => {
    window.headertank.receiveWalkTexts = resolve;
  });
  await Promise.all([loadScript(`../data/practice/${symptom}`), loadScript(`../data/walks/${symptom}`)]);
  const [own, words] = await Promise.all([pack, texts]);
  if (own.walk.stamp !== words.stamp) throw new Error('The shelf has changed under this page');
  return { pack: own, texts: words, diagnoser: new Diagnoser(own.walk), cases: await casesIn(own.cases) };
}

async function casesIn(packed: string): Promise<PracticeCase[]> {
  const bytes = Uint8Array.from(atob(packed), (letter) => letter.charCodeAt(0));
  return JSON.parse(await unpacked(bytes));
}

const vehicles = new Map<string, () => Promise<ShelfSheet>>();

/** A vehicle's figures; the chosen vehicle stays the one it is. @throws Error when they cannot be had */
export function loadVehicle(id: string): Promise<ShelfSheet> {
  const load = vehicles.get(id) ?? once(() => fetchVehicle(id));
  vehicles.set(id, load);
  return load();
}

async function fetchVehicle(id: string): Promise<ShelfSheet> {
  const { headertank } = window;
  const { vehicle } = headertank;
  if (vehicle?.id === id && !vehicle.own) return vehicle;
  const before = headertank.receiveVehicle;
  const sheet = new Promise<ShelfSheet>((resolve) => {
    headertank.receiveVehicle = (received) =>
      received.id === id && !received.own ? resolve(received) : before.call(headertank, received);
  });
  try {
    await loadScript(`../data/vehicles/${id}`);
    return await sheet;
  } finally {
    headertank.receiveVehicle = before;
  }
}
