/** What the reading check has to say: pages at a steep angle, rows too wide, staves of another size than asked for. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Finding, FindingCode, Severity } from '../finding.ts';
import { clearingOf, fewerPagesFor } from './clearing.ts';
import { isBeyond, SAME_ANGLE, TURN_LIMITS } from './gaze.ts';
import { EDGE_ON, GREATEST_ANGLE, LEAST_SPACE, SPACES_OF_STAFF, STAFF } from './published.ts';
import { readingResults, spaceMinutes, type ReadingResult } from './reading.ts';
import { staffLimit, type StaffVerdict } from './staff-size.ts';
import { difference, lengthOf } from './vectors.ts';

export type ReadingCode = Extract<FindingCode, `reading.${string}`>;

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
    [
      angleFinding(document, setup, result),
      turnFinding(document, setup, result),
      staffFinding(result),
      farFinding(result),
    ].filter((found) => found !== null),
  );
}

function angleFinding(document: Document, setup: Id<'setup'>, result: ReadingResult): Finding | null {
  const severity = severityOfAngle(result);
  if (!severity) return null;
  const kind = severity === 'note' ? 'greatestAngle' : 'angle';
  const clearing = clearingOf(document, setup, result.stand, kind);
  return finding(result, 'reading.angle', severity, {
    measured: result[kind],
    required: GREATEST_ANGLE,
    unit: 'degrees',
    detail: clearing ? { change: clearing.change, to: clearing.to, after: clearing.angle } : {},
  });
}

function severityOfAngle({ angle, greatestAngle }: ReadingResult): Severity | null {
  if (angle >= EDGE_ON) return 'fail';
  if (isBeyond(angle, GREATEST_ANGLE)) return 'caution';
  return isBeyond(greatestAngle, GREATEST_ANGLE) ? 'note' : null;
}

function turnFinding(document: Document, setup: Id<'setup'>, result: ReadingResult): Finding | null {
  // Across a page that is seen from behind nobody turns.
  if ((result.turn !== 'head' && result.turn !== 'body') || result.angle >= EDGE_ON) return null;
  const limit = result.turn === 'body' ? TURN_LIMITS.head : TURN_LIMITS.eyes;
  const fewer = fewerPagesFor(document, setup, result, limit);
  return finding(result, 'reading.turn', result.turn === 'body' ? 'caution' : 'note', {
    measured: result.aside,
    required: limit,
    unit: 'degrees',
    detail: fewer ? { fewerPages: fewer.pages, after: fewer.aside } : {},
  });
}

const STAFF_SEVERITIES: Readonly<Record<StaffVerdict, Severity | null>> = {
  unknown: null,
  tooSmall: 'caution',
  smallForTwo: 'caution',
  small: null,
  good: null,
  tooLarge: 'note',
};

function staffFinding(result: ReadingResult): Finding | null {
  const severity = STAFF_SEVERITIES[result.staff];
  if (!severity || result.staffSize === null) return null;
  return finding(result, 'reading.staff', severity, {
    measured: result.staffSize,
    required: staffLimit(result.staff),
    unit: 'mm',
    detail: { verdict: result.staff },
  });
}

/** Staves of unknown size are taken to be those that read best: only the distance is judged then. */
function farFinding(result: ReadingResult): Finding | null {
  const { pages, staffSize, eye, middle } = result;
  const { middle: looks } = spaceMinutes(pages, (staffSize ?? STAFF.good) / SPACES_OF_STAFF);
  // On edge or from behind it is the angle that has to change.
  if (result.angle >= EDGE_ON || looks >= LEAST_SPACE - SAME_ANGLE) return null;
  return finding(result, 'reading.far', 'caution', {
    measured: looks,
    required: LEAST_SPACE,
    unit: 'minutesOfArc',
    detail: {
      staff: staffSize === null ? 'guideline' : 'typed',
      within: (lengthOf(difference(eye, middle)) * looks) / LEAST_SPACE,
    },
  });
}

type Figures = Pick<Finding, 'measured' | 'required' | 'unit' | 'detail'>;

function finding(
  result: ReadingResult,
  code: ReadingCode,
  severity: Severity,
  { detail, ...figures }: Figures,
): Finding {
  const { player, stand, middle } = result;
  return {
    code,
    severity,
    subjects: [player, stand],
    ...figures,
    where: { x: middle.x, y: middle.y },
    detail: { ...commonDetail(result), ...detail },
  };
}

function commonDetail(result: ReadingResult): Finding['detail'] {
  const { end, nearest, farthest, angle, greatestAngle, aside, sweep, spaceMinutes, lettering } = result;
  const figures = { nearest, farthest, angle, greatestAngle, aside, sweep, lettering };
  const space = spaceMinutes ? { spaceMinutes: spaceMinutes.middle, leastMinutes: spaceMinutes.least } : {};
  return { side: result.side, end, pages: result.pages.length, ...figures, ...space };
}
