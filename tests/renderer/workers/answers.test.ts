import { checkSetup } from '#model/checks/check-setup.ts';
import { whatIf } from '#model/checks/remedies/what-if.ts';
import { find } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { changeover } from '#model/programme/changeover.ts';
import { compareSetups } from '#model/programme/compare.ts';
import { describe, expect, it, vi } from 'vitest';
import { Answerer } from '../../../renderer/workers/answers.ts';
import { WorkerClient, type WorkerLike } from '../../../renderer/workers/worker-client.ts';
import type { Asked, CheckKind, Told } from '../../../renderer/workers/protocol.ts';
import { seatFigure } from '../../../renderer/canvas/seat-figures.ts';
import { aDocument, aPlayer, aSeatBlock, aStand, SETUP, SIDE } from '../../helpers/build.ts';

const asked = (kind: CheckKind, question: unknown, records: readonly AnyRecord[]): Asked<CheckKind> =>
  ({ ticket: 1, kind, question, changes: { put: records, drop: [] } }) as Asked<CheckKind>;

/** A tall desk right before the player, seen from the middle of row A. */
const hiding = aDocument(
  aPlayer({ y: 2000 }),
  aStand({ y: 1500, lip: 1100, tilt: 90, deskWidth: 900, sides: [{ ...SIDE, reader: asId('player-1') }] }),
);

describe('the checks worker', () => {
  it('judges as the checks themselves do', () => {
    const answerer = new Answerer();
    const { sight, setup: _setup, ...judgement } = checkSetup(hiding, SETUP);
    const records = [...hiding.records.values()];
    expect(answerer.answer(asked('judge', { setup: SETUP }, records))).toEqual(judgement);
    expect(answerer.answer(asked('sight', { setup: SETUP }, []))).toMatchObject({
      figures: sight.figures,
      visible: sight.visible,
    });
  });

  it('compares variants as the comparison itself does, and leaves out one that has gone', () => {
    const records = [...hiding.records.values()];
    const question = { setups: [SETUP, asId('setup-77')] };
    const setup = find(hiding, SETUP);
    if (!setup) throw new Error('no setup');
    expect(new Answerer().answer(asked('compared', question, records))).toEqual(
      compareSetups(hiding, [setup]),
    );
  });

  it('works changeovers out as they are worked out anywhere else, in values that can be handed over', () => {
    const records = [...hiding.records.values()];
    const answer = new Answerer().answer(asked('changeover', { from: null, to: SETUP }, records));
    expect(structuredClone(answer)).toEqual(changeover(hiding, null, SETUP));
  });

  it('keeps the shares up to date through any moves, as if computed anew', () => {
    const answerer = new Answerer();
    answerer.answer(asked('sight', { setup: SETUP }, [...hiding.records.values()]));
    for (const x of [100, -250, 0, 900, 120]) {
      const moved = aDocument(
        aPlayer({ y: 2000 }),
        aStand({ x, y: 1500, lip: 1100, tilt: 90, deskWidth: 900 }),
      );
      const answer = answerer.answer(asked('sight', { setup: SETUP }, [...moved.records.values()]));
      const { sight } = checkSetup(moved, SETUP);
      expect(answer).toMatchObject({ visible: sight.visible, figures: sight.figures });
    }
  });

  it('computes what the house sees once for the figures and the judgement', () => {
    const answerer = new Answerer();
    const first = answerer.answer(asked('sight', { setup: SETUP }, [...hiding.records.values()]));
    const again = answerer.answer(asked('sight', { setup: SETUP }, []));
    if (!first || !again || !('visible' in first) || !('visible' in again))
      throw new Error('no sight report');
    // The very same shares, not equal ones: nothing was computed anew.
    expect(again.visible).toBe(first.visible);
    answerer.answer(asked('judge', { setup: SETUP }, []));
    const after = answerer.answer(asked('sight', { setup: SETUP }, []));
    expect(after && 'visible' in after && after.visible).toBe(first.visible);
  });

  it('hands the places of the house over once, and again when the house changes', () => {
    const answerer = new Answerer();
    const judge = (records: readonly AnyRecord[]) => {
      const answer = answerer.answer(asked('sight', { setup: SETUP }, records));
      if (!answer || !('seats' in answer)) throw new Error('not a sight report');
      return answer.seats?.length ?? null;
    };
    expect(judge([...hiding.records.values()])).toBe(40);
    expect(judge([aStand({ x: 100 })])).toBeNull();
    expect(judge([aSeatBlock({ rows: 2 })])).toBe(16);
  });

  it('says what a place sees and what is in the way', () => {
    const answerer = new Answerer();
    const view = answerer.answer(
      asked('seat', { setup: SETUP, seat: 'stalls/A-4' }, [...hiding.records.values()]),
    );
    expect(view).toMatchObject({ seat: { id: 'stalls/A-4' }, players: [{ player: 'player-1' }] });
    const [player] = view && 'players' in view ? view.players : [];
    expect(player?.share).toBeLessThan(0.9);
    expect(player?.coveredBy[0]?.record).toBe('stand-1');
    // One thing alone in the way covers exactly what is not seen.
    expect(player?.coveredBy[0]?.share).toBeCloseTo(1 - (player?.share ?? 0), 9);
    expect(answerer.answer(asked('seat', { setup: SETUP, seat: 'nowhere' }, []))).toBeNull();
  });

  it('says how much of a face a place sees', () => {
    const answerer = new Answerer();
    const view = answerer.answer(
      asked('seat', { setup: SETUP, seat: 'stalls/A-4' }, [...hiding.records.values()]),
    );
    const [player] = view && 'players' in view ? view.players : [];
    const low = aDocument(aPlayer({ y: 2000 }), aStand({ y: 1500, lip: 700, tilt: 90, deskWidth: 900 }));
    const clear = answerer.answer(
      asked('seat', { setup: SETUP, seat: 'stalls/A-4' }, [...low.records.values()]),
    );
    const [seen] = clear && 'players' in clear ? clear.players : [];
    expect(player?.face).toBeLessThan(1);
    expect(seen?.face).toBe(1);
    expect(seen?.share).toBeLessThan(1);
  });

  it('says what the house would see without a thing, as the checks do', () => {
    const answerer = new Answerer();
    const records = [...hiding.records.values()];
    const question = { setup: SETUP, record: 'stand-1' };
    expect(answerer.answer(asked('whatIf', question, records))).toEqual(whatIf(hiding, SETUP, 'stand-1'));
    expect(answerer.answer(asked('whatIf', { setup: SETUP, record: 'door-1' }, []))).toBeNull();
  });

  it('reads a place from the report to the same share', () => {
    const report = checkSetup(hiding, SETUP);
    const figure = seatFigure(report, 'stalls/A-4', 'player-1');
    const row = report.sight.scene.seats.findIndex(({ id }) => id === 'stalls/A-4');
    expect(figure).toMatchObject({ player: 'player-1', share: report.sight.visible[row] });
    expect(seatFigure(report, 'nowhere', 'player-1')).toBeNull();
    expect(seatFigure(report, 'stalls/A-4', 'nobody')).toBeNull();
  });
});

/** Workers that keep what they are told and answer when asked to. */
class StandIn implements WorkerLike {
  readonly heard: Asked[] = [];
  ended = false;
  #listener: (event: MessageEvent<Told>) => void = () => undefined;
  postMessage(message: Asked): void {
    this.heard.push(message);
  }
  addEventListener(type: string, listener: never): void {
    if (type === 'message') this.#listener = listener;
  }
  terminate(): void {
    this.ended = true;
  }
  tell(told: Told): void {
    this.#listener({ data: told } as MessageEvent<Told>);
  }
}

describe('the window’s side of it', () => {
  it('sends only what changed, and everything again after a stop', async () => {
    const workers: StandIn[] = [];
    const client = new WorkerClient(() => workers[workers.push(new StandIn()) - 1] as StandIn);
    const first = client.ask(hiding, 'seat', { setup: SETUP, seat: 'a' });
    const moved = { records: new Map([...hiding.records, ['stand-1', aStand({ x: 9 })]]) };
    const second = client.ask(moved, 'seat', { setup: SETUP, seat: 'b' });
    const worker = workers[0];
    expect(worker?.heard[0]?.changes.put).toHaveLength(hiding.records.size);
    expect(worker?.heard[1]?.changes).toEqual({ put: [aStand({ x: 9 })], drop: [] });

    worker?.tell({ ticket: 1, answer: null, failure: null });
    expect(await first).toBeNull();
    client.stop();
    expect(worker?.ended).toBe(true);
    await expect(second).rejects.toThrow('stopped');
    void client.ask(moved, 'seat', { setup: SETUP, seat: 'c' }).catch(() => undefined);
    expect(workers[1]?.heard[0]?.changes.put).toHaveLength(moved.records.size);
  });

  it('ends a worker that nobody has asked for anything for a while, and starts another when asked again', async () => {
    vi.useFakeTimers();
    try {
      const workers: StandIn[] = [];
      const client = new WorkerClient(() => workers[workers.push(new StandIn()) - 1] as StandIn, 500);
      const ask = (): Promise<unknown> => client.ask(hiding, 'judge', { setup: SETUP });
      const answers = [ask(), ask()];
      workers[0]?.tell({ ticket: 1, answer: null, failure: null });
      vi.advanceTimersByTime(10_000);
      expect(workers[0]?.ended).toBe(false);
      workers[0]?.tell({ ticket: 2, answer: null, failure: null });
      vi.advanceTimersByTime(499);
      expect(workers[0]?.ended).toBe(false);
      const third = ask();
      vi.advanceTimersByTime(10_000);
      expect(workers[0]?.ended).toBe(false);
      workers[0]?.tell({ ticket: 3, answer: null, failure: null });
      vi.advanceTimersByTime(500);
      expect(workers[0]?.ended).toBe(true);
      await Promise.all([...answers, third]);
      const fourth = ask();
      expect(workers[1]?.heard[0]?.changes.put).toHaveLength(hiding.records.size);
      workers[1]?.tell({ ticket: 4, answer: null, failure: null });
      await fourth;
    } finally {
      vi.useRealTimers();
    }
  });

  it('passes a failure of the checks on', async () => {
    const worker = new StandIn();
    const client = new WorkerClient(() => worker);
    const answer = client.ask(hiding, 'judge', { setup: SETUP });
    worker.tell({ ticket: 1, answer: null, failure: 'bug' });
    await expect(answer).rejects.toThrow('bug');
  });
});
