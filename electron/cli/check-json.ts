/** `check --json`: everything the checks say, as data. Its form is described in DEVELOPERS.md. */

import type { Finding, Remedy } from '#model/checks/finding.ts';
import { suggestRemedy } from '#model/checks/remedy.ts';
import type { Report } from '#model/checks/report.ts';
import type { Occluder } from '#model/checks/scene.ts';
import type { Explained } from '#model/checks/sentence-parts.ts';
import { explain } from '#model/checks/sentences.ts';
import { whatIf, type WhatIf } from '#model/checks/remedies/what-if.ts';
import { shareOfPlaces, sharesOf } from '#model/checks/sightlines/house-figures.ts';
import { faceShares } from '#model/checks/sightlines/windows.ts';
import { concertOf, setupsOf, type Document } from '#model/document/document.ts';
import { labelOf } from '#model/document/labels.ts';
import type { Setup } from '#model/document/records.ts';

export interface Checked {
  readonly file: string;
  readonly document: Document;
  readonly setup: Setup;
  readonly report: Report;
  /** Of the reader of the file. */
  readonly notes: readonly string[];
}

/** What is told beside the findings and figures. */
export interface More {
  readonly geometry: boolean;
  readonly whatIf: boolean;
}

export function checkAsData(checked: Checked, more: More): object {
  const { file, document, setup, report, notes } = checked;
  const label = (id: string) => labelOf(document, setup.id, id);
  return {
    file,
    notes,
    setup: named(setup),
    setups: setupsOf(document).map(named),
    units: concertOf(document).units,
    findings: report.findings.map((finding) =>
      more.whatIf ? triedAsData(checked, finding) : findingAsData(checked, finding),
    ),
    sight: sightAsData(checked, label),
    reach: report.reach.map((result) => ({
      ...result,
      labels: [label(result.grip.player), label(result.grip.item)],
    })),
    routes: report.routes.map((route) => ({ label: label(route.player), ...route })),
    reading: report.reading.map((row) => ({ labels: [label(row.player), label(row.stand)], ...row })),
    facing: {
      pairs: report.facing.pairs.map((pair) => ({ labels: pair.players.map(label), ...pair })),
      toHouse: report.facing.toHouse.map((angle) => ({ label: label(angle.player), ...angle })),
    },
    ...(more.whatIf ? { whatIf: whatIfAsData(checked, label) } : {}),
    ...(more.geometry ? { scene: sceneAsData(report) } : {}),
  };
}

function named({ id, name }: Setup) {
  return { id, name };
}

function findingAsData({ document, setup }: Checked, finding: Finding) {
  const { subjects, ...figures } = finding;
  return {
    ...figures,
    subjects,
    labels: subjects.map((id) => labelOf(document, setup.id, id)),
    ...adviceAsData(explain(finding, document, setup.id, concertOf(document).units), null),
  };
}

/** With the change that was tried and clears it; null: none of those tried does, or it is one against which none is. */
function triedAsData(checked: Checked, finding: Finding) {
  const { document, setup } = checked;
  const tried = suggestRemedy(document, setup.id, finding);
  const told = explain(finding, document, setup.id, concertOf(document).units);
  return { ...findingAsData(checked, finding), ...adviceAsData(told, tried), tried };
}

/** What was tried takes the place of what was not. */
function adviceAsData({ headline, text, advice, remark }: Explained, tried: Remedy | null) {
  return { headline, text, advice: tried ? remark : advice };
}

type Label = (id: string) => string;

function sightAsData({ document, report: { sight } }: Checked, label: Label) {
  const { scene } = sight;
  const faces = faceShares(scene);
  const { seesWell } = concertOf(document).limits;
  const seats = new Map(sight.scene.seats.map((seat) => [seat.id, seat.label]));
  return sight.figures.map(({ player, worst, coveredBy, ...figure }, target) => ({
    player,
    label: label(player),
    ...figure,
    faceSeenWell: shareOfPlaces(sharesOf(scene, faces, target), seesWell),
    worst: { ...worst, label: seats.get(worst.seat) ?? '' },
    coveredBy: coveredBy.map(({ record, loss }) => ({ record, label: label(record), loss })),
  }));
}

/** One entry for every record that hides anybody, so that something changes without it, lower or turned. */
function whatIfAsData({ document, setup, report }: Checked, label: Label) {
  const records = new Set(report.sight.scene.occluders.map(({ record }) => record));
  return [...records].flatMap((record) => {
    const answer = whatIf(document, setup.id, record);
    return answer && changesAnything(answer) ? { label: label(record), ...answer } : [];
  });
}

/** The platform's own sides hide what nobody misses, and can be neither lowered nor turned. */
function changesAnything({ now, gone, lowered, turned }: WhatIf): boolean {
  const tried = [gone, lowered?.seen ?? now, turned?.seen ?? now];
  return tried.some((seen) =>
    seen.some(({ seenWell, mean }, index) => seenWell !== now[index]?.seenWell || mean !== now[index]?.mean),
  );
}

function sceneAsData({ sight: { scene, visible } }: Report) {
  const targets = scene.targets.length;
  return {
    seats: scene.seats.map(({ id, x, y, z }) => ({ id, x, y, z })),
    targets: scene.targets.map(({ id, x, y, z0, z1, width }) => ({ id, x, y, z0, z1, width })),
    occluders: scene.occluders.map(occluderAsData),
    visible: scene.seats.map((_, seat) => Array.from(visible.subarray(seat * targets, (seat + 1) * targets))),
  };
}

/** What is computed with, without the record to blame. */
function occluderAsData({ record: _record, ...occluder }: Occluder) {
  return occluder;
}
