import { describe, expect, it } from 'vitest';
import { bearingOf, type Glance } from '#model/checks/facing/bearings.ts';
import { facingResults } from '#model/checks/facing/facing.ts';
import { asId } from '#model/document/ids.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { facingTowards, facingVector, placed } from '#model/geometry/frame.ts';
import { turnFor } from '#model/checks/reading/gaze.ts';
import { aDocument, aPlayer, aStand, SETUP, SIDE } from '../../../helpers/build.ts';

/** Every look of one player at another, by "who>whom". */
function glances(...records: AnyRecord[]): Map<string, Glance> {
  const { pairs } = facingResults(aDocument(...records), SETUP);
  return new Map(
    pairs
      .flatMap(({ glances: both }) => both)
      .map((glance) => [`${glance.looker}>${glance.partner}`, glance]),
  );
}

describe('bearings', () => {
  // Plane trigonometry, from somebody at the origin who faces +y; half the field of view is 190 / 2 degrees
  // (CIE International Lighting Vocabulary: nearly 190° with both eyes).
  it.each([
    [1, 1, 45, 'head'],
    [0.2, 1, 11.31, 'glance'],
    [1, 0, 90, 'body'],
  ])('a partner at (%d, %d) m bears %d°: %s', (x, y, bearing, turn) => {
    const [looker, partner] = [
      aPlayer({ x: 0, y: 0, facing: 180 }),
      aPlayer({ id: 'player-2', x: x * 1000, y: y * 1000 }),
    ];
    const glance = glances(looker, partner).get('player-1>player-2');
    // Somebody who looks upstage has stage left, which is +x, on his right.
    expect(glance?.bearing).toBeCloseTo(-bearing, 2);
    expect(glance).toMatchObject({ turn, inField: true, from: { stand: null } });
  });

  it('are positive to the left', () => {
    expect(bearingOf({ x: 0, y: 0 }, 0, { x: 500, y: -500 })).toBeCloseTo(45, 9);
    expect(bearingOf({ x: 0, y: 0 }, 0, { x: -500, y: -500 })).toBeCloseTo(-45, 9);
  });

  it('of somebody on one’s own spot are none, whichever way one faces', () => {
    for (const facing of [0, 90, -135]) expect(bearingOf({ x: 5, y: 5 }, facing, { x: 5, y: 5 })).toBe(0);
  });

  it('beyond 95° are outside the field of view', () => {
    const at = (bearing: number) =>
      aPlayer({ id: 'player-2', ...placed({ x: 0, y: 0, facing: bearing }, { x: 0, y: -1500 }) });
    const looker = aPlayer({ x: 0, y: 0 });
    expect(glances(looker, at(94.9)).get('player-1>player-2')).toMatchObject({ turn: 'body', inField: true });
    expect(glances(looker, at(95.1)).get('player-1>player-2')).toMatchObject({
      turn: 'body',
      inField: false,
    });
  });

  // Plane geometry: a bearing counts from the way each of the two looks.
  it('are not symmetric: one glances at a partner who has to turn the head', () => {
    const all = glances(
      aPlayer({ x: 0, y: 1000, facing: 180 }),
      aPlayer({ id: 'player-2', x: 200, y: 2500, facing: 50 }),
    );
    expect(all.get('player-1>player-2')?.turn).toBe('glance');
    expect(all.get('player-2>player-1')?.turn).toBe('head');
  });

  /** Players on a circle, all facing its middle. */
  const circleOf = (count: number) =>
    Array.from({ length: count }, (_, index) => {
      const facing = (360 / count) * index + 17;
      const ahead = facingVector(facing);
      return aPlayer({ id: `player-${index + 1}`, x: -900 * ahead.x, y: 2500 - 900 * ahead.y, facing });
    });

  // Plane geometry: in an equilateral triangle 30°, in a square 45° and 0°.
  it('are 30° in an equilateral trio that faces its middle', () => {
    const all = [...glances(...circleOf(3)).values()];
    expect(all).toHaveLength(6);
    for (const { bearing, turn } of all) {
      expect(Math.abs(bearing)).toBeCloseTo(30, 9);
      expect(turn).toBe('eyes');
    }
  });

  it('are 45° to the neighbours and 0° to the opposite player in a square quartet', () => {
    const all = [...glances(...circleOf(4)).values()]
      .map(({ bearing }) => Math.abs(bearing))
      .sort((a, b) => a - b);
    expect(all).toHaveLength(12);
    for (const bearing of all.slice(0, 4)) expect(bearing).toBeCloseTo(0, 9);
    for (const bearing of all.slice(4)) expect(bearing).toBeCloseTo(45, 9);
  });
});

describe('who reads', () => {
  const reader = aPlayer({ x: 0, y: 2000, facing: 0 });
  const partner = aPlayer({ id: 'player-2', x: 0, y: 500, facing: 180 });
  const at = (id: string, bearing: number, pagesAcross = 2) => {
    const spot = placed({ x: 0, y: 2000, facing: bearing }, { x: 0, y: -700 });
    const facing = facingTowards(spot, reader);
    return aStand({ id, ...spot, facing, sides: [{ ...SIDE, pagesAcross, reader: asId('player-1') }] });
  };
  const bearing = (...stands: AnyRecord[]) => glances(reader, partner, ...stands).get('player-1>player-2');

  it('looks towards the page and not where he faces', () => {
    expect(bearing()?.bearing).toBeCloseTo(0, 9);
    const turned = bearing(at('stand-1', 50));
    // The page is to his left, so his partner is to the right of it.
    expect(turned?.bearing).toBeCloseTo(-50, 6);
    expect(turned).toMatchObject({ turn: turnFor(50), from: { stand: 'stand-1' } });
  });

  it('looks where he faces over a stand without paper', () => {
    expect(bearing(at('stand-1', 50, 0))).toMatchObject({ turn: 'glance', from: { stand: null } });
  });

  it('of several pages looks up from the one farthest from his partner', () => {
    expect(bearing(at('stand-1', 20), at('stand-2', -40), at('stand-3', 30))).toMatchObject({
      turn: 'head',
      from: { stand: 'stand-2' },
    });
  });
});
