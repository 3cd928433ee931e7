/** `<measure>` of one part: everything in it that this program wants. */

import { children, mark, type Element } from '../xml/element.ts';
import { attributesElement } from './attributes-element.ts';
import { barlineElement } from './barline-element.ts';
import type { Context } from './context.ts';
import { directionElement, loneSoundElement } from './direction-element.ts';
import { moveElement, noteElement } from './note-element.ts';

export function measureContent(context: Context): NonNullable<Element['children']> {
  return children({
    note: noteElement(context),
    backup: moveElement(context, -1),
    forward: moveElement(context, 1),
    attributes: attributesElement(context),
    direction: directionElement(context),
    sound: loneSoundElement(context),
    barline: barlineElement(context),
    print: mark((attributes) => {
      const { part } = context;
      if (attributes['new-page'] === 'yes' && part.pageBreaks.at(-1) !== part.bar)
        part.pageBreaks.push(part.bar);
    }),
  });
}
