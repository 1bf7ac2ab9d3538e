import type { Job } from '../../src/model/job.ts';
import type { Note } from '../../src/model/note.ts';
import type { NoteDraft } from '../../src/site/note/note-draft.ts';

const AT = '2026-11-25T14:10:00.000Z';

/** A card with something of everything, to be spoilt. */
export const SOUND_JOB: Job = {
  id: 'job-abcdefgh',
  opened: AT,
  changed: AT,
  name: 'Tarn, low at cruise',
  plate: 'X 1',
  distance: '120000 km',
  vehicle: { id: 'aldermoor-tarn-16', title: 'Aldermoor Tarn 1.6' },
  said: 'needle drops on the hill',
  complaint: { id: 'reads-low-at-cruise', title: 'Reads low at cruise' },
  answers: [{ key: 'level-cold', asked: 'Where is the level?', answer: 'At the mark' }],
  proven: { id: 'thermostat-stuck-open', title: 'Thermostat stuck open' },
  readings: [{ id: 'reading-abcdefgh', at: AT, what: 'Bottom hose', value: '41 °C' }],
  litres: [
    { id: 'litres-abcdefgh', at: AT, way: 'drained', litres: 3.4 },
    { id: 'litres-abcdefgj', at: AT, way: 'filled', litres: 3.2 },
  ],
  torques: { 'thermostat-housing': { at: AT, what: 'Thermostat housing', figure: '10 N·m' } },
  remarks: [{ id: 'remark-abcdefgh', at: AT, text: 'Hose clip rusty.' }],
  steps: {
    'thermostat-replace': {
      title: 'Replace the thermostat',
      done: [{ step: 4, at: AT, what: 'Cool down.' }],
    },
  },
  open: [
    { id: 'open-abcdefgh', at: AT, what: 'Level after the night' },
    { id: 'open-abcdefgj', at: AT, what: 'Ring the customer', done: { at: AT, value: 'said' } },
  ],
  drafted: 'thermostat-stuck-open',
  found: 'The thermostat stood open.',
  did: 'Replaced it.',
  watch: 'The level after a week.',
};

export const SOUND_NOTE: Note = {
  title: 'Second bleed screw',
  by: 'AW',
  date: '2026-11-25',
  vehicle: 'tarn',
  text: 'Look behind the coil pack.',
  status: 'proposed',
  sources: [{ measured: 'One car' }],
  reviewed: '2026-11-25',
};

export const SOUND_DRAFT: NoteDraft = {
  id: 'note-abcdefgh',
  changed: AT,
  title: 'Second bleed screw',
  by: 'AW',
  date: '2026-11-25',
  vehicle: 'aldermoor-tarn-16',
  symptom: '',
  cause: '',
  procedure: '',
  text: 'Look behind the coil pack.',
  known: 'measured',
  source: 'One car',
  figure: 'thermostat.opens',
  is: '88 °C',
  'is-from': 'the plate',
  sent: '',
};
