import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reachEnvelope } from '#model/checks/reach/envelope.ts';
import { reachResults } from '#model/checks/reach/reach.ts';
import { asId } from '#model/document/ids.ts';
import { pointInPolygon } from '#model/geometry/polygon.ts';
import {
  aDocument,
  anInstrument,
  anInstrumentStand,
  aPlayer,
  PERSON,
  SETUP,
} from '../../../helpers/build.ts';

const PLAYER = asId<'player'>('player-1');

describe('reachEnvelope', () => {
  it('has one ring a free hand', () => {
    expect(reachEnvelope(aDocument(aPlayer()), SETUP, PLAYER, 1000).map(({ hand }) => hand)).toEqual([
      'left',
      'right',
    ]);
    const clarinet = aDocument(aPlayer(), anInstrument());
    expect(reachEnvelope(clarinet, SETUP, PLAYER, 1000).map(({ hand }) => hand)).toEqual(['left']);
    expect(reachEnvelope(aDocument(), SETUP, PLAYER, 1000)).toEqual([]);
  });

  it('is empty at a height no hand gets to', () => {
    for (const { arm, lean } of reachEnvelope(aDocument(aPlayer()), SETUP, PLAYER, 2800))
      expect([arm, lean]).toEqual([[], []]);
  });

  it('holds exactly the grips that the arm gets to', () => {
    const near = fc.double({ min: -900, max: 900, noNaN: true });
    const height = fc.double({ min: 600, max: 1900, noNaN: true });
    fc.assert(
      fc.property(near, near, height, fc.constantFrom(0, 35, -120), (dx, dy, z, facing) => {
        const player = aPlayer({ facing });
        const peg = anInstrumentStand({ x: player.x + dx, y: player.y + dy, height: z });
        const document = aDocument(player, peg, anInstrument({ model: 'shaker', support: peg.id }));
        const [result] = reachResults(document, SETUP);
        if (!result) throw new Error('no result');
        // The ring's corners lie on the circle, so just inside it a point may be off the ring.
        fc.pre(Math.abs(result.distance / result.armReach - 1) > 0.02);
        const rings = reachEnvelope(document, SETUP, PLAYER, z).map(({ arm }) => arm);
        expect(rings.some((ring) => ring.length > 0 && pointInPolygon(peg, ring))).toBe(
          result.manner === 'reach',
        );
      }),
    );
  });

  it('is the smaller one when anyone may play', () => {
    const widthAt = (document: ReturnType<typeof aDocument>) => {
      const [first] = reachEnvelope(document, SETUP, PLAYER, 1300);
      const xs = first?.arm.map(({ x }) => x) ?? [];
      return Math.max(...xs) - Math.min(...xs);
    };
    const anyone = aDocument(aPlayer({ person: { ...PERSON, size: { by: 'anyone' } } }));
    expect(widthAt(anyone)).toBeLessThan(widthAt(aDocument(aPlayer())));
    expect(widthAt(anyone)).toBeLessThanOrEqual(2 * 601);
  });
});
