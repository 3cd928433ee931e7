/** Concerts of two setups on a bare platform, for tests of changeovers. */

import type { AnyRecord, Point } from '#model/document/records.ts';
import { documentOf, type Document } from '#model/document/document.ts';
import { asId, type Id } from '#model/document/ids.ts';
import { aConcert, aDoor, aPlatform, aSetup, aStand, SETUP } from '../../helpers/build.ts';

export const SECOND: Id<'setup'> = asId('setup-2');

/** Where things of a route's width (915 mm) cross the one opening, nearly all of the upstage edge: every way there is straight. */
export const CROSSINGS: readonly Point[] = [-1, 0, 1].map((side) => ({
  x: side * (3800 - 915 / 2),
  y: 5000,
}));

export function twoSetups(...records: AnyRecord[]): Document {
  return documentOf([
    aConcert(),
    aSetup({ id: SETUP, name: 'First', order: 1 }),
    aSetup({ id: SECOND, name: 'Second', order: 2 }),
    aPlatform(),
    aDoor({ offset: 200, width: 7600 }),
    ...records,
  ]);
}

/** Stands of one model at these spots of the two setups. */
export function standsAt(first: readonly Point[], second: readonly Point[]): Document {
  const stands = (spots: readonly Point[], setup: Id<'setup'>) =>
    spots.map((spot, index) => aStand({ id: `${setup}-stand-${index + 1}`, setup, ...spot }));
  return twoSetups(...stands(first, SETUP), ...stands(second, SECOND));
}
