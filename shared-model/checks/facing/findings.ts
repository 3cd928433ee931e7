/** What the facing check has to say: eyes that do not meet, partners behind one's back, backs to the house. */

import { standModel, USUAL_STAND } from '../../catalogue/stands.ts';
import { find, type Document } from '../../document/document.ts';
import { asId, type Id } from '../../document/ids.ts';
import type { Point } from '../../document/records.ts';
import type { Finding, FindingCode } from '../finding.ts';
import { isBeyond, TURN_LIMITS } from '../reading/gaze.ts';
import type { Glance } from './bearings.ts';
import type { Blocker } from './blockers.ts';
import { facingResults, type FacingResults, type HouseAngle, type PairFacing } from './facing.ts';
import { lidThatClears } from './lids.ts';
import { PROFILE } from './published.ts';
import { setRound } from './set-round.ts';

export type FacingCode = Extract<FindingCode, `facing.${string}`>;

/**
 * `facing.blocked`: how far the worst thing in the line from eyes to eyes would have to be lowered, mm, against none;
 * it fails what the director asked for. `facing.turn`: a caution, one a pair, told of the one who has to turn farther.
 * `facing.house`: a note.
 */
export function facingFindings(
  document: Document,
  setup: Id<'setup'>,
  results: FacingResults = facingResults(document, setup),
): Finding[] {
  const glances = glancesByLooker(results);
  return [
    ...results.pairs.flatMap((pair) => blockedFinding(document, setup, pair) ?? []),
    ...results.pairs.flatMap((pair) => turnFinding(document, pair, glances) ?? []),
    ...results.toHouse.flatMap((angle) => houseFinding(document, angle) ?? []),
  ];
}

function glancesByLooker({ pairs }: FacingResults): Map<string, Glance[]> {
  const byLooker = new Map<string, Glance[]>();
  for (const glance of pairs.flatMap(({ glances }) => glances)) {
    const known = byLooker.get(glance.looker);
    if (known) known.push(glance);
    else byLooker.set(glance.looker, [glance]);
  }
  return byLooker;
}

function blockedFinding(
  document: Document,
  setup: Id<'setup'>,
  { players, blockers }: PairFacing,
): Finding | null {
  const [worst] = blockers;
  if (!worst) return null;
  return {
    code: 'facing.blocked',
    severity: 'fail',
    subjects: [...players, ...blockers.map(({ record }) => record)],
    measured: worst.lowerBy,
    required: 0,
    unit: 'mm',
    where: spotOf(document, worst.record) ?? spotOf(document, players[0]),
    detail: {
      things: blockers.length,
      ...standDetail(document, worst),
      ...lidDetail(document, setup, players, worst),
    },
  };
}

/** Where the lip of a stand would come to, and how low its model goes. */
function standDetail(document: Document, { record, lowerBy }: Blocker): Finding['detail'] {
  const stand = document.records.get(record);
  if (stand?.kind !== 'stand') return {};
  const { lip } = standModel(stand.model) ?? USUAL_STAND;
  return { lip: stand.lip, lipThen: stand.lip - lowerBy, lowestLip: lip.least };
}

/** How far the lid has to come down, if that is all that is in the way. */
function lidDetail(
  document: Document,
  setup: Id<'setup'>,
  players: PairFacing['players'],
  { record }: Blocker,
): Finding['detail'] {
  const lid = lidThatClears(document, setup, players, record);
  return lid ? { lid } : {};
}

function turnFinding(
  document: Document,
  { glances: [there, back] }: PairFacing,
  glancesOf: ReadonlyMap<string, readonly Glance[]>,
): Finding | null {
  const isBackWorse = isBeyond(Math.abs(back.bearing), Math.abs(there.bearing));
  const [worse, other] = isBackWorse ? [back, there] : [there, back];
  if (worse.turn !== 'body') return null;
  return {
    code: 'facing.turn',
    severity: 'caution',
    subjects: [worse.looker, worse.partner],
    measured: Math.abs(worse.bearing),
    required: TURN_LIMITS.head,
    unit: 'degrees',
    where: spotOf(document, worse.looker),
    detail: { ...glanceDetail(worse, other), ...roundDetail(glancesOf.get(worse.looker) ?? []) },
  };
}

/** `stand` is empty when he reads nothing. */
function glanceDetail(worse: Glance, other: Glance): Finding['detail'] {
  return {
    bearing: worse.bearing,
    turn: worse.turn,
    stand: worse.from.stand ?? '',
    inField: worse.inField ? 1 : 0,
    bearingBack: other.bearing,
    turnBack: other.turn,
  };
}

/** What would suit everybody whom he must see: see `setRound`. */
function roundDetail(glances: readonly Glance[]): Finding['detail'] {
  const round = setRound(glances);
  return round.kind === 'round' ? { round: round.kind, by: round.by } : { round: round.kind };
}

function houseFinding(document: Document, { player, angle }: HouseAngle): Finding | null {
  if (!isBeyond(angle, PROFILE)) return null;
  return {
    code: 'facing.house',
    severity: 'note',
    subjects: [player],
    measured: angle,
    required: PROFILE,
    unit: 'degrees',
    where: spotOf(document, player),
    detail: {},
  };
}

function spotOf(document: Document, id: string): Point | null {
  const record = find(document, asId(id));
  return record && 'x' in record ? { x: record.x, y: record.y } : null;
}
