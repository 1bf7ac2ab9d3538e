/** How a text begins that is only there so that a new record is whole. */
export const TO_WRITE = 'To write';
