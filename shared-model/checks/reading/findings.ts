/** What the reading check has to say: pages at a steep angle, rows too wide, staves of another size than asked for. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Finding } from '../finding.ts';
import { clearingOf, fewerPagesFor } from './clearing.ts';
import { readingFaults, type ReadingFault } from './faults.ts';
import { LEAST_SPACE } from './published.ts';
import { readingResults, type ReadingResult } from './reading.ts';
import { difference, lengthOf } from './vectors.ts';

/**
 * `reading.angle`: degrees against 45. A page on edge or from behind fails; one whose middle is too steep is a
 * caution; if only outer lines are, a note. `reading.turn`: from the row's middle to its outer end, degrees; a caution
 * if the body turns, a note if the head does. `reading.staff`: mm against the size of the guideline; what the
 * guideline refuses is a caution. `reading.far`: minutes of arc of a staff space; a caution of the tool's own, for no
 * standard sets a least one for a staff.
 */
export function readingFindings(
  document: Document,
  setup: Id<'setup'>,
  results: readonly ReadingResult[] = readingResults(document, setup),
): Finding[] {
  return results.flatMap((result) =>
    readingFaults(result).map((fault) => ({
      ...fault,
      subjects: [result.player, result.stand],
      where: { x: result.middle.x, y: result.middle.y },
      detail: { ...commonDetail(result), ...detailOf(fault, { document, setup, result }) },
    })),
  );
}

interface Row {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly result: ReadingResult;
}

/** What the sentence of each code names besides, and what would mend it where that can be worked out. */
function detailOf({ code, severity, measured, required }: ReadingFault, row: Row): Finding['detail'] {
  const { document, setup, result } = row;
  switch (code) {
    case 'reading.angle': {
      const kind = severity === 'note' ? 'greatestAngle' : 'angle';
      const clearing = clearingOf(document, setup, result.stand, kind);
      return clearing ? { change: clearing.change, to: clearing.to, after: clearing.angle } : {};
    }
    case 'reading.turn': {
      const fewer = fewerPagesFor(document, setup, result, required);
      return fewer ? { fewerPages: fewer.pages, after: fewer.aside } : {};
    }
    case 'reading.staff':
      return { verdict: result.staff };
    case 'reading.far':
      return {
        staff: result.staffSize === null ? 'guideline' : 'typed',
        within: (lengthOf(difference(result.eye, result.middle)) * measured) / LEAST_SPACE,
      };
  }
}

function commonDetail(result: ReadingResult): Finding['detail'] {
  const { end, nearest, farthest, angle, greatestAngle, aside, sweep, spaceMinutes, lettering } = result;
  const figures = { nearest, farthest, angle, greatestAngle, aside, sweep, lettering };
  const space = spaceMinutes ? { spaceMinutes: spaceMinutes.middle, leastMinutes: spaceMinutes.least } : {};
  return { side: result.side, end, pages: result.pages.length, ...figures, ...space };
}
