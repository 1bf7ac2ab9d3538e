/** Every rule of the shelf. A rule that is not here is not checked; a test holds that each has its faulty shelf. */
import type { Rule } from '../rule.ts';
import { badDate } from './bad-date.ts';
import { duplicateKey } from './duplicate-key.ts';
import { idNotKebab } from './id-not-kebab.ts';
import { implausibleQuantity } from './implausible-quantity.ts';
import { missingField } from './missing-field.ts';
import { misspeltField } from './misspelt-field.ts';
import { movedReference } from './moved-reference.ts';
import { textCutByColon } from './text-cut-by-colon.ts';
import { unfitValue } from './unfit-value.ts';
import { unknownField } from './unknown-field.ts';
import { unknownReference } from './unknown-reference.ts';
import { unreadableQuantity } from './unreadable-quantity.ts';
import { wrongType } from './wrong-type.ts';
import { wrongUnit } from './wrong-unit.ts';
import { wrongWord } from './wrong-word.ts';
import { yamlSyntax } from './yaml-syntax.ts';

export const RULES: readonly Rule[] = [
  yamlSyntax,
  duplicateKey,
  misspeltField,
  unknownField,
  missingField,
  textCutByColon,
  wrongType,
  wrongWord,
  wrongUnit,
  unreadableQuantity,
  implausibleQuantity,
  badDate,
  idNotKebab,
  unfitValue,
  unknownReference,
  movedReference,
];
