/** What a kept value may be, for whoever reads it back: anything may lie on a device. */

export const isText = (value: unknown): value is string => typeof value === 'string';

export const isTexts = (value: unknown): value is string[] => Array.isArray(value) && value.every(isText);
