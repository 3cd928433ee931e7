import type { AnyRecord } from '#model/document/records.ts';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { isLarge } from '../../../renderer/canvas/large-plan.ts';
import { Picture } from '../../../renderer/canvas/picture.ts';
import { PlanPainting, REST_MS, type PaintingRequest } from '../../../renderer/canvas/plan-painting.ts';
import type { PlanAsked } from '../../../renderer/state/drawings.ts';
import type { PaintedPlan, PlanPart } from '../../../renderer/workers/painted-plan.ts';
import { aDocument, aPlayer, aSeatBlock, aStand, SETUP } from '../../helpers/build.ts';

const full = aSeatBlock({ rows: 50, seatsPerRow: 40 });
const look = { camera: { centre: { x: 0, y: 0 }, scale: 0.05 }, view: { width: 800, height: 600 } };

const request = (...records: AnyRecord[]): PaintingRequest => ({
  document: aDocument(aPlayer(), ...records),
  setup: SETUP,
  report: null,
  paperScale: 50,
  theme: 'light',
  units: 'metric',
  hurried: false,
  layers: {
    seats: true,
    sightBands: null,
    marks: true,
    names: true,
    dimensions: 'none',
    grid: true,
    words: true,
    reach: false,
    routes: false,
  },
});

interface Asked extends PlanAsked {
  readonly part: PlanPart;
  readonly answer: (painted: PaintedPlan | null) => void;
}

/** A stage and workers that note what they are told. */
function bench() {
  const shown: string[] = [];
  const asked: Asked[] = [];
  const stage = {
    draw: () => void shown.push('drawn here'),
    show: (part: PlanPart) => void shown.push(part),
    clear: () => void shown.push('cleared'),
    look: () => undefined,
  };
  const drawings = {
    plan: (_document: unknown, part: PlanPart, ask: PlanAsked) =>
      new Promise<PaintedPlan | null>((answer) => asked.push({ ...ask, part, answer })),
  };
  const picture = new Picture((text, size) => text.length * size * 0.5);
  const seen = (): void => void shown.push('seen');
  const failed = (error: unknown): void => {
    throw error;
  };
  return {
    shown,
    asked,
    painting: new PlanPainting({ stage, picture, drawings, seen, failed, wrote: () => undefined }),
  };
}

function bitmap() {
  const close = vi.fn();
  return { close, painted: { bitmap: { close } as unknown as ImageBitmap, look, written: [] } };
}

describe('what is large', () => {
  it('is a full house or a crowd, counted by the setup', () => {
    const crowd = Array.from({ length: 70 }, (_, i) => aStand({ id: `stand-${i + 1}`, x: i * 10 }));
    expect(isLarge(aDocument(aPlayer()), SETUP)).toBe(false);
    expect(isLarge(aDocument(full), SETUP)).toBe(true);
    expect(isLarge(aDocument(aSeatBlock({ rows: 2, seatsPerRow: [400, 401] })), SETUP)).toBe(true);
    expect(isLarge(aDocument(aSeatBlock({ rows: 2, seatsPerRow: [400, 400] })), SETUP)).toBe(false);
    expect(isLarge(aDocument(...crowd), SETUP)).toBe(true);
  });
});

describe('the painting of the plan', () => {
  beforeEach(() => {
    vi.useFakeTimers();
    vi.stubGlobal('devicePixelRatio', 2);
  });
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  it('draws a usual concert at once and asks no worker', () => {
    const { painting, shown, asked } = bench();
    painting.draw(request(), look);
    vi.advanceTimersByTime(REST_MS * 2);
    expect(shown).toEqual(['drawn here', 'seen']);
    expect(asked).toEqual([]);
  });

  it('asks workers for a large one, in a hurry first and wholly when the hand rests', async () => {
    const { painting, shown, asked } = bench();
    painting.draw(request(full), look);
    expect(asked.map(({ part, hurried, density }) => [part, hurried, density])).toEqual([
      ['ground', true, 2],
      ['items', true, 2],
    ]);
    asked[0]?.answer(bitmap().painted);
    asked[1]?.answer(null);
    await vi.advanceTimersByTimeAsync(REST_MS);
    expect(shown, 'nothing for a part that looks as it did').toEqual(['ground']);
    expect(asked.slice(2).map(({ part, hurried }) => [part, hurried])).toEqual([
      ['ground', false],
      ['items', false],
    ]);
  });

  it('asks again when the camera has come to rest somewhere else', async () => {
    const { painting, asked } = bench();
    painting.draw(request(full), look);
    asked.forEach(({ answer }) => answer(null));
    await vi.advanceTimersByTimeAsync(REST_MS);
    asked.forEach(({ answer }) => answer(null));
    const before = asked.length;
    const there = { ...look, camera: { ...look.camera, centre: { x: 500, y: 0 } } };
    await vi.advanceTimersByTimeAsync(1);
    painting.look(there);
    painting.look(there);
    await vi.advanceTimersByTimeAsync(REST_MS);
    expect(asked.slice(before).map((each) => each.look)).toEqual([there, there]);
  });

  it('says that the plan is seen once both parts are there, and not in a view without room', async () => {
    const { painting, shown, asked } = bench();
    painting.draw(request(full), look);
    asked[0]?.answer(bitmap().painted);
    await vi.advanceTimersByTimeAsync(1);
    expect(shown).toEqual(['ground']);
    asked[1]?.answer(bitmap().painted);
    await vi.advanceTimersByTimeAsync(1);
    expect(shown).toEqual(['ground', 'items', 'seen']);
    const roomless = bench();
    roomless.painting.draw(request(), { ...look, view: { width: 0, height: 0 } });
    expect(roomless.shown).toEqual(['drawn here']);
  });

  it('shows nothing of a concert that is not open any more', async () => {
    const { painting, shown, asked } = bench();
    painting.draw(request(full), look);
    painting.forget();
    const late = bitmap();
    asked[0]?.answer(late.painted);
    await vi.advanceTimersByTimeAsync(REST_MS * 2);
    expect(shown).toEqual(['cleared']);
    expect(late.close).toHaveBeenCalledOnce();
  });
});
