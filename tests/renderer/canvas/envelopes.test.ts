import { describe, expect, it } from 'vitest';
import { reachEnvelope } from '#model/checks/reach/envelope.ts';
import { reachResults } from '#model/checks/reach/reach.ts';
import { asId } from '#model/document/ids.ts';
import { envelopesOf } from '../../../renderer/canvas/envelopes.ts';
import { aDocument, aPlayer, aStand, SETUP, SIDE } from '../../helpers/build.ts';

const PLAYER = aPlayer();
const READER = aStand({ y: 1500, sides: [{ ...SIDE, reader: PLAYER.id, turned: true }] });
const document = aDocument(PLAYER, READER);
const report = { setup: SETUP, reach: reachResults(document, SETUP) };
const radiusOf = (outline: readonly { readonly x: number }[]): number => {
  const across = outline.map(({ x }) => x);
  return (Math.max(...across) - Math.min(...across)) / 2;
};

describe('how far the hands of a player get', () => {
  it('is shown at the height of what he has to get to', () => {
    const shown = envelopesOf(document, report, PLAYER.id, READER.id);
    const grip = report.reach.find(({ grip: { item } }) => item === READER.id)?.grip;
    expect(shown?.height).toBe(grip?.z);
    const computed = reachEnvelope(document, SETUP, PLAYER.id, grip?.z ?? NaN);
    expect(shown?.rings.map(({ outline }) => outline)).toEqual(
      computed.flatMap(({ arm, lean }) => [lean, arm]),
    );
  });

  it('is farther with a lean', () => {
    const rings = envelopesOf(document, report, PLAYER.id, null)?.rings ?? [];
    const [leaning, arm] = [rings.find((ring) => ring.leaning), rings.find((ring) => !ring.leaning)];
    expect(radiusOf(leaning?.outline ?? [])).toBeGreaterThan(radiusOf(arm?.outline ?? []) + 50);
  });

  it('is at the height of a desk where there is nothing to get to, and nobody has none', () => {
    expect(envelopesOf(aDocument(PLAYER), { setup: SETUP, reach: [] }, PLAYER.id, null)?.height).toBe(900);
    expect(envelopesOf(document, report, asId<'player'>('player-9'), null)).toBeNull();
  });

  it('is asked in vain of what has no hands', () => {
    for (const id of [READER.id, 'platform-1', 'stalls']) {
      expect(envelopesOf(document, report, id, null)).toBeNull();
    }
  });
});
