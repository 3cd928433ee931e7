/** Whether the people in front are counted, as each sheet that shows who sees what has to say: sheets may differ in it. */

import { concertOf, type Document } from '../../document/document.ts';
import { t } from '../../words/say.ts';

interface Counted {
  readonly document: Document;
}

/** Of shares seen: seat maps and their figures go by the concert's own setting. */
export function headsCounted({ document }: Counted): string {
  return concertOf(document).headsInFront
    ? t`The heads of the people in front count.`
    : t`The heads of the people in front do not count.`;
}

/** Of sections, which are about the rows in front and nothing else. */
export function headsInSections({ document }: Counted): string {
  return concertOf(document).headsInFront
    ? t`Here the heads of the rows in front count, as they do on the seat map.`
    : t`Here the heads of the rows in front count; on the seat map they do not.`;
}
