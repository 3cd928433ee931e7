/** The booklet of one stand of a concert, whose page turns are planned. */

import { basename, resolve } from 'node:path';
import { concertOf, type Document } from '#model/document/document.ts';
import { labelOf, numberOf } from '#model/document/labels.ts';
import type { Setup } from '#model/document/records.ts';
import { instanceOf } from '#model/pages/instance/instance-of.ts';
import { judgedPlan, type JudgedPlan } from '#model/pages/kept/judged.ts';
import type { PlanInstance } from '#model/pages/planner/instance.ts';
import type { Plan, StationPlan } from '#model/pages/planner/plan.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import type { BookletJob } from '../services/booklet.ts';
import { faultOf } from '../services/faults.ts';
import type { Fs } from '../services/fs.ts';
import { openBytes } from '../services/open-file.ts';
import { openPartPdf } from '../services/part-pdf.ts';
import { jobOfStation, type PartPages } from '../services/planned-print.ts';
import { givenScore, partNamed } from './given-score.ts';
import { chooseSetup, readInput } from './input.ts';
import { UsageError, type BookletOrder } from './usage.ts';

/** A booklet that is known, apart from what only its PDFs tell. */
export interface AskedBooklet {
  /** What it was read from. */
  readonly path: string;
  /** The PDFs that it is made from. */
  readonly pdfs: readonly string[];
  readonly remarks: readonly string[];
  /** Opens the PDFs. Throws `FaultError`. */
  readonly job: (now: Date) => Promise<BookletJob>;
}

/** Throws `UsageError`. */
export async function plannedBooklet(order: BookletOrder, fs: Fs): Promise<AskedBooklet> {
  const input = await readInput(fs, order.file);
  const setup = chooseSetup(input.document, order.setup);
  const given = await givenScore(input.document, setup, order, fs);
  const { document } = given;
  const asked = instanceOf(document, setup.id);
  if (!asked.ok) throw new UsageError(`${setup.name || setup.id}: ${asked.missing.join(' ')}`);
  const { instance, notes } = asked;
  const kept = judgedPlan(document, setup.id);
  const plan = kept?.plan ?? bestPlan(instance);
  const station = chooseStation(document, setup, plan.stations, order.stand);
  const paper = order.paper ?? usualPaper(document).toLowerCase();
  const pdfs = pdfsOf(document, setup, order);
  return {
    path: input.path,
    pdfs: [...pdfs.values()],
    remarks: [...input.notes, ...given.notes, ...notes, ...keptRemarks(kept)],
    job: async (now) => {
      const parts = await openedParts(fs, instance, pdfs);
      const print = { document, setup: setup.id, instance, plan, parts, booklets: [], cards: null, now };
      return jobOfStation(print, station, paper);
    },
  };
}

function bestPlan(instance: PlanInstance): Plan {
  const result = planNow(instance);
  if (result.status !== 'planned')
    throw new UsageError('there is no plan of the page turns: standlines turns says what would make one');
  return result.plan;
}

function keptRemarks(kept: JudgedPlan | null): string[] {
  if (!kept) return [];
  return [
    'The booklet is of the plan that FILE keeps.',
    ...(kept.judgement.violations.length > 0
      ? ['The kept page plan breaks rules: standlines turns says which.']
      : []),
  ];
}

export function usualPaper(document: Document): 'A4' | 'Letter' {
  return concertOf(document).units === 'imperial' ? 'Letter' : 'A4';
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

/** The first page of the PDF is the first of the part. */
async function openedParts(
  fs: Fs,
  { players }: PlanInstance,
  pdfs: ReadonlyMap<string, string>,
): Promise<Map<string, PartPages>> {
  const opened = new Map<string, PartPages>();
  for (const [player, path] of pdfs) {
    const bytes = await openBytes(fs, path, 'part').catch((error: unknown) => {
      throw new UsageError(faultOf(error, path).message);
    });
    const part = await openPartPdf(bytes, basename(path));
    const count = players.find(({ id }) => id === player)?.pages ?? 0;
    if (count > part.pages.length)
      throw new UsageError(
        `--pdf: the part has ${count} pages, but "${part.name}" only ${part.pages.length} of them`,
      );
    opened.set(player, { part, pages: part.pages.map((_, index) => index) });
  }
  return opened;
}
