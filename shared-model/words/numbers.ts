/** Numbers as the language that is spoken writes them. */

import { language } from './catalogue.ts';

/** With so many digits behind the point, or the comma: "1.50", "1,50". */
export function fixed(value: number, digits: number): string {
  return withSeparator(value.toFixed(digits));
}

/** With at most so many digits, and none that says nothing: "1.5", "1,5". */
export function atMost(value: number, digits: number): string {
  return withSeparator(String(Number(value.toFixed(digits))));
}

function withSeparator(number: string): string {
  return language() === 'de' ? number.replace('.', ',') : number;
}
