/** The turns worker without the worker, and the window's side of it. */

import { describe, expect, it } from 'vitest';
import type { Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { Music } from '#model/document/music.ts';
import { judgePlan } from '#model/pages/planner/judge.ts';
import { instanceOf } from '#model/pages/instance/instance-of.ts';
import { turnPlanning, type TurnsAnswer } from '../../../renderer/workers/turn-planning.ts';
import {
  TurnsClient,
  type TurnsAsked,
  type TurnsTold,
  type TurnsWorker,
} from '../../../renderer/workers/turns-client.ts';
import { aDocument, aPlayer, aScore, aStand, MUSIC, SETUP, SIDE } from '../../helpers/build.ts';

const harp = aPlayer({ name: 'Harp', y: 2000 });
const desk = aStand({ y: 1500, facing: 180, sides: [{ ...SIDE, reader: harp.id, pagesAcross: 2 }] });

/** Ten bars of 4 s on three pages; the harp is silent in the given bars, by index. */
function music(silent: readonly number[], ownPages = true): Music {
  return {
    ...MUSIC,
    bars: Array.from({ length: 10 }, (_, bar) => ({ number: `${bar + 1}`, ticks: 8 })),
    order: [[0, 9]],
    parts: [
      {
        ...MUSIC.parts[0]!,
        name: 'Harp',
        silences: silent.map((bar) => [bar, 0, 8] as const),
        pages: [0, 3, 7].map((bar, index) => ({ page: index + 1, bar })),
        ownPages,
      },
    ],
  };
}

const concert = (piece: Music): Document =>
  aDocument(harp, desk, aScore({ players: [harp.id], music: piece }));

function planned(document: Document): TurnsAnswer {
  const steps = turnPlanning(document, SETUP);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

describe('planning the turns of a setup', () => {
  it('gives a plan that keeps every rule, with its turn in the rest', () => {
    const document = concert(music([4, 5]));
    const answer = planned(document);
    const asked = instanceOf(document, SETUP);
    if (answer.kind !== 'planned' || !asked.ok) throw new Error(answer.kind);
    expect(judgePlan(asked.instance, answer.result.plan).violations).toEqual([]);
    const [turn, ...others] = answer.result.plan.turns;
    expect(others).toEqual([]);
    expect(turn?.at).toBeGreaterThanOrEqual(16);
    expect((turn?.at ?? 0) + (turn?.seconds ?? 0)).toBeLessThanOrEqual(24);
    expect(answer.result.front[0]?.plan).toEqual(answer.result.plan);
    expect(answer.sights).toHaveLength(answer.result.front.length);
    expect(answer.sights[0]).toMatchObject({ player: harp.id, seesWell: 0.9 });
  });

  it('says what would make one when there is none', () => {
    const answer = planned(concert(music([])));
    if (answer.kind !== 'none') throw new Error(answer.kind);
    expect(answer.proved).toBe(true);
    expect(answer.remedies).toContainEqual({ kind: 'wider', station: desk.id, pages: 3 });
    expect(answer.blocked).toMatchObject([
      {
        players: [harp.id],
        without: { player: harp.id, page: 3, bar: '8', reason: { kind: 'rest', since: 1 } },
      },
    ]);
  });

  it('says what is missing', () => {
    expect(planned(aDocument(harp, desk))).toMatchObject({
      kind: 'missing',
      sentences: [expect.stringContaining('no music')],
    });
    expect(planned(concert(music([4], false)))).toMatchObject({
      kind: 'missing',
      sentences: [expect.stringContaining('Harp')],
    });
  });
});

class FakeWorker implements TurnsWorker {
  readonly asked: TurnsAsked[] = [];
  ended = false;
  #hear: (event: MessageEvent<TurnsTold>) => void = () => undefined;

  postMessage(message: TurnsAsked): void {
    this.asked.push(message);
  }

  addEventListener(type: 'message' | 'error', listener: never): void {
    if (type === 'message') this.#hear = listener;
  }

  terminate(): void {
    this.ended = true;
  }

  tell(data: TurnsTold): void {
    this.#hear({ data } as MessageEvent<TurnsTold>);
  }
}

describe('the client of the turns worker', () => {
  const PROGRESS: TurnsTold = { kind: 'progress', progress: { stage: 'turns', states: 5, allowed: 9 } };
  const DONE: TurnsTold = { kind: 'done', answer: { kind: 'missing', sentences: [] } };

  function started() {
    const workers: FakeWorker[] = [];
    const told: string[] = [];
    const client = new TurnsClient(() => {
      const worker = new FakeWorker();
      workers.push(worker);
      return worker;
    });
    const plan = (): void => client.plan(aDocument(harp), SETUP, ({ kind }) => told.push(kind));
    return { client, workers, told, plan };
  }

  it('hands over the whole document, hears progress and the answer, and ends the worker', () => {
    const { workers, told, plan } = started();
    plan();
    const [worker] = workers;
    expect(worker?.asked[0]?.setup).toBe(SETUP);
    expect(worker?.asked[0]?.records.map(({ id }) => id)).toContain(asId(harp.id));
    worker?.tell(PROGRESS);
    expect(worker?.ended).toBe(false);
    worker?.tell(DONE);
    expect([told, worker?.ended]).toEqual([['progress', 'done'], true]);
  });

  it('hears nothing of what was stopped, or planned before', () => {
    const { client, workers, told, plan } = started();
    plan();
    plan();
    workers[0]?.tell(DONE);
    expect([told, workers[0]?.ended, workers[1]?.ended]).toEqual([[], true, false]);
    client.stop();
    workers[1]?.tell(DONE);
    expect([told, workers[1]?.ended]).toEqual([[], true]);
  });
});
