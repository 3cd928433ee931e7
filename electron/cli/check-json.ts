/** `check --json`: everything the checks say, as data. Its form is described in DEVELOPERS.md. */

import type { Finding, Remedy } from '#model/checks/finding.ts';
import { triedAdvice } from '#model/checks/remedy-words.ts';
import type { Tried } from '#model/checks/tried-list.ts';
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
  readonly tried: Tried;
  /** Of the reader of the file. */
  readonly notes: readonly string[];
}

/** What is told beside the findings and figures. */
export interface More {
  readonly geometry: boolean;
  readonly whatIf: boolean;
}

interface ToldFinding extends Explained {
  readonly tried: Remedy | null;
}

/** A finding in words, and what was tried against it in place of what was not. */
export function told({ document, setup, tried }: Checked, finding: Finding): ToldFinding {
  const { units } = concertOf(document);
  const explained = explain(finding, document, setup.id, units);
  const remedies = tried(finding);
  const nameOf = (id: string) => labelOf(document, setup.id, id);
  const advice = triedAdvice(explained, finding, { remedies, nameOf, units });
  return { ...explained, advice, tried: remedies?.[0] ?? null };
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
    findings: report.findings.map((finding) => findingAsData(checked, finding)),
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

/** With the change that was tried and clears it; null: none of those tried does, or nothing was tried. */
function findingAsData(checked: Checked, finding: Finding) {
  const { document, setup } = checked;
  const { subjects, ...figures } = finding;
  const { headline, text, advice, tried } = told(checked, finding);
  const labels = subjects.map((id) => labelOf(document, setup.id, id));
  return { ...figures, subjects, labels, headline, text, advice, tried };
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
