/** What is wrong with a row of pages, before it is worked out what would mend it. */

import type { Finding, FindingCode, Severity } from '../finding.ts';
import { isBeyond, SAME_ANGLE, TURN_LIMITS } from './gaze.ts';
import { EDGE_ON, GREATEST_ANGLE, LEAST_SPACE, SPACES_OF_STAFF, STAFF } from './published.ts';
import { spaceMinutes, type ReadingResult } from './reading.ts';
import { staffLimit, type StaffVerdict } from './staff-size.ts';

export type ReadingCode = Extract<FindingCode, `reading.${string}`>;

/** At most one of each code a row. */
export interface ReadingFault extends Pick<Finding, 'severity' | 'measured' | 'required' | 'unit'> {
  readonly code: ReadingCode;
}

export function readingFaults(result: ReadingResult): ReadingFault[] {
  return [angleFault(result), turnFault(result), staffFault(result), farFault(result)].filter(
    (fault) => fault !== null,
  );
}

function angleFault(result: ReadingResult): ReadingFault | null {
  const severity = severityOfAngle(result);
  if (!severity) return null;
  const measured = severity === 'note' ? result.greatestAngle : result.angle;
  return { code: 'reading.angle', severity, measured, required: GREATEST_ANGLE, unit: 'degrees' };
}

function severityOfAngle({ angle, greatestAngle }: ReadingResult): Severity | null {
  if (angle >= EDGE_ON) return 'fail';
  if (isBeyond(angle, GREATEST_ANGLE)) return 'caution';
  return isBeyond(greatestAngle, GREATEST_ANGLE) ? 'note' : null;
}

function turnFault({ turn, angle, aside }: ReadingResult): ReadingFault | null {
  // Across a page that is seen from behind nobody turns.
  if ((turn !== 'head' && turn !== 'body') || angle >= EDGE_ON) return null;
  const figures = { code: 'reading.turn', measured: aside, unit: 'degrees' } as const;
  return turn === 'body'
    ? { ...figures, severity: 'caution', required: TURN_LIMITS.head }
    : { ...figures, severity: 'note', required: TURN_LIMITS.eyes };
}

const STAFF_SEVERITIES: Readonly<Record<StaffVerdict, Severity | null>> = {
  unknown: null,
  tooSmall: 'caution',
  smallForTwo: 'caution',
  small: null,
  good: null,
  tooLarge: 'note',
};

function staffFault({ staff, staffSize }: ReadingResult): ReadingFault | null {
  const severity = STAFF_SEVERITIES[staff];
  if (!severity || staffSize === null) return null;
  return { code: 'reading.staff', severity, measured: staffSize, required: staffLimit(staff), unit: 'mm' };
}

/**
 * Of a staff space at the middle of the page, minutes of arc. Staves of unknown size are taken to be those that read
 * best: only the distance is judged then.
 */
export function apparentSpace({ pages, staffSize }: ReadingResult): number {
  return spaceMinutes(pages, (staffSize ?? STAFF.good) / SPACES_OF_STAFF).middle;
}

function farFault(result: ReadingResult): ReadingFault | null {
  const looks = apparentSpace(result);
  // On edge or from behind it is the angle that has to change.
  if (result.angle >= EDGE_ON || looks >= LEAST_SPACE - SAME_ANGLE) return null;
  return {
    code: 'reading.far',
    severity: 'caution',
    measured: looks,
    required: LEAST_SPACE,
    unit: 'minutesOfArc',
  };
}
