/** One table from a finding's code to the page that tells how it is judged. */

import type { Units } from '../../document/measures.ts';
import type { FindingCode } from '../finding.ts';
import { tellerIn, type AboutPage } from './check-page.ts';
import { reachPage } from './reach-page.ts';
import { readingPage } from './reading-page.ts';
import { rowsPage } from './rows-page.ts';
import { cablePage, edgePage, waysPage, wheelchairPage } from './safety-pages.ts';
import { seeingPage } from './seeing-page.ts';
import { sightPage } from './sight-page.ts';
import { elbowPage, overlapPage } from './standing-pages.ts';
import { triedPage } from './tried-page.ts';
import { turnsPage } from './turns-page.ts';

/** In the order in which they are listed. */
const WRITERS = [
  sightPage,
  rowsPage,
  seeingPage,
  readingPage,
  reachPage,
  turnsPage,
  overlapPage,
  elbowPage,
  edgePage,
  waysPage,
  cablePage,
  wheelchairPage,
  triedPage,
] as const;

export type CheckPageId = ReturnType<(typeof WRITERS)[number]>['id'];

/** Every page about a check, with its lengths in these units. */
export function checkPages(units: Units): readonly AboutPage<CheckPageId>[] {
  const teller = tellerIn(units);
  return WRITERS.map((write) => write(teller));
}

const PAGE_OF: Readonly<Record<FindingCode, CheckPageId>> = {
  'sight.house': 'sight',
  'reach.far': 'reach',
  'reach.late': 'reach',
  'reach.noHand': 'reach',
  'turns.broken': 'turns',
  'room.overlap': 'overlap',
  'room.offPlatform': 'overlap',
  'room.elbow': 'elbow',
  'room.edge': 'edge',
  'room.door': 'ways',
  'room.route': 'ways',
  'room.step': 'ways',
  'room.noExit': 'ways',
  'room.cable': 'cable',
  'room.cableRamp': 'cable',
  'room.noStepFreeExit': 'wheelchair',
  'room.wheelchairLevel': 'wheelchair',
  'room.wheelchairRoute': 'wheelchair',
  'room.turning': 'wheelchair',
  'reading.angle': 'reading',
  'reading.turn': 'reading',
  'reading.staff': 'reading',
  'reading.far': 'reading',
  'facing.blocked': 'seeing',
  'facing.turn': 'seeing',
  'facing.house': 'seeing',
};

/** The page that tells how a finding of this code is judged. */
export function pageOf(code: FindingCode): CheckPageId {
  return PAGE_OF[code];
}
