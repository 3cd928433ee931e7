/** The checks worker without the worker: a copy of the document and the answers to questions about it. */

import { checkSetup } from '#model/checks/check-setup.ts';
import { whatIf } from '#model/checks/remedies/what-if.ts';
import { suggestRemedies } from '#model/checks/remedy.ts';
import type { Scene } from '#model/checks/scene.ts';
import { buildScene } from '#model/checks/scene/build-scene.ts';
import { houseFigures } from '#model/checks/sightlines/house-figures.ts';
import { createSightEngine, type SightEngine } from '#model/checks/sightlines/sight-engine.ts';
import { visibleShares } from '#model/checks/sightlines/visible-shares.ts';
import { faceShares } from '#model/checks/sightlines/windows.ts';
import { concertOf, type Document } from '#model/document/document.ts';
import { drawnView } from './drawn-view.ts';
import { touchesHouse, withChanges } from './mirror.ts';
import type {
  Answers,
  Asked,
  QuestionKind,
  Questions,
  SeatView,
  SeenPlayer,
  SightAnswer,
} from './protocol.ts';

export class Answerer {
  #document: Document = { records: new Map() };
  #seatsAreKnown = false;
  /** Shares of the setup asked about last; they are brought up to date rather than computed anew. */
  #sight: { readonly setup: string; readonly engine: SightEngine } | null = null;

  answer<K extends QuestionKind>({ kind, changes, question }: Asked<K>): Answers[K] {
    if (touchesHouse(this.#document.records, changes)) this.#seatsAreKnown = false;
    this.#document = { records: withChanges(this.#document.records, changes) };
    return this.#answers[kind](question);
  }

  readonly #answers: { readonly [K in QuestionKind]: (question: Questions[K]) => Answers[K] } = {
    sight: ({ setup }) => this.#see(setup),
    judge: ({ setup }) => {
      const { sight: _sight, setup: _setup, ...judgement } = checkSetup(this.#document, setup);
      return judgement;
    },
    remedies: ({ setup, finding }) => suggestRemedies(this.#document, setup, finding),
    seat: ({ setup, seat }) => seatView(buildScene(this.#document, setup), seat),
    whatIf: ({ setup, record }) => whatIf(this.#document, setup, record),
    picture: (question) => drawnView(this.#document, question),
  };

  #see(setup: Questions['sight']['setup']): SightAnswer {
    const scene = buildScene(this.#document, setup);
    const before = this.#sight?.setup === setup ? this.#sight.engine : null;
    const engine = before ? before.update(scene) : createSightEngine(scene);
    this.#sight = { setup, engine };
    const { seats, targets, occluders } = scene;
    const known = this.#seatsAreKnown;
    this.#seatsAreKnown = true;
    return {
      figures: houseFigures(scene, engine.visible, concertOf(this.#document).limits.seesWell),
      // A copy: the engine goes on from its own.
      visible: engine.visible.slice(),
      targets,
      occluders,
      seats: known ? null : seats,
    };
  }
}

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
