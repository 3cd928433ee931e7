/** What the reader of XML has to say against a text: the faults that are met in broken files, in the language spoken. */

import { language } from '../../words/catalogue.ts';
import { t } from '../../words/say.ts';

const FAULTS: readonly (readonly [fault: RegExp, words: (what: string) => string])[] = [
  [/^unclosed tag: (.*)$/s, (tag) => t`unclosed tag: ${tag}`],
  [/^unmatched closing tag: (.*)$/s, (tag) => t`unmatched closing tag: ${tag}`],
  [/^unexpected close tag$/, () => t`unexpected close tag`],
  [/^unexpected end$/, () => t`unexpected end`],
  [/^document must contain a root element$/, () => t`document must contain a root element`],
  [/^documents may contain only one root$/, () => t`documents may contain only one root`],
  [/^text data outside of root node$/, () => t`text data outside of root node`],
  [/^disallowed character$/, () => t`disallowed character`],
  [/^disallowed character in tag name$/, () => t`disallowed character in tag name`],
  [/^disallowed character in attribute name$/, () => t`disallowed character in attribute name`],
  [/^attribute without value$/, () => t`attribute without value`],
  [/^unquoted attribute value$/, () => t`unquoted attribute value`],
  [/^duplicate attribute: (.*)$/s, (name) => t`duplicate attribute: ${name}`],
  [/^undefined entity$/, () => t`undefined entity`],
  [/^malformed character entity$/, () => t`malformed character entity`],
  [/^malformed comment$/, () => t`malformed comment`],
];

/** `fault`: as the parser has it, in English; one that is not in the list has no words of its own in another language. */
export function xmlFaultWords(fault: string): string {
  for (const [pattern, words] of FAULTS) {
    const found = pattern.exec(fault);
    if (found) return words(found[1] ?? '');
  }
  return language() === 'en' ? fault : t`not well-formed`;
}
