/** How long the device keeps the cards, and how much room is left, said before it is needed. */

import { keeper } from '../../browser/open-keeper.ts';
import type { CardOnPage } from './card-on-page.ts';

/** Bytes below which it is time to export: some forty pictures. */
const LITTLE = 10 * 1024 * 1024;

/** Asks the browser to keep the cards for good, and says what came of it. */
export async function tellRoom(card: CardOnPage): Promise<void> {
  const { kind } = await keeper();
  const { storage } = navigator;
  const isFirm = await persisted();
  const { quota = 0, usage = 0 } = (await storage?.estimate?.().catch(() => undefined)) ?? {};
  const left = quota - usage;
  const lines = [
    kind === 'small storage'
      ? 'This browser opens no database here: cards are kept in its small storage, without pictures.'
      : isFirm
        ? 'This browser keeps the cards until you remove them.'
        : 'This browser may clear them by itself when the device is short of room, or when the site is not used for weeks: export what has to last.',
    ...(quota > 0 && left < LITTLE
      ? [
          `Only ${Math.max(0, Math.floor(left / 1024 / 1024))} MB are left here: export old cards, then remove them.`,
        ]
      : []),
  ];
  const place = card.place('.room');
  place.textContent = lines.join(' ');
  place.classList.toggle('caution', quota > 0 && left < LITTLE);
}

/** Whether the browser has promised to keep them; asked for once there is something to keep. */
async function persisted(): Promise<boolean> {
  const { storage } = navigator;
  if (!storage?.persisted) return false;
  return (await storage.persisted().catch(() => false)) || (await storage.persist().catch(() => false));
}
