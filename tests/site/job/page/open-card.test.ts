/** Which card takes what a walk or a calculator hands over, and which vehicle goes with the card that is opened. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { putOnJobCard } from '../../../../src/site/job/page/hand-over.ts';
import { jobs, openJobId, setOpenJob } from '../../../../src/site/job/page/job-store.ts';
import { newJob } from '../../../../src/site/job/page/new-job.ts';
import { switchTo } from '../../../../src/site/job/page/open-card.ts';
import { vehicleToCard } from '../../../../src/site/job/page/vehicle-to-card.ts';
import { Device } from '../../../fuzz/device.ts';

const TARN = { id: 'aldermoor-tarn-16', title: 'Aldermoor Tarn 1.6' };
const QUILL = { id: 'quill-hybrid', title: 'Quill hybrid' };
const READING = { reading: { what: 'Bottom hose', value: '41 °C' } };

/** As much of an element as a line with a link in it needs. */
class Line {
  className = '';
  textContent = '';
  href = '';
  setAttribute(): void {}
  append(...parts: (string | Line)[]): void {
    for (const part of parts) this.textContent += typeof part === 'string' ? part : part.textContent;
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

beforeEach(() => {
  vi.stubGlobal('localStorage', new Device({}));
  vi.stubGlobal('window', { headertank: page });
  vi.stubGlobal(
    'document',
    Object.assign(new EventTarget(), { createElement: () => new Line(), querySelector: () => null }),
  );
  page.vehicle = undefined;
  page.chooseVehicle.mockClear();
});
afterEach(() => vi.unstubAllGlobals());

/** A card that is kept, of this vehicle. */
function keptCard(vehicle?: typeof TARN) {
  const card = { ...newJob(), ...(vehicle && { vehicle }) };
  jobs.change(card.id, card, (now) => now);
  return card;
}

describe('what is handed over', () => {
  test('goes on the open card of the same vehicle, and the card takes the vehicle where it has none', () => {
    const card = keptCard();
    setOpenJob(card.id);
    page.vehicle = TARN;
    expect(putOnJobCard(READING).textContent).toContain('On the job card: ');
    expect(jobs.list()).toHaveLength(1);
    expect(jobs.get(card.id)).toMatchObject({ vehicle: TARN, readings: [READING.reading] });
  });

  test('of another vehicle begins another card: no reading of one car stands on the card of the next', () => {
    const card = keptCard(TARN);
    setOpenJob(card.id);
    page.vehicle = QUILL;
    putOnJobCard(READING);
    expect(jobs.get(card.id)?.readings).toEqual([]);
    const other = jobs.get(openJobId() ?? '');
    expect(other?.id).not.toBe(card.id);
    expect(other).toMatchObject({ vehicle: QUILL, readings: [READING.reading] });
  });

  test('begins a card where none is open', () => {
    putOnJobCard(READING);
    expect(jobs.get(openJobId() ?? '')?.readings).toMatchObject([READING.reading]);
  });

  test('is said to be on no card where the device keeps nothing', () => {
    vi.stubGlobal('localStorage', {
      getItem: () => null,
      setItem: () => {
        throw new DOMException('full', 'QuotaExceededError');
      },
      removeItem: () => {},
    });
    expect(putOnJobCard(READING).textContent).toContain('it is not on a card');
    expect(openJobId()).toBeUndefined();
  });
});

describe('a vehicle that is chosen', () => {
  test('stands on the open card that has none', () => {
    const card = keptCard();
    setOpenJob(card.id);
    expect(vehicleToCard(TARN)).toContain('It stands on the card');
    expect(jobs.get(card.id)?.vehicle).toEqual(TARN);
  });

  test('closes the card of another, which is kept as it was', () => {
    const card = keptCard(TARN);
    setOpenJob(card.id);
    expect(vehicleToCard(QUILL)).toContain('what comes now begins a new one');
    expect(openJobId()).toBeUndefined();
    expect(jobs.get(card.id)?.vehicle).toEqual(TARN);
  });

  test('says nothing of a card that is its own, or of none', () => {
    expect(vehicleToCard(TARN)).toBe('');
    setOpenJob(keptCard(TARN).id);
    expect(vehicleToCard(TARN)).toBe('');
    expect(openJobId()).toBeDefined();
  });
});

describe('a card that is opened', () => {
  test('brings its vehicle', () => {
    page.vehicle = TARN;
    switchTo(keptCard(QUILL));
    expect(page.vehicle).toEqual(QUILL);
  });

  test('without a vehicle takes that of the card that is left off the page', () => {
    setOpenJob(keptCard(TARN).id);
    page.vehicle = TARN;
    switchTo(keptCard());
    expect(page.vehicle).toBeUndefined();
  });

  test('leaves a vehicle that no card brought', () => {
    page.vehicle = TARN;
    switchTo(keptCard());
    expect(page.vehicle).toEqual(TARN);
  });

  test('again changes nothing, whatever vehicle was chosen since', () => {
    const card = keptCard(TARN);
    setOpenJob(card.id);
    page.vehicle = QUILL;
    switchTo(card);
    expect(page.chooseVehicle).not.toHaveBeenCalled();
  });

  test('whose vehicle is off the shelf is not worked on with the figures of another', () => {
    vi.stubGlobal(
      'document',
      Object.assign(new EventTarget(), { querySelector: () => ({ dataset: { vehicles: QUILL.id } }) }),
    );
    page.vehicle = QUILL;
    switchTo(keptCard(TARN));
    expect(page.vehicle).toBeUndefined();
  });
});
