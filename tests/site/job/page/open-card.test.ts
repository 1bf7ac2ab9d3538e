/** Which card takes what a walk or a calculator hands over, and which vehicle goes with the card that is opened. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { HandedOver } from '../../../../src/site/job/handed-over.ts';
import { putOnJobCard } from '../../../../src/site/job/page/hand-over.ts';
import { jobs, openJobId, setOpenJob } from '../../../../src/site/job/page/job-store.ts';
import { newJob } from '../../../../src/site/job/page/new-job.ts';
import { switchTo } from '../../../../src/site/job/page/open-card.ts';
import { isAnotherJob } from '../../../../src/site/job/page/same-job.ts';
import { vehicleToCard } from '../../../../src/site/job/page/vehicle-to-card.ts';
import { Device } from '../../../fuzz/device.ts';

const TARN = { id: 'aldermoor-tarn-16', title: 'Aldermoor Tarn 1.6' };
const QUILL = { id: 'quill-hybrid', title: 'Quill hybrid' };
const READING = { reading: { what: 'Bottom hose', value: '41 °C' } };

/** As much of an element as a line with a link or a question in it needs. */
class Line {
  textContent = '';
  parts: (string | Line)[] = [];
  press: (() => void) | undefined;
  setAttribute(): void {}
  addEventListener(_: string, press: () => void): void {
    this.press = press;
  }
  append(...parts: (string | Line)[]): void {
    this.parts.push(...parts);
    for (const part of parts) this.textContent += typeof part === 'string' ? part : part.textContent;
  }
  replaceChildren(...parts: (string | Line)[]): void {
    this.textContent = '';
    this.parts = [];
    this.append(...parts);
  }
  /** The button in it with this text. */
  button(text: string): Line | undefined {
    return this.parts
      .flatMap((part) => (part instanceof Line ? [part, part.button(text)] : []))
      .find((part) => part?.press !== undefined && part.textContent === text);
  }
}

/** The page's own part: the chosen vehicle, and where the choice goes. */
const page = {
  vehicle: undefined as typeof TARN | undefined,
  root: new URL('https://shelf.example/'),
  chooseVehicle: vi.fn((id: string | undefined) => {
    page.vehicle = [TARN, QUILL].find((each) => each.id === id);
    return true;
  }),
};

beforeEach(async () => {
  vi.stubGlobal('localStorage', new Device({}));
  vi.stubGlobal('window', Object.assign(new EventTarget(), { headertank: page }));
  vi.stubGlobal(
    'document',
    Object.assign(new EventTarget(), { createElement: () => new Line(), querySelector: () => null }),
  );
  await jobs.reload();
  page.vehicle = undefined;
  page.chooseVehicle.mockClear();
});
afterEach(() => vi.unstubAllGlobals());

/** A card that is kept, of this vehicle. */
async function keptCard(vehicle?: typeof TARN) {
  const card = { ...newJob(), ...(vehicle && { vehicle }) };
  await jobs.change(card.id, card, (now) => now);
  return card;
}

/** Hands it over and waits until its line says something. */
async function handOver(handed: HandedOver): Promise<Line> {
  const line: unknown = putOnJobCard(handed);
  if (!(line instanceof Line)) throw new Error('No line came back');
  await expect.poll(() => line.textContent).not.toBe('');
  return line;
}

describe('what is handed over', () => {
  test('goes on the open card of the same vehicle, and the card takes the vehicle where it has none', async () => {
    const card = await keptCard();
    setOpenJob(card.id);
    page.vehicle = TARN;
    expect((await handOver(READING)).textContent).toContain('On the job card: ');
    expect(jobs.list()).toHaveLength(1);
    expect(jobs.get(card.id)).toMatchObject({ vehicle: TARN, readings: [READING.reading] });
  });

  test('of another vehicle begins another card: no reading of one car stands on the card of the next', async () => {
    const card = await keptCard(TARN);
    setOpenJob(card.id);
    page.vehicle = QUILL;
    await handOver(READING);
    expect(jobs.get(card.id)?.readings).toEqual([]);
    const other = jobs.get(openJobId() ?? '');
    expect(other?.id).not.toBe(card.id);
    expect(other).toMatchObject({ vehicle: QUILL, readings: [READING.reading] });
  });

  test('begins a card where none is open', async () => {
    await handOver(READING);
    expect(jobs.get(openJobId() ?? '')?.readings).toMatchObject([READING.reading]);
  });

  test('is said to be on no card where the device keeps nothing', async () => {
    vi.stubGlobal('localStorage', {
      getItem: () => null,
      setItem: () => {
        throw new DOMException('full', 'QuotaExceededError');
      },
      removeItem: () => {},
    });
    expect((await handOver(READING)).textContent).toContain('it is not on a card');
    expect(openJobId()).toBeUndefined();
    for (const { id } of jobs.list()) await jobs.remove(id);
  });
});

describe('where the open card may be another job’s', () => {
  const noHeat = { complaint: { id: 'no-cabin-heat', title: 'No heat' }, ...READING };
  const hot = { complaint: { id: 'hot-in-traffic', title: 'Hot in traffic' }, ...READING };

  test('another complaint is asked about, and either answer puts it there', async () => {
    const card = await keptCard(TARN);
    setOpenJob(card.id);
    page.vehicle = TARN;
    await handOver(noHeat);
    const line = await handOver(hot);
    expect(line.textContent).toContain('Is this the job of the open card?');
    expect(jobs.get(card.id)).toMatchObject({ complaint: noHeat.complaint });
    line.button('No, a new card')?.press?.();
    await expect.poll(() => line.textContent).toContain('On the job card: ');
    expect(jobs.list()).toHaveLength(2);
    expect(jobs.get(card.id)).toMatchObject({ complaint: noHeat.complaint });
    const again = await handOver(noHeat);
    again.button('Yes, this job')?.press?.();
    await expect.poll(() => again.textContent).toContain('On the job card: ');
    expect(jobs.list()).toHaveLength(2);
    expect(jobs.get(openJobId() ?? '')?.remarks[0]?.text).toContain('Hot in traffic');
  });

  test('a card of another day is asked about, for the next car of the model looks the same', () => {
    const card = { ...newJob(), changed: '2026-11-24T16:00:00' };
    expect(isAnotherJob(card, READING, new Date('2026-11-24T17:00:00'))).toBe(false);
    expect(isAnotherJob(card, READING, new Date('2026-11-25T08:00:00'))).toBe(true);
  });
});

describe('a vehicle that is chosen', () => {
  test('stands on the open card that has none', async () => {
    const card = await keptCard();
    setOpenJob(card.id);
    expect(await vehicleToCard(TARN)).toContain('It stands on the card');
    expect(jobs.get(card.id)?.vehicle).toEqual(TARN);
  });

  test('closes the card of another, which is kept as it was', async () => {
    const card = await keptCard(TARN);
    setOpenJob(card.id);
    expect(await vehicleToCard(QUILL)).toContain('what comes now begins a new one');
    expect(openJobId()).toBeUndefined();
    expect(jobs.get(card.id)?.vehicle).toEqual(TARN);
  });

  test('says nothing of a card that is its own, or of none', async () => {
    expect(await vehicleToCard(TARN)).toBe('');
    setOpenJob((await keptCard(TARN)).id);
    expect(await vehicleToCard(TARN)).toBe('');
    expect(openJobId()).toBeDefined();
  });
});

describe('a card that is opened', () => {
  test('brings its vehicle', async () => {
    page.vehicle = TARN;
    switchTo(await keptCard(QUILL));
    expect(page.vehicle).toEqual(QUILL);
  });

  test('without a vehicle takes that of the card that is left off the page', async () => {
    setOpenJob((await keptCard(TARN)).id);
    page.vehicle = TARN;
    switchTo(await keptCard());
    expect(page.vehicle).toBeUndefined();
  });

  test('leaves a vehicle that no card brought', async () => {
    page.vehicle = TARN;
    switchTo(await keptCard());
    expect(page.vehicle).toEqual(TARN);
  });

  test('again changes nothing, whatever vehicle was chosen since', async () => {
    const card = await keptCard(TARN);
    setOpenJob(card.id);
    page.vehicle = QUILL;
    switchTo(card);
    expect(page.chooseVehicle).not.toHaveBeenCalled();
  });

  test('whose vehicle is off the shelf is not worked on with the figures of another', async () => {
    vi.stubGlobal(
      'document',
      Object.assign(new EventTarget(), { querySelector: () => ({ dataset: { vehicles: QUILL.id } }) }),
    );
    page.vehicle = QUILL;
    switchTo(await keptCard(TARN));
    expect(page.vehicle).toBeUndefined();
  });
});
