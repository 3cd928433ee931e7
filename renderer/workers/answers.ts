/** The checks worker without the worker: a copy of the document and the answers to questions about it. */

import { readEnsemble } from '#model/arrange/ensemble-text.ts';
import { checkSetup } from '#model/checks/check-setup.ts';
import { whatIf } from '#model/checks/remedies/what-if.ts';
import { mendingMost, suggestRemedies } from '#model/checks/remedy.ts';
import type { Scene } from '#model/checks/scene.ts';
import { buildScene } from '#model/checks/scene/build-scene.ts';
import { houseFigures } from '#model/checks/sightlines/house-figures.ts';
import { createSightEngine, type SightEngine } from '#model/checks/sightlines/sight-engine.ts';
import { visibleShares } from '#model/checks/sightlines/visible-shares.ts';
import { faceShares } from '#model/checks/sightlines/windows.ts';
import { concertOf, find, type Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import type { SightReport } from '#model/checks/report.ts';
import { changeover } from '#model/programme/changeover.ts';
import { compareSetups, type Comparison } from '#model/programme/compare.ts';
import { bestFashion } from '../store/ensemble-search.ts';
import { touchesHouse, withChanges, type RecordChanges } from './mirror.ts';
import type {
  Asked,
  CheckAnswers,
  CheckKind,
  CheckQuestions,
  SeatView,
  SeenPlayer,
  SightAnswer,
} from './protocol.ts';

/** What the house sees of a setup, with what it takes to bring it up to date. */
interface KnownSight {
  readonly document: Document;
  readonly setup: string;
  readonly engine: SightEngine;
  readonly report: SightReport;
}

export class Answerer {
  #document: Document = { records: new Map() };
  #seatsAreKnown = false;
  /** Of the setup asked about last; brought up to date rather than computed anew. */
  #sight: KnownSight | null = null;

  answer<K extends CheckKind>({ kind, changes, question }: Asked<K>): CheckAnswers[K] {
    if (touchesHouse(this.#document.records, changes)) this.#seatsAreKnown = false;
    if (!isNothing(changes)) this.#document = { records: withChanges(this.#document.records, changes) };
    return this.#answers[kind](question);
  }

  readonly #answers: { readonly [K in CheckKind]: (question: CheckQuestions[K]) => CheckAnswers[K] } = {
    sight: ({ setup }) => this.#see(setup),
    judge: ({ setup }) => {
      const known = this.#sightOf(setup);
      const { sight: _sight, setup: _setup, ...judgement } = checkSetup(this.#document, setup, known);
      return judgement;
    },
    remedies: ({ setup, finding }) => suggestRemedies(this.#document, setup, finding),
    mendMost: (question) => mendingMost({ document: this.#document, ...question }),
    seat: ({ setup, seat }) => seatView(this.#sightOf(setup).scene, seat),
    whatIf: ({ setup, record }) => whatIf(this.#document, setup, record),
    compared: ({ setups }) => comparison(this.#document, setups),
    ensemble: ({ words, order }) => bestFashion(this.#document, readEnsemble(words).members, order),
    changeover: ({ from, to }) => changeover(this.#document, from, to),
  };

  #see(setup: Id<'setup'>): SightAnswer {
    const { scene, visible, figures } = this.#sightOf(setup);
    const { seats, targets, occluders } = scene;
    const known = this.#seatsAreKnown;
    this.#seatsAreKnown = true;
    return { figures, visible, targets, occluders, seats: known ? null : seats };
  }

  #sightOf(setup: Id<'setup'>): SightReport {
    const document = this.#document;
    const known = this.#sight?.setup === setup ? this.#sight : null;
    if (known?.document === document) return known.report;
    const scene = buildScene(document, setup);
    const engine = known ? known.engine.update(scene) : createSightEngine(scene);
    const { visible } = engine;
    const figures = houseFigures(scene, visible, concertOf(document).limits.seesWell);
    const report = { scene, visible, figures };
    this.#sight = { document, setup, engine, report };
    return report;
  }
}

/** Setups that have gone meanwhile are left out. */
function comparison(document: Document, ids: readonly Id<'setup'>[]): Comparison {
  const setups = ids.flatMap((id) => find(document, id) ?? []);
  return compareSetups(document, setups);
}

const isNothing = ({ put, drop }: RecordChanges): boolean => put.length === 0 && drop.length === 0;

/** What one place sees of every player, and what hides him from there. */
export function seatView(scene: Scene, seatId: string): SeatView | null {
  const seat = scene.seats.find(({ id }) => id === seatId);
  if (!seat) return null;
  const shares = visibleShares({ ...scene, seats: [seat] });
  const faces = faceShares({ ...scene, seats: [seat] });
  const players = scene.targets.map((target, index): SeenPlayer => {
    const [share, face] = [shares[index] ?? 0, faces[index] ?? 0];
    return { player: target.id, share, face, coveredBy: share < 1 ? coversOf(scene, { seat, target }) : [] };
  });
  return { seat, players };
}

type Line = { readonly seat: Scene['seats'][number]; readonly target: Scene['targets'][number] };

const TRIFLE = 0.005;

/** Each record's own shadow, as if nothing else stood there; shadows may overlap. */
function coversOf({ occluders }: Scene, { seat, target }: Line): SeenPlayer['coveredBy'] {
  const covers = [...new Set(occluders.map(({ record }) => record))].map((record) => {
    const alone = occluders.filter((occluder) => occluder.record === record);
    const seen = visibleShares({ seats: [seat], targets: [target], occluders: alone })[0] ?? 1;
    return { record, share: 1 - seen };
  });
  return covers.filter(({ share }) => share > TRIFLE).sort((a, b) => b.share - a.share);
}
