/** What is handed in: saved notes, exports of job cards, and what lies on the device from before. */
import fc from 'fast-check';
import { afterEach, expect, test, vi } from 'vitest';
import { checkNote } from '../../src/library/check-note.ts';
import { takeIn } from '../../src/library/take-in.ts';
import { jobCardsSchema, jobSchema } from '../../src/model/job.ts';
import { isNote, type UnfinishedNote } from '../../src/model/note.ts';
import { noteText } from '../../src/model/note-file.ts';
import { isJob, jobs } from '../../src/site/job/page/job-store.ts';
import { litresSentence } from '../../src/site/job/page/litres.ts';
import { mergedJobs } from '../../src/site/job/page/merge-jobs.ts';
import { jobTitle } from '../../src/site/job/page/new-job.ts';
import { noteFromJob } from '../../src/site/job/page/note-from-job.ts';
import { exported, imported } from '../../src/site/job/page/transfer.ts';
import { drafts, noteOf } from '../../src/site/note/page/note-drafts.ts';
import { soundShelf } from '../library/shelves.ts';
import { Device } from './device.ts';
import { HOSTILE, hostileText, LIMIT, runs } from './runs.ts';
import { SOUND_DRAFT, SOUND_JOB, SOUND_NOTE } from './sound-job.ts';
import { spoilt, spoiltText } from './spoil.ts';

const SHELF = soundShelf();
const CARDS = {
  form: 'headertank job cards',
  version: 1,
  exported: '2026-11-25T14:10:00.000Z',
  jobs: [SOUND_JOB],
  notes: [{ id: 'second-bleed-screw', note: SOUND_NOTE }],
};
expect(jobCardsSchema.safeParse(CARDS).success).toBe(true);

const bytesOf = (text: string) => new TextEncoder().encode(text);
const fileName = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.constantFrom(
      'note.yaml',
      'a note.yaml',
      'note (1).yaml',
      'cards.json',
      'CARDS.JSON',
      'x.yml',
    ),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.constantFrom(...HOSTILE), fc.constantFrom('.yaml', '.json', ''))
      .map(([a, b]) => a + b),
  },
);
const noteFile = fc.oneof(
  spoilt(SOUND_NOTE).map((note) => {
    try {
      return noteText(note as typeof SOUND_NOTE);
    } catch {
      // The form checks a note before it writes it; what is no note is not written.
      return String(JSON.stringify(note));
    }
  }),
  fc
    .tuple(fc.constant(noteText(SOUND_NOTE)), hostileText, fc.nat())
    .map(([text, piece, at]) => text.slice(0, at % text.length) + piece + text.slice(at % text.length)),
);
const handedIn = fc
  .tuple(fileName, noteFile, spoiltText(CARDS), fc.boolean())
  .map(([name, note, cards, crossed]) => ({
    name,
    bytes: bytesOf(name.toLowerCase().endsWith('.json') !== crossed ? cards : note),
  }));

test('take-in: each file is taken inside the notes, known, or refused in words', { timeout: LIMIT }, () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(fc.array(handedIn, { minLength: 1, maxLength: 2 }), (files) => {
      const { notes, refused, known } = takeIn('content', SHELF, files);
      if (notes.length > 0 && refused.length === 0) seen.add('taken');
      if (refused.length > 0) seen.add('refused');
      expect(notes.length + refused.length + known.length).toBeGreaterThan(0);
      for (const { path } of notes) expect(path).toMatch(/^notes\/\d{4}\/[a-z0-9]+(?:-[a-z0-9]+)*\.yaml$/);
      for (const { why } of refused) {
        expect(why.length).toBeGreaterThan(10);
        // The lines of the file are quoted; the rest is ours.
        const ours = why.replace(/^ +\d+ \| .*$/gm, '');
        expect(ours).not.toMatch(/\n\s+at |node_modules|rule-broke/);
      }
      expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
    }),
    runs(100),
  );
  expect([...seen].sort()).toEqual(['refused', 'taken']);
});

test('a file of job cards: whole cards to keep, or a sentence', { timeout: LIMIT }, () => {
  const seen = new Set<boolean>();
  fc.assert(
    fc.property(spoiltText(CARDS), (text) => {
      const result = imported(text);
      seen.add(result.ok);
      if (result.ok)
        for (const job of result.jobs) {
          expect(isJob(job) && jobSchema.safeParse(job).success).toBe(true);
          // Merged with the card that is here it is a whole card still.
          expect(jobSchema.safeParse(mergedJobs(SOUND_JOB, job)).success).toBe(true);
        }
      else expect(result.says).toMatch(/^This .*[.!]$/s);
    }),
    runs(1500),
  );
  expect(seen.size).toBe(2);
});

test('the form’s check says something of any note', { timeout: LIMIT }, () => {
  fc.assert(
    fc.property(spoilt(SOUND_NOTE), hostileText, (note, id) => {
      for (const { says } of checkNote(id, note)) expect(says.length).toBeGreaterThan(5);
    }),
    runs(1000),
  );
});

/** As the form does: the file is written of a note that has passed the check. */
function writeIfSound(note: UnfinishedNote): void {
  if (checkNote('x', note).length === 0 && isNote(note)) noteText(note);
}

afterEach(() => vi.unstubAllGlobals());

/** As it is written again once it was read; a text that is no JSON, as it stands. */
function writtenAgain(text: string): string {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'string' ? value : JSON.stringify(value);
  } catch {
    return text;
  }
}

test('what lies on the device: cards and notes that can be shown, the rest handed back as it lies', {
  timeout: LIMIT,
}, async () => {
  await fc.assert(
    fc.asyncProperty(
      spoiltText(SOUND_JOB),
      spoiltText(SOUND_DRAFT),
      hostileText,
      async (job, draft, open) => {
        vi.stubGlobal(
          'localStorage',
          new Device({ 'headertank.job.a': job, 'headertank.note.b': draft, 'headertank.job-open': open }),
        );
        await Promise.all([jobs.reload(), drafts.reload()]);
        expect(jobs.list().length + jobs.unreadable().length).toBe(1);
        expect(drafts.list().length + drafts.unreadable().length).toBe(1);
        for (const { text } of jobs.unreadable()) expect([job, writtenAgain(job)]).toContain(text);
        for (const card of jobs.list()) {
          // Everything the page makes of it besides text that is shown as text.
          expect(`${litresSentence(card.litres)} ${jobTitle({ ...card, name: '', plate: '' })}`).not.toMatch(
            /NaN|Invalid Date|\[object/,
          );
          const note = noteFromJob(card);
          expect(note.source).not.toMatch(/Invalid Date/);
          writeIfSound(noteOf(note));
        }
        for (const each of drafts.list()) writeIfSound(noteOf(each));
        expect(exported(jobs.list(), drafts.list())).not.toMatch(/"\[object/);
      },
    ),
    runs(1000),
  );
});
