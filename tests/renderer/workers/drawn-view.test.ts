import { asId } from '#model/document/ids.ts';
import { describe, expect, it } from 'vitest';
import { descriptionsIn, drawnView, type DrawnView } from '../../../renderer/workers/drawn-view.ts';
import type { Onlooker, PictureQuestion } from '../../../renderer/workers/protocol.ts';
import { aDocument, aPlayer, aStand, SETUP, SIDE } from '../../helpers/build.ts';
import { groupsIn } from '../../shared-model/drawing/drawings.ts';

const document = aDocument(
  aPlayer({ y: 2000 }),
  aStand({ y: 1500, lip: 1100, tilt: 90, deskWidth: 900, sides: [{ ...SIDE, reader: asId('player-1') }] }),
);

const question = (from: Onlooker): PictureQuestion => ({
  setup: SETUP,
  from,
  width: 200,
  height: null,
  palette: 'dark',
  units: 'metric',
  show: 'figures',
  pixels: 4,
});

const drawn = (from: Onlooker): DrawnView | null =>
  drawnView(document, question(from), (text, size) => text.length * size * 0.5);

const subjectsOf = (view: DrawnView | null): string[] =>
  groupsIn(view?.drawing ?? []).flatMap(({ subject }) => subject ?? []);

describe('what somebody sees, drawn', () => {
  it('shows a place and a player what stands before them', () => {
    const fromSeat = drawn({ kind: 'seat', seat: 'stalls/A-4' });
    expect(fromSeat).toMatchObject({ label: 'A 4', width: 200 });
    expect(fromSeat?.description).toContain('View from A 4.');
    expect(subjectsOf(fromSeat)).toEqual(expect.arrayContaining(['stand-1', 'platform-1']));
    const fromPlayer = drawn({ kind: 'player', player: 'player-1' });
    expect(subjectsOf(fromPlayer)).toEqual(expect.arrayContaining(['stand-1', 'stalls']));
    expect(drawn({ kind: 'seat', seat: 'nowhere' })).toBeNull();
    expect(drawn({ kind: 'player', player: 'nobody' })).toBeNull();
  });

  it('has words for what is drawn', () => {
    const words = descriptionsIn(drawn({ kind: 'seat', seat: 'stalls/A-4' })?.drawing ?? []);
    expect(words.get('stand-1')).toMatch(/stand 1/i);
  });
});
