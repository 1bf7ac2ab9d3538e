/** The cautions of the shelf that stand over every walk on a vehicle they are for. */
import { entriesOf } from '../../shelf/record-pages.ts';
import { inSentence } from '../../text/in-sentence.ts';
import { plainText } from '../../text/render-text.ts';
import type { VehicleCaution } from '../vehicle-stops.ts';

/** The cautions that hang on how a vehicle is built, each with its condition. */
export function vehicleCautions(): VehicleCaution[] {
  return entriesOf('caution').flatMap(({ id, data }) => {
    const on = data['on-vehicle'];
    if (!on) return [];
    return [
      { id, title: inSentence(data.title), short: data.short, on, avoid: plainText(data.avoid[0] ?? '') },
    ];
  });
}
