/** Whether staves are printed large enough, by the librarians' guideline. */

import type { Millimetres } from '../../document/records.ts';
import { STAFF } from './published.ts';

/**
 * `tooSmall`: below the least. `small`: one reader at his own stand may do with it. `smallForTwo`: the same, but two
 * read there. `tooLarge`: to be avoided.
 */
export type StaffVerdict = 'unknown' | 'tooSmall' | 'smallForTwo' | 'small' | 'good' | 'tooLarge';

/** `size`: bottom to top line as printed, null when not known. `shared`: more than one player reads there. */
export function judgeStaff(size: Millimetres | null, shared: boolean): StaffVerdict {
  if (size === null) return 'unknown';
  if (size < STAFF.least) return 'tooSmall';
  if (size < STAFF.good) return shared ? 'smallForTwo' : 'small';
  return size > STAFF.most ? 'tooLarge' : 'good';
}

/** The published size that a verdict was measured against. */
export function staffLimit(verdict: StaffVerdict): Millimetres {
  if (verdict === 'tooSmall') return STAFF.least;
  return verdict === 'tooLarge' ? STAFF.most : STAFF.good;
}
