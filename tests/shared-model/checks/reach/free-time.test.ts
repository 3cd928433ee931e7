/** The rests of a part against the time that a hand needs. Seconds in comments: 4/4 at 60 is 4 s a bar, a tick half a second. */

import { describe, expect, it } from 'vitest';
import { reachFindings } from '#model/checks/reach/findings.ts';
import { reachResults } from '#model/checks/reach/reach.ts';
import { explain } from '#model/checks/sentences.ts';
import { asId } from '#model/document/ids.ts';
import type { KeptStation, KeptTurn } from '#model/document/kept-plan.ts';
import type { Music, Part } from '#model/document/music.ts';
import {
  aDocument,
  anInstrument,
  anInstrumentStand,
  aPagePlan,
  aPlayer,
  aScore,
  aStand,
  MUSIC,
  SETUP,
  SIDE,
} from '../../../helpers/build.ts';

const player = aPlayer();
const stand = aStand({
  y: 1400,
  sides: [{ ...SIDE, reader: player.id, pagesAcross: 1, turned: true, freeTime: 9 }],
});

function turnTime(part: Partial<Part>, music: Partial<Music> = {}, pagesAcross = 1) {
  const sides = [{ ...stand.sides[0], pagesAcross }] as const;
  const score = aScore({
    music: { ...MUSIC, ...music, parts: [{ ...MUSIC.parts[0]!, ...part }] },
    players: [player.id],
  });
  const [result] = reachResults(aDocument(player, { ...stand, sides }, score), SETUP);
  return { seconds: result?.freeTime, source: result?.freeTimeSource };
}

describe('the time for a turn', () => {
  it('is the rest in the part that touches the change of page, and what was typed no longer counts', () => {
    // Page 2 begins with bar 3, whose first two beats are silent.
    expect(turnTime({})).toEqual({ seconds: 2, source: 'part' });
  });

  it('goes back into the bars before', () => {
    expect(
      turnTime({
        silences: [
          [1, 2, 8],
          [2, 0, 4],
        ],
      }),
    ).toEqual({ seconds: 5, source: 'part' });
  });

  it('is none where no rest touches the change of page', () => {
    expect(
      turnTime({
        silences: [
          [0, 0, 8],
          [2, 1, 8],
        ],
      }),
    ).toEqual({ seconds: 0, source: 'part' });
  });

  it('is the shortest of all turns, those of repeats included', () => {
    // Bars 1 to 4, then 1 to 4 again: back to page 1 without a rest at the end of bar 4.
    expect(
      turnTime(
        {},
        {
          order: [
            [0, 3],
            [0, 3],
          ],
        },
      ),
    ).toEqual({ seconds: 0, source: 'part' });
    expect(
      turnTime(
        {
          silences: [
            [2, 0, 4],
            [3, 6, 8],
          ],
        },
        {
          order: [
            [0, 3],
            [0, 3],
          ],
        },
      ),
    ).toEqual({
      seconds: 1,
      source: 'part',
    });
  });

  it('is as typed when all pages lie side by side, when they are those of the score, or without music', () => {
    const typed = { seconds: 9, source: 'typed' };
    expect(turnTime({}, {}, 2)).toEqual(typed);
    expect(turnTime({ ownPages: false })).toEqual(typed);
    const [result] = reachResults(aDocument(player, stand), SETUP);
    expect(result).toMatchObject({ freeTime: 9, freeTimeSource: 'typed' });
  });

  it('follows the tempo', () => {
    const slow = [{ bar: 0, at: 0, quartersPerMinute: 30, source: 'typed' }] as const;
    expect(turnTime({}, { tempos: slow })).toEqual({ seconds: 4, source: 'part' });
  });
});

describe('with a page plan that is kept', () => {
  const partner = aPlayer({ id: 'player-2', y: 2000 });
  const grips = (turns: Partial<KeptTurn>[]) => {
    const station: KeptStation = {
      ...{ station: stand.id, kind: 'book', leaves: 1, pagesAcross: [2], stackSide: 0 },
      views: [
        [
          [null, 1],
          [2, null],
        ],
      ],
    };
    const plan = aPagePlan({
      stations: [station],
      turns: turns.map((turn) => ({
        ...{ station: stand.id, player: player.id, hand: 'right', place: 2, fromState: 0, toState: 1 },
        ...turn,
      })),
    });
    // Both play it; silent for the first two beats of bar 3, at 8 s.
    const music = { ...MUSIC, parts: [MUSIC.parts[0]!, { ...MUSIC.parts[0]!, id: 'second' }] };
    const score = aScore({ music, players: [player.id, partner.id] });
    const results = reachResults(aDocument(player, partner, stand, score, plan), SETUP);
    return results.map(({ grip, freeTime, freeTimeSource }) => [grip.player, freeTime, freeTimeSource]);
  };

  it('only its turns are made, in its rests', () => {
    expect(grips([])).toEqual([]);
    expect(grips([{ place: 2 }])).toEqual([[player.id, 2, 'part']]);
    // Half-way through the first bar nobody rests.
    expect(grips([{ place: 2 }, { place: 0.5 }])).toEqual([[player.id, 0, 'part']]);
  });

  it('and by those whom it names, be it a partner', () => {
    expect(grips([{ player: partner.id }])).toEqual([[partner.id, 2, 'part']]);
  });
});

describe('the time to pick something up', () => {
  const waiting = [anInstrumentStand({ x: -600 }), anInstrument({ support: asId('instrumentStand-1') })];
  const timeWith = (part: Partial<Part>) => {
    const music = { ...MUSIC, parts: [{ ...MUSIC.parts[0]!, ...part }] };
    const [result] = reachResults(
      aDocument(player, ...waiting, aScore({ music, players: [player.id] })),
      SETUP,
    );
    return result?.freeTime;
  };

  it('is the rest at the bar in which the part asks for another instrument', () => {
    expect(timeWith({ instruments: [{ bar: 2, name: 'Cor anglais' }] })).toBe(2);
    expect(timeWith({ instruments: [{ bar: 0, name: 'Cor anglais' }] })).toBe(0);
  });

  it('is not known when the part never asks for one', () => {
    expect(timeWith({})).toBeNull();
  });
});

it('says where in the music the shortest rest lies', () => {
  const score = aScore({
    players: [player.id],
    music: {
      ...MUSIC,
      order: [
        [0, 3],
        [0, 3],
      ],
    },
  });
  const [result] = reachResults(aDocument(player, stand, score), SETUP);
  // Back to page 1 after bar 4, at 16 s, where bar 1 begins again.
  expect(result?.freeTimeAt).toEqual({ bar: '1', seconds: 16 });
});

it('follows a tempo that is typed over: the part is the same then, the music another', () => {
  const at = (quartersPerMinute: number) => {
    const tempos = [{ bar: 0, at: 0, quartersPerMinute, source: 'typed' as const }];
    const score = aScore({ players: [player.id], music: { ...MUSIC, tempos } });
    return reachResults(aDocument(player, stand, score), SETUP)[0]?.freeTime;
  };
  // Two beats.
  expect([at(60), at(120), at(60)]).toEqual([2, 1, 2]);
});

it('a turn without a rest is a finding that says so', () => {
  const score = aScore({
    players: [player.id],
    music: { ...MUSIC, parts: [{ ...MUSIC.parts[0]!, silences: [] }] },
  });
  const document = aDocument(player, stand, score);
  const late = reachFindings(document, SETUP).find(({ code }) => code === 'reach.late');
  expect(late).toMatchObject({ severity: 'fail', required: 0 });
  expect(late && explain(late, document, SETUP, 'metric').text).toMatch(
    /the part has a place without any rest for it, at bar 3 \(0:08 into the music\)\.$/,
  );
});
