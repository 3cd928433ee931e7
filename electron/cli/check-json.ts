/** `check --json`: everything the checks say, as data. Its form is described in DEVELOPERS.md. */

import type { Finding } from '#model/checks/finding.ts';
import type { Report } from '#model/checks/report.ts';
import type { Occluder } from '#model/checks/scene.ts';
import { explain } from '#model/checks/sentences.ts';
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

export function checkAsData(checked: Checked, geometry: boolean): object {
  const { file, document, setup, report, notes } = checked;
  const label = (id: string) => labelOf(document, setup.id, id);
  return {
    file,
    notes,
    setup: named(setup),
    setups: setupsOf(document).map(named),
    units: concertOf(document).units,
    findings: report.findings.map((finding) => findingAsData(checked, finding)),
    sight: sightAsData(report, label),
    reach: report.reach.map((result) => ({
      ...result,
      labels: [label(result.grip.player), label(result.grip.item)],
    })),
    routes: report.routes.map((route) => ({ label: label(route.player), ...route })),
    ...(geometry ? { scene: sceneAsData(report) } : {}),
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
    ...explain(finding, document, setup.id, concertOf(document).units),
  };
}

function sightAsData({ sight }: Report, label: (id: string) => string) {
  const seats = new Map(sight.scene.seats.map((seat) => [seat.id, seat.label]));
  return sight.figures.map(({ player, worst, coveredBy, ...figure }) => ({
    player,
    label: label(player),
    ...figure,
    worst: { ...worst, label: seats.get(worst.seat) ?? '' },
    coveredBy: coveredBy.map(({ record, loss }) => ({ record, label: label(record), loss })),
  }));
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
