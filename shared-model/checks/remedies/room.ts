/** What helps against things that are in each other's way, over an edge or too near it. */

import { concertOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Limits } from '../../document/records.ts';
import type { Finding, FindingCode, Remedy } from '../finding.ts';
import { doorFindings } from '../room/doors.ts';
import { edgeFindings } from '../room/edges.ts';
import { elbowFindings } from '../room/elbow.ts';
import { offPlatformFindings } from '../room/off-platform.ts';
import { overlapFindings } from '../room/overlap.ts';
import { attemptsAt, type Attempt, type Search, type Task } from './attempt.ts';
import { excerpt, withLimits } from './excerpt.ts';
import { createHarmCheck, isSameComplaint } from './harm.ts';
import { withOwnStands } from './own-stands.ts';
import { ALL_ROUND, everyWay, moveOne, waysOf } from './ways.ts';
import { FARTHEST_FOR_ROOM, ofWeight, weightOf, WEIGHTS, type Weight } from './weights.ts';

export type RoomCode = Extract<
  FindingCode,
  'room.overlap' | 'room.offPlatform' | 'room.elbow' | 'room.edge' | 'room.door'
>;

interface RoomCheck {
  readonly findings: (document: Document, setup: Id<'setup'>) => Finding[];
  /** The limit that it compares with, where it measures a distance. */
  readonly limit?: keyof Limits;
}

const CHECKS: Readonly<Record<RoomCode, RoomCheck>> = {
  'room.overlap': { findings: overlapFindings },
  'room.offPlatform': { findings: offPlatformFindings },
  'room.elbow': { findings: elbowFindings },
  'room.edge': { findings: edgeFindings, limit: 'edgeDistance' },
  'room.door': { findings: doorFindings, limit: 'routeWidth' },
};

const COARSE = 80;
/** Things are moved by what is lacking and so much more, mm: on the shortest way something may stand. */
const DETOUR = 480;

/** The shortest move, in one of sixteen directions, of the lightest of the subjects that can clear it. */
export function roomRemedies(code: RoomCode): (task: Task) => Search {
  return (task) => {
    const attempt = attemptsAt(task, {
      cleared: (changed) => measuredClear(CHECKS[code], task, changed),
      harms: createHarmCheck(task),
      lack: (changed) => lackOf(CHECKS[code], task, changed),
    });
    const least = (): Remedy[] => {
      for (const weight of WEIGHTS) {
        const remedy = moveOf(task, weight, attempt);
        if (remedy) return [remedy];
      }
      const together = code === 'room.edge' ? moveOfPlace(task, attempt) : null;
      return together ? [together] : [];
    };
    return { attempt, least, things: task.finding.subjects };
  };
}

function lackOf({ findings }: RoomCheck, { setup, finding }: Task, changed: Document): number {
  const told = findings(excerpt(changed, finding.subjects), setup).find((found) =>
    isSameComplaint(found, finding),
  );
  return told ? Math.abs(told.required - told.measured) : 0;
}

function moveOf({ document, finding }: Task, weight: Weight, attempt: Attempt): Remedy | null {
  const ways = everyWay(ofWeight(document, finding.subjects, weight), ALL_ROUND);
  const most = Math.min(finding.required - finding.measured + DETOUR, FARTHEST_FOR_ROOM[weight]);
  return moveOne(ways, { coarse: COARSE, most }, attempt);
}

/** A player with his stands, where either alone would leave the other: whose place it is that is too near. */
function moveOfPlace({ document, setup, finding }: Task, attempt: Attempt): Remedy | null {
  const who = whosePlace(document, finding.subjects[0]);
  const record = who === null ? undefined : document.records.get(who);
  const together = record && withOwnStands(document, setup, record.id);
  if (record?.kind !== 'player' || !together || weightOf(document, record) === null) return null;
  if (together.length < 2) return null;
  const most = Math.min(finding.required - finding.measured + DETOUR, FARTHEST_FOR_ROOM.person);
  return moveOne(waysOf(together, ALL_ROUND), { coarse: COARSE, most }, attempt);
}

/** His own; or of a stand that of its only reader. */
function whosePlace(document: Document, id: string | undefined): string | null {
  const record = document.records.get(id ?? '');
  if (record?.kind === 'player') return record.id;
  if (record?.kind !== 'stand') return null;
  const readers = new Set(record.sides.flatMap(({ reader }) => reader ?? []));
  return readers.size === 1 ? ([...readers][0] ?? null) : null;
}

/** A clear distance is looked for up to here, mm. */
const LOOKED_FOR = 10_000;

/**
 * What the check measures between the finding's subjects when it finds nothing wrong: the distance, at most
 * LOOKED_FOR; 0 where things do not overlap or stand out; all the room a player wants.
 */
function measuredClear({ findings, limit }: RoomCheck, task: Task, changed: Document): number | null {
  const { setup, finding } = task;
  const subjects = excerpt(changed, finding.subjects);
  const told = (document: Document): Finding | undefined =>
    findings(document, setup).find((found) => isSameComplaint(found, finding));
  if (told(subjects)) return null;
  if (!limit) return finding.required;
  const distance = told(withLimits(subjects, { [limit]: LOOKED_FOR }))?.measured ?? LOOKED_FOR;
  return distance >= concertOf(changed).limits[limit] ? distance : null;
}
