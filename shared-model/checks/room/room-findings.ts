/** All checks of a setup's room. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Finding } from '../finding.ts';
import type { RouteResult } from '../report.ts';
import { doorFindings } from './doors.ts';
import { edgeFindings } from './edges.ts';
import { elbowFindings } from './elbow.ts';
import { offPlatformFindings } from './off-platform.ts';
import { overlapFindings } from './overlap.ts';
import { roomOf } from './room.ts';
import { cableFindings, routeFindings } from './route-findings.ts';
import { wheelchairFindings } from './wheelchair-findings.ts';

/** `routes`: null leaves out what needs them (routes, cables), for instance while something is dragged. */
export function roomFindings(
  document: Document,
  setup: Id<'setup'>,
  routes: readonly RouteResult[] | null,
): Finding[] {
  const room = roomOf(document, setup);
  const placing = [overlapFindings, offPlatformFindings, elbowFindings, edgeFindings, doorFindings];
  const ways = [routeFindings, wheelchairFindings, cableFindings];
  return [
    ...placing.flatMap((check) => check(document, setup, room)),
    ...(routes ? ways.flatMap((check) => check(document, setup, routes)) : []),
  ];
}
