/** The booklet of one stand of a concert, whose page turns are planned. */

import { resolve } from 'node:path';
import { concertOf, type Document } from '#model/document/document.ts';
import { labelOf, numberOf } from '#model/document/labels.ts';
import type { Setup } from '#model/document/records.ts';
import { instanceOf } from '#model/pages/instance/instance-of.ts';
import type { StationPlan } from '#model/pages/planner/plan.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import type { BookletDescription } from '../services/booklet-description.ts';
import type { Fs } from '../services/fs.ts';
import { bookletOfStation } from '../services/plan-booklet.ts';
import { givenScore, partNamed } from './given-score.ts';
import { chooseSetup, readInput } from './input.ts';
import { UsageError, type BookletOrder } from './usage.ts';

export interface PlannedBooklet {
  readonly path: string;
  readonly described: BookletDescription;
  readonly remarks: readonly string[];
}

/** Throws `UsageError`. */
export async function plannedBooklet(order: BookletOrder, fs: Fs): Promise<PlannedBooklet> {
  const input = await readInput(fs, order.file);
  const setup = chooseSetup(input.document, order.setup);
  const document = await givenScore(input.document, setup, order, fs);
  const asked = instanceOf(document, setup.id);
  if (!asked.ok) throw new UsageError(`${setup.name || setup.id}: ${asked.missing.join(' ')}`);
  const result = planNow(asked.instance);
  if (result.status !== 'planned')
    throw new UsageError('there is no plan of the page turns: standlines turns says what would make one');
  const station = chooseStation(document, setup, result.plan.stations, order.stand);
  const planned = {
    document,
    setup,
    instance: asked.instance,
    plan: result.plan,
    paper: order.paper ?? (concertOf(document).units === 'imperial' ? 'Letter' : 'A4'),
    pdfs: pdfsOf(document, setup, order),
  };
  const remarks = [...input.notes, ...asked.notes];
  return { path: input.path, described: bookletOfStation(planned, station), remarks };
}

function chooseStation(
  document: Document,
  { id: setup }: Setup,
  stations: readonly StationPlan[],
  wanted: string | null,
): StationPlan {
  const labels = stations.map(({ station }) => labelOf(document, setup, station));
  const [only] = stations;
  if (wanted === null && stations.length === 1 && only) return only;
  const there = labels.map((label) => `"${label}"`).join(', ');
  if (wanted === null) throw new UsageError(`say whose paper with --stand; the plan uses ${there}`);
  const found = stations.find(({ station }, index) => {
    const record = document.records.get(station);
    const number = record ? String(numberOf(document, setup, record)) : '';
    return [station, record?.name, number, labels[index]].includes(wanted);
  });
  if (!found) throw new UsageError(`the plan puts no paper on "${wanted.slice(0, 60)}"; it uses ${there}`);
  return found;
}

/** By the player of the part; paths as typed on the command line. */
function pdfsOf(document: Document, setup: Setup, { pdfs }: BookletOrder): Map<string, string> {
  return new Map(
    pdfs.map(({ part, value }) => {
      const { score, index } = partNamed(document, setup, part);
      const player = score.players[index];
      if (!player) throw new UsageError(`--pdf: nobody plays "${part.slice(0, 60)}"; say who with --plays`);
      return [player, resolve(value)];
    }),
  );
}
