/** What a kept value may be, for whoever reads it back: anything may lie on a device. */

export const isText = (value: unknown): value is string => typeof value === 'string';

export const isTexts = (value: unknown): value is string[] => Array.isArray(value) && value.every(isText);

/** A text with something in it. */
export const isFilledText = (value: unknown): value is string => isText(value) && value !== '';

export type Fields = Record<string, unknown>;

/** Whether it has fields, whatever is in them. */
export const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null;
