/** Pictures on the card: from the camera, made smaller, each beside the card under its own name. */
import type { Job } from '../../../model/job.ts';
import '../../browser/page-globals.ts';
import { element } from '../../browser/element.ts';
import { newId } from '../../browser/ids.ts';
import { loadScript } from '../../browser/load-script.ts';
import { keeper } from '../../browser/open-keeper.ts';
import type { DatabaseName } from '../../browser/storage-names.ts';
import type { KeptPicture } from '../card-parts.ts';
import type { CardOnPage } from './card-on-page.ts';
import { jobs } from './job-store.ts';

/** Those that were read, by id: a picture never changes. */
const addresses = new Map<string, string>();

export const pictureName = (id: string): DatabaseName => `picture.${id}`;

/** The card's pictures, those that lie on the device. */
export async function picturesOf({ pictures = [] }: Job): Promise<KeptPicture[]> {
  const place = await keeper();
  const all = await Promise.all(
    pictures.map(async ({ id }) => {
      const address =
        addresses.get(id) ?? (await addressOf(await place.get(pictureName(id)).catch(() => undefined)));
      if (address !== undefined) addresses.set(id, address);
      return address === undefined ? [] : [{ id, address }];
    }),
  );
  return all.flat();
}

/** The card's pictures that were read already. */
export function readPictures({ pictures = [] }: Job): KeptPicture[] {
  return pictures.flatMap(({ id }) => {
    const address = addresses.get(id);
    return address === undefined ? [] : [{ id, address }];
  });
}

function addressOf(kept: unknown): Promise<string | undefined> {
  if (!(kept instanceof Blob)) return Promise.resolve(undefined);
  return new Promise((resolve) => {
    const reader = new FileReader();
    reader.onload = () => resolve(typeof reader.result === 'string' ? reader.result : undefined);
    reader.onerror = () => resolve(undefined);
    reader.readAsDataURL(kept);
  });
}

/** Takes the chosen pictures onto the card. @returns what came of it, to be said */
export async function addPictures(card: CardOnPage, files: readonly File[], what: string): Promise<string> {
  await loadScript('job-pictures').catch(() => undefined);
  const smaller = window.headertank.smallerPicture;
  if (!smaller) return 'Pictures need a part of the site that cannot be fetched just now.';
  for (const file of files) {
    const made = await smaller(file).catch(() => undefined);
    if (!made) return `${file.name} is no picture that this browser reads.`;
    const id = newId('picture');
    const entry = { id, at: new Date().toISOString(), what, wide: made.wide, high: made.high };
    const stays = await card.change(
      (job) => ({ ...job, pictures: [...(job.pictures ?? []), entry] }),
      new Map([[pictureName(id), made.blob]]),
    );
    if (!stays) {
      // The card in this window would name a picture that is nowhere.
      await card.change((job) => ({
        ...job,
        pictures: (job.pictures ?? []).filter((each) => each.id !== id),
      }));
      return 'The device has no room for the picture, so it is not on the card. Export old cards, then remove them.';
    }
  }
  return files.length === 1 ? 'The picture is on the card.' : `${files.length} pictures are on the card.`;
}

/** What a card keeps beside itself, to be taken away or brought back with it. */
export async function besides(job: Job): Promise<Map<DatabaseName, unknown>> {
  const place = await keeper();
  const names = (job.pictures ?? []).map(({ id }) => pictureName(id));
  const values = await Promise.all(names.map((name) => place.get(name).catch(() => undefined)));
  return new Map(names.map((name, at) => [name, values[at]]));
}

/** Removes a card with what it keeps beside itself. @returns the way back */
export async function removeCard(job: Job): Promise<() => Promise<boolean>> {
  const all = await besides(job);
  await jobs.remove(job.id, [...all.keys()]);
  return () => jobs.change(job.id, job, () => job, all);
}

/** The pictures, each with its words. */
export async function showPictures(
  card: CardOnPage,
  rows: (entries: NonNullable<Job['pictures']>) => Map<string, HTMLElement>,
): Promise<void> {
  const { job } = card;
  const made = rows(job.pictures ?? []);
  for (const { id, address } of await picturesOf(job)) {
    const what = job.pictures?.find((each) => each.id === id)?.what ?? '';
    made.get(id)?.prepend(element('img', { src: address, alt: what, loading: 'lazy' }));
  }
}
