/** Findings told as one where one thing makes them, each told once, in German as well. */

import { afterEach, describe, expect, it } from 'vitest';
import type { Finding, FindingCode } from '#model/checks/finding.ts';
import { byCause, causeHeadline } from '#model/checks/one-cause.ts';
import { german } from '#model/words/german/index.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { aDocument, aPlayer, aStand, SETUP } from '../../helpers/build.ts';

const document = aDocument(
  aPlayer({ name: 'Viola' }),
  aPlayer({ id: 'player-2', name: 'Oboe' }),
  aPlayer({ id: 'player-3', name: 'Horn' }),
  aStand(),
);

const found = (code: FindingCode, ...subjects: string[]): { readonly finding: Finding } => ({
  finding: {
    code,
    severity: 'fail',
    subjects,
    measured: 0,
    required: 1,
    unit: 'share',
    where: null,
    detail: {},
  },
});

const told = (list: readonly { readonly finding: Finding }[]): string =>
  causeHeadline(
    list.map(({ finding }) => finding),
    document,
    SETUP,
  );

afterEach(speakEnglish);

describe('findings of one cause', () => {
  const list = [
    found('sight.house', 'player-1', 'stand-1'),
    found('reach.far', 'player-1', 'stand-1'),
    found('sight.house', 'player-2', 'stand-2'),
    found('sight.house', 'player-3', 'stand-1'),
    found('sight.house', 'player-3'),
  ];

  it('are those of a kind that one thing makes; none is lost or told twice, and the order stays', () => {
    const causes = byCause(list).map(({ members }) => members.map((member) => list.indexOf(member)));
    expect(causes).toEqual([[0, 3], [1], [2], [4]]);
    expect(new Set(byCause(list).map(({ key }) => key)).size).toBe(4);
  });

  it('have a headline that names the cause and how many suffer', () => {
    const [one] = byCause(list);
    expect(told(one?.members ?? [])).toBe('Stand 1 hides 2 players from too many places');
    expect(
      told([found('facing.turn', 'player-1', 'player-2'), found('facing.turn', 'player-1', 'player-3')]),
    ).toBe('Viola (player 1) turns the whole body to look at 2 others');
    const blocked = [
      found('facing.blocked', 'player-1', 'player-2', 'stand-1'),
      found('facing.blocked', 'player-1', 'player-3', 'stand-1', 'stand-2'),
    ];
    expect(byCause(blocked)).toHaveLength(1);
    expect(told(blocked)).toBe('Stand 1 is in the way of 2 pairs who must see each other');
    const narrow = [found('room.route', 'player-1', 'stand-1'), found('room.route', 'player-2', 'stand-1')];
    expect(told(narrow)).toBe('The ways out of 2 players are narrow at stand 1');
    speakFrom('de', german);
    expect(told(blocked)).toBe('Pult 1 ist 2 Paaren im Weg, die einander sehen müssen');
  });
});
