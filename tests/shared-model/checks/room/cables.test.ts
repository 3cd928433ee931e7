import { describe, expect, test } from 'vitest';
import { cableFindings } from '#model/checks/room/route-findings.ts';
import { routeResults } from '#model/checks/room/routes.ts';
import type { AnyRecord, Point } from '#model/document/records.ts';
import { aDocument, aDoor, aLamp, aPlayer, SETUP } from '../../../helpers/build.ts';

const findings = (...records: AnyRecord[]) => cableFindings(aDocument(...records), SETUP);

/** Straight upstage from the player to the door. */
const DOOR = aDoor({ offset: 3500, width: 1000 });
const PLAYER = aPlayer({ y: 1000 });
const cable = (...points: readonly (readonly [number, number])[]): readonly Point[] =>
  points.map(([x, y]) => ({ x, y }));

describe('a cable', () => {
  test('across the way out is a caution at the crossing', () => {
    expect(
      findings(DOOR, PLAYER, aLamp({ x: 2000, y: 3000, cable: cable([2000, 3000], [-2000, 3000]) })),
    ).toEqual([
      {
        code: 'room.cable',
        severity: 'caution',
        subjects: ['lamp-1', 'player-1'],
        measured: 1,
        required: 0,
        unit: 'count',
        where: { x: expect.closeTo(0, 0), y: expect.closeTo(3000, 0) },
        detail: {},
      },
    ]);
  });

  test('that is covered is none, and no cable is none', () => {
    const across = cable([2000, 3000], [-2000, 3000]);
    expect(findings(DOOR, PLAYER, aLamp({ x: 2000, cable: across, cableCovered: true }))).toEqual([]);
    expect(findings(DOOR, PLAYER, aLamp({ x: 2000, cable: [] }))).toEqual([]);
  });

  test('beside the way counts within half its width of 915', () => {
    const beside = (x: number) => aLamp({ x: 2000, cable: cable([2000, 3000], [x, 3000]) });
    expect(findings(DOOR, PLAYER, beside(450))).toHaveLength(1);
    expect(findings(DOOR, PLAYER, beside(465))).toEqual([]);
  });

  test('at a player’s own place, within the first step, does not count', () => {
    const atFoot = (y: number) => aLamp({ x: 2000, y, cable: cable([2000, y], [-2000, y]) });
    expect(findings(DOOR, PLAYER, atFoot(1100))).toEqual([]);
    expect(findings(DOOR, PLAYER, atFoot(1200))).toHaveLength(1);
  });

  test('across several ways is one finding that counts them', () => {
    const two = [PLAYER, aPlayer({ id: 'player-2', x: 1500, y: 1000 })];
    const document = aDocument(DOOR, ...two, aLamp({ x: 3000, cable: cable([3000, 4500], [-3000, 4500]) }));
    expect(routeResults(document, SETUP).map(({ width }) => width > 900)).toEqual([true, true]);
    expect(cableFindings(document, SETUP)).toMatchObject([{ measured: 2 }]);
  });
});
