import type { Finding, Remedy } from '#model/checks/finding.ts';
import type { HouseFigure, Report } from '#model/checks/report.ts';
import type { Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  Examiner,
  keyOf,
  rarestFirst,
  STILL_AFTER_MS,
  type Asked,
  type Mending,
  type Subject,
} from '../../../renderer/state/examiner.ts';
import type { QuestionKind } from '../../../renderer/workers/protocol.ts';
import { aDocument, aStand, SETUP } from '../../helpers/build.ts';

const finding: Finding = {
  code: 'sight.house',
  severity: 'fail',
  subjects: ['player-1'],
  measured: 0.5,
  required: 0.75,
  unit: 'share',
  where: null,
  detail: {},
};

const figure = (seenWell: number): HouseFigure => ({
  player: 'player-1',
  seenWell,
  median: 1,
  worst: { seat: '', share: 1 },
  bands: [0, 0, 0, 0, 1],
  coveredBy: [],
});

/** The house sees the player as well as stand 1 stands far from the centre, a metre being 100 %. */
const shareIn = (document: Document): number => {
  const stand = document.records.get('stand-1');
  return stand && 'x' in stand ? stand.x / 1000 : 0;
};

class Checker implements Asked {
  readonly asked: QuestionKind[] = [];
  judgingTakes = 0;
  found: readonly Finding[] = [finding];
  stops = 0;
  async ask(document: Document, kind: QuestionKind): Promise<never> {
    this.asked.push(kind);
    if (kind === 'sight') {
      const sight = {
        figures: [figure(shareIn(document))],
        visible: new Float64Array(),
        targets: [],
        occluders: [],
      };
      return { ...sight, seats: null } as never;
    }
    if (kind === 'judge') {
      await new Promise((resolve) => setTimeout(resolve, this.judgingTakes));
      return { findings: this.found, reach: [], routes: [] } as never;
    }
    if (kind === 'mendMost')
      return { change: { kind: 'turn', item: 'stand-1', by: 5 }, mends: [0, 2], leaves: [1] } as never;
    return [{ kind: 'turn', item: 'stand-1', by: 5, after: 0.8 }] as never;
  }
  stop(): void {
    this.stops += 1;
  }
}

let live: Checker;
let patient: Checker;
let reports: { report: Report; before: readonly HouseFigure[] }[];
let judged: Subject[];
let remedies: ReadonlyMap<string, readonly Remedy[]>;
let mendings: ReadonlyMap<string, Mending>;
let examiner: Examiner;

beforeEach(() => {
  vi.useFakeTimers();
  live = new Checker();
  patient = new Checker();
  reports = [];
  judged = [];
  remedies = new Map();
  mendings = new Map();
  examiner = new Examiner({
    live,
    patient,
    now: () => Date.now(),
    news: {
      report: (report, before) => reports.push({ report, before }),
      judged: (subject) => judged.push(subject),
      remedies: (found) => (remedies = found),
      mendings: (found) => (mendings = found),
      failed: (error) => {
        throw error;
      },
    },
  });
});

afterEach(() => vi.useRealTimers());

const shown = (x: number, drafting = false, setup = SETUP, openings = 0): Subject => ({
  document: aDocument(aStand({ x })),
  setup,
  drafting,
  openings,
});

async function look(subject: Subject): Promise<void> {
  examiner.look(subject);
  await vi.advanceTimersByTimeAsync(live.judgingTakes);
}

const last = () => {
  const { report, before } = reports.at(-1) ?? { report: null, before: [] };
  return {
    now: report?.sight.figures[0]?.seenWell,
    before: before[0]?.seenWell,
    findings: report?.findings.length,
  };
};

describe('Examiner', () => {
  it('tells the figures first and the findings after them', async () => {
    live.judgingTakes = 30;
    examiner.look(shown(900));
    await vi.advanceTimersByTimeAsync(1);
    expect(last()).toEqual({ now: 0.9, before: undefined, findings: 0 });
    await vi.advanceTimersByTimeAsync(30);
    expect(last()).toEqual({ now: 0.9, before: undefined, findings: 1 });
    expect(judged).toHaveLength(1);
  });

  it('sets figures beside those from before the gesture while it lasts, and after it too', async () => {
    await look(shown(900));
    await look(shown(700, true));
    expect(last()).toMatchObject({ now: 0.7, before: 0.9 });
    await look(shown(600, true));
    expect(last()).toMatchObject({ now: 0.6, before: 0.9 });
    await look(shown(600));
    expect(last()).toMatchObject({ now: 0.6, before: 0.9 });
    await look(shown(800));
    expect(last()).toMatchObject({ now: 0.8, before: 0.6 });
  });

  it('keeps the comparison when the same document is looked at again', async () => {
    await look(shown(900));
    const dropped = shown(500);
    await look(dropped);
    await look({ ...dropped });
    expect(last()).toMatchObject({ now: 0.5, before: 0.9 });
  });

  it('compares nothing across setups', async () => {
    await look(shown(900));
    await look(shown(500, false, asId('setup-2')));
    expect(last()).toMatchObject({ now: 0.5, before: undefined });
  });

  it('compares nothing with the document that was open before', async () => {
    await look(shown(900));
    await look(shown(500, false, SETUP, 1));
    expect(last()).toMatchObject({ now: 0.5, before: undefined });
    await look(shown(400, false, SETUP, 1));
    expect(last()).toMatchObject({ now: 0.4, before: 0.5 });
  });

  it('does not tell of a document that is no longer open', async () => {
    live.judgingTakes = 50;
    examiner.look(shown(900));
    await vi.advanceTimersByTimeAsync(10);
    const told = reports.length;
    examiner.look(shown(500, false, SETUP, 1));
    await vi.advanceTimersByTimeAsync(200);
    expect(judged.map(({ openings }) => openings)).toEqual([1]);
    expect(reports.slice(told).map(({ report }) => report.sight.figures[0]?.seenWell)).toEqual([0.5, 0.5]);
    expect(last()).toMatchObject({ before: undefined, findings: 1 });
  });

  it('leaves slow checks until the hand rests, but not the figures', async () => {
    live.judgingTakes = 200;
    await look(shown(900));
    for (const x of [800, 700, 600]) {
      examiner.look(shown(x, true));
      await vi.advanceTimersByTimeAsync(20);
    }
    expect(live.asked).toEqual(['sight', 'judge', 'sight', 'sight', 'sight']);
    expect(last()).toMatchObject({ now: 0.6, before: 0.9 });
    await vi.advanceTimersByTimeAsync(STILL_AFTER_MS + live.judgingTakes);
    expect(live.asked.slice(-2)).toEqual(['sight', 'judge']);
    // What the resting hand holds is still a draft: the comparison stays with where the gesture began.
    expect(last()).toMatchObject({ now: 0.6, before: 0.9 });
  });

  it('asks first about what is rare', () => {
    const of = (code: Finding['code'], subject: string): Finding => ({
      ...finding,
      code,
      subjects: [subject],
    });
    const list = [of('facing.turn', 'a'), of('facing.turn', 'b'), of('room.edge', 'c'), of('room.door', 'd')];
    expect(rarestFirst(list).map(({ subjects }) => subjects[0])).toEqual(['c', 'd', 'a', 'b']);
  });

  it('suggests only when everything is still, and takes suggestions back on a change', async () => {
    await look(shown(900));
    expect(patient.asked).toEqual([]);
    await vi.advanceTimersByTimeAsync(STILL_AFTER_MS);
    expect([...remedies.keys()]).toEqual([keyOf(finding)]);
    const stops = patient.stops;
    await look(shown(800, true));
    expect(remedies.size).toBe(0);
    expect(patient.stops).toBe(stops + 1);
    await vi.advanceTimersByTimeAsync(2 * STILL_AFTER_MS);
    expect(patient.asked).toEqual(['remedies']);
  });

  it('looks for what mends most of somebody’s findings, once each has been tried, and takes it back on a change', async () => {
    const of = (code: Finding['code']): Finding => ({ ...finding, code });
    live.found = [of('facing.turn'), of('reach.far'), of('room.elbow')];
    await look(shown(900));
    await vi.advanceTimersByTimeAsync(STILL_AFTER_MS);
    expect(patient.asked).toEqual(['remedies', 'remedies', 'remedies', 'mendMost']);
    const [mending] = [...mendings.values()];
    expect(mending?.mends.map(({ code }) => code)).toEqual(['facing.turn', 'room.elbow']);
    expect(mending?.leaves.map(({ code }) => code)).toEqual(['reach.far']);
    await look(shown(800, true));
    expect(mendings.size).toBe(0);
  });
});
