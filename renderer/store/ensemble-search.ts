/**
 * Which fashion of a shape suits this house: candidates are judged by the checks themselves, those that promise most
 * first, until none of the others can come out better. The same document and ensemble give the same answer.
 */

import { fartherBack, fashionsOf, type Fashion, type OddFashion } from '#model/arrange/fashions.ts';
import type { Member } from '#model/arrange/instrument-words.ts';
import { checkSetup } from '#model/checks/check-setup.ts';
import { facingResults } from '#model/checks/facing/facing.ts';
import { facingFindings } from '#model/checks/facing/findings.ts';
import type { Finding, Severity } from '#model/checks/finding.ts';
import { isSameComplaint } from '#model/checks/remedies/harm.ts';
import { QUICK_CHECKS } from '#model/checks/remedies/quick-checks.ts';
import { buildScene } from '#model/checks/scene/build-scene.ts';
import type { Scene } from '#model/checks/scene.ts';
import { sharesOf, shareOfPlaces } from '#model/checks/sightlines/house-figures.ts';
import { visibleShares } from '#model/checks/sightlines/visible-shares.ts';
import { concertOf, type Document } from '#model/document/document.ts';
import { ensembleOnPlatform } from './ensemble-places.ts';
import type { EnsembleOrder } from './ensemble-records.ts';

export interface BestFashion {
  readonly fashion: Fashion;
  /** What the checks find then that they did not find before, gravest first. */
  readonly remaining: readonly Finding[];
}

/** Null: they do not go on the platform in this shape, in whatever fashion. */
export function bestFashion(
  document: Document,
  members: readonly Member[],
  order: EnsembleOrder,
): BestFashion | null {
  const candidate = (odd: OddFashion): Candidate | null => candidateOf(document, members, order, odd);
  const withPiano = members.some(({ kind }) => kind === 'piano');
  const best = mostPromising(
    fashionsOf(order.shape, withPiano).flatMap((odd) => candidate(odd) ?? []),
    candidate,
  );
  if (!best) return null;
  const before = checkSetup(document, order.setup).findings;
  const after = best.findings ?? checkSetup(best.document, order.setup).findings;
  const remaining = after.filter((found) => !before.some((known) => isSameComplaint(known, found)));
  return { fashion: best.odd.fashion, remaining };
}

/** Numbers of findings by severity, then the oddness: compared in this order. */
type Score = readonly [fails: number, cautions: number, notes: number, oddness: number];

interface Candidate {
  readonly odd: OddFashion;
  readonly setup: EnsembleOrder['setup'];
  readonly document: Document;
  readonly scene: Scene;
  /** Failures, cautions and notes of the quick checks. */
  readonly quick: Score;
  /** None of what is not yet looked at is counted, so it hardly comes out better than this. */
  readonly score: Score;
  /** How many of the looks it has had. */
  readonly looks: number;
  /** Of the whole check, once that is made. */
  readonly findings: readonly Finding[] | null;
}

/** From the quickest to the whole check, and on how many candidates each is spent at most. */
const LOOKS: readonly { readonly most: number; readonly look: (candidate: Candidate) => Candidate }[] = [
  { most: 100, look: (candidate) => seenByHouse(candidate, LINES) },
  { most: 20, look: (candidate) => seenByHouse(candidate, Infinity) },
  { most: 5, look: checkedWhole },
];

/** Takes what promises most, looks at it more closely and puts it back, until it has been looked at wholly. */
function mostPromising(
  candidates: readonly Candidate[],
  candidate: (odd: OddFashion) => Candidate | null,
): Candidate | null {
  const queue = [...candidates];
  const spent = LOOKS.map(() => 0);
  let best: Candidate | null = null;
  for (;;) {
    queue.sort((a, b) => b.looks - a.looks).sort((a, b) => compared(a.score, b.score));
    const first = queue.shift();
    if (!first) return best;
    const next = LOOKS[first.looks];
    if (!next || (best && compared(best.score, first.score) <= 0)) return best ?? first;
    const tried = (spent[first.looks] ?? 0) + 1;
    spent[first.looks] = tried;
    if (tried > next.most) {
      // There is no time to look closer at this one: what it is worth stays as it seems, if nothing is known better.
      best ??= queue.some(({ looks }) => looks > first.looks) ? null : first;
      continue;
    }
    const looked = next.look(first);
    queue.push(looked);
    if (looked.looks === LOOKS.length) {
      if (!best || compared(looked.score, best.score) < 0) best = looked;
      const back = looked.findings?.some(({ code }) => code.startsWith('room.')) && fartherBack(looked.odd);
      const farther = back ? candidate(back) : null;
      if (farther) queue.push(farther);
    }
  }
}

function candidateOf(
  document: Document,
  members: readonly Member[],
  order: EnsembleOrder,
  odd: OddFashion,
): Candidate | null {
  const { setup } = order;
  const ensemble = ensembleOnPlatform(document, members, order, odd.fashion);
  if (!ensemble) return null;
  const added = ensemble.records.map((record) => [record.id, record] as const);
  const set: Document = { records: new Map([...document.records, ...added]) };
  const scene = buildScene(set, order.setup);
  const said = [
    ...QUICK_CHECKS.flatMap((check) => check(set, order.setup)),
    ...facingFindings(set, order.setup, facingResults(set, order.setup, scene.occluders)),
  ];
  const quick = scoreOf(said, odd.oddness);
  return { odd, setup, document: set, scene, quick, score: quick, looks: 0, findings: null };
}

function scoreOf(said: readonly { readonly severity: Severity }[], oddness: number): Score {
  const count = (wanted: Severity): number => said.filter(({ severity }) => severity === wanted).length;
  return [count('fail'), count('caution'), count('note'), oddness];
}

/** Lines from a place to a player that are looked at to compare; the whole check then looks at all. */
const LINES = 240;

/** With those players counted whom too few of the places all over the house see well. */
function seenByHouse(candidate: Candidate, lines: number): Candidate {
  const { document, scene, quick, looks } = candidate;
  const { seesWell, houseShare } = concertOf(document).limits;
  const few = { ...scene, seats: evenly(scene.seats, Math.ceil(lines / Math.max(1, scene.targets.length))) };
  const visible = visibleShares(few);
  const hidden = few.targets.filter(
    (_, target) => shareOfPlaces(sharesOf(few, visible, target), seesWell) < houseShare,
  );
  const [fails, ...rest] = quick;
  return { ...candidate, score: [fails + hidden.length, ...rest], looks: looks + 1 };
}

/** So many of a list, from all over it. */
function evenly<T>(all: readonly T[], count: number): T[] {
  if (all.length <= count) return [...all];
  return Array.from({ length: count }, (_, index) => all[Math.floor((index * all.length) / count)]).filter(
    (each) => each !== undefined,
  );
}

function checkedWhole(candidate: Candidate): Candidate {
  const { findings } = checkSetup(candidate.document, candidate.setup);
  return { ...candidate, findings, score: scoreOf(findings, candidate.odd.oddness), looks: LOOKS.length };
}

function compared(a: Score, b: Score): number {
  for (const [index, value] of a.entries()) {
    const by = value - (b[index] ?? 0);
    if (by !== 0) return by;
  }
  return 0;
}
