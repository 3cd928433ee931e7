/**
 * Every sentence of the model and the shell, in the language that is spoken. The sentence stands in English where it is
 * made and is its own key in the catalogue of another language (the way of gettext, whose names these are):
 *
 *     t`${player} cannot see ${other}`
 *     ngettext(msgid`${count} turn`, `${count} turns`, count)
 *
 * Only inside functions: what is said while a module is read is said before the language is known.
 */

import { translate } from './catalogue.ts';

type Values = readonly (string | number)[];

/** A sentence that is not said yet: a number decides its form. */
export interface Message {
  readonly strings: TemplateStringsArray;
  readonly values: Values;
}

export function t(strings: TemplateStringsArray, ...values: Values): string {
  return translate(strings, values) ?? inEnglish(strings, values);
}

export function msgid(strings: TemplateStringsArray, ...values: Values): Message {
  return { strings, values };
}

/** `one` for exactly 1 and `many` else, as in English; another language by its own rule. */
export function ngettext({ strings, values }: Message, many: string, count: number): string {
  return translate(strings, values, count) ?? (count === 1 ? inEnglish(strings, values) : many);
}

function inEnglish(strings: TemplateStringsArray, values: Values): string {
  return strings.reduce((said, part, i) => said + String(values[i - 1]) + part);
}
