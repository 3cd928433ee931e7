/** `<part-list>` and the titles: names, before any music. */

import { LONGEST_NAME, MOST_PARTS } from '../limits.ts';
import { Refusal } from '../problem.ts';
import { children, textOf, type Element } from '../xml/element.ts';

export interface ListedPart {
  readonly id: string | null;
  name: string;
  /** Names of its instruments by id. */
  readonly instruments: Map<string, string>;
}

export function partListElement(parts: ListedPart[]): Element {
  let instrument = '';
  const last = () => parts.at(-1);
  return {
    children: children({
      'score-part': {
        open: ({ id }) => {
          if (parts.length >= MOST_PARTS)
            throw new Refusal({ code: 'score.tooLarge', what: 'parts', most: MOST_PARTS });
          parts.push({ id: id ?? null, name: '', instruments: new Map() });
        },
        children: children({
          'part-name': textOf((text) => {
            const part = last();
            if (part) part.name = tidyName(text);
          }),
          'score-instrument': {
            open: ({ id }) => (instrument = id ?? ''),
            children: children({
              'instrument-name': textOf((text) => last()?.instruments.set(instrument, tidyName(text))),
            }),
          },
        }),
      },
    }),
  };
}

/** On one line and of a reasonable length. */
export function tidyName(text: string): string {
  return text.replace(/\s+/g, ' ').trim().slice(0, LONGEST_NAME);
}
