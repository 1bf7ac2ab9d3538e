/** How a text begins that is only there so that a new record is whole. */
export const TO_WRITE = 'To write';

/** Whether nothing but the mark of a new record stands here. */
export function isLeftToWrite(value: unknown): value is string {
  return typeof value === 'string' && value.startsWith(TO_WRITE);
}
