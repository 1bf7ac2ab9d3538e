/** The walk of a complaint as this device keeps it, and the offer to go on with it. */
import '../../browser/page-globals.ts';
import { button, element } from '../../browser/element.ts';
import { isTexts } from '../../browser/guards.ts';
import { forget, keep, kept } from '../../browser/storage.ts';
import { dayAndTimeText } from '../../text/day-and-time.ts';
import type { Answers } from '../answers.ts';

interface KeptWalk {
  answers: [string, string][];
  at: string;
  /** What the car was called that they were given for. */
  vehicle?: string;
}

const isKeptWalk = (value: unknown): value is KeptWalk =>
  typeof value === 'object' &&
  value !== null &&
  'answers' in value &&
  Array.isArray(value.answers) &&
  value.answers.every((each) => isTexts(each) && each.length === 2) &&
  'at' in value &&
  typeof value.at === 'string' &&
  (!('vehicle' in value) || typeof value.vehicle === 'string');

/** @returns false when the device keeps nothing; without answers nothing is kept, and that always goes well */
export function keepWalk(symptom: string, answers: Answers): boolean {
  if (answers.size === 0) {
    forget(`walk.${symptom}`);
    return true;
  }
  const { vehicle } = window.headertank;
  return keep(`walk.${symptom}`, {
    answers: [...answers],
    at: new Date().toISOString(),
    ...(vehicle && { vehicle: vehicle.short }),
  } satisfies KeptWalk);
}

/**
 * @param goOn with the answers as they are written into an address
 * @param forgotten once they are gone from the device
 * @returns nothing where no answer is kept
 */
export function resumeOffer(
  symptom: string,
  goOn: (fragment: string) => void,
  forgotten: () => void,
): Node[] {
  const before = kept(`walk.${symptom}`, isKeptWalk);
  if (!before || before.answers.length === 0) return [];
  const day = new Date(before.at);
  const when = Number.isNaN(day.getTime()) ? 'before' : `on ${dayAndTimeText(day)}`;
  const count = before.answers.length === 1 ? '1 answer' : `${before.answers.length} answers`;
  const line = `You were here ${when}, with ${count}${before.vehicle ? ` for ${before.vehicle}` : ''}. `;
  const forgetIt = () => {
    forget(`walk.${symptom}`);
    forgotten();
  };
  return [
    element(
      'p',
      { class: 'note-line no-print' },
      line,
      button('Go on from there', () => goOn(new URLSearchParams(before.answers).toString())),
      ' ',
      button('Forget it', forgetIt, 'quiet'),
    ),
  ];
}
