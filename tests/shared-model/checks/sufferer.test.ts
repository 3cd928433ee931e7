import { expect, it } from 'vitest';
import type { Finding, FindingCode } from '#model/checks/finding.ts';
import { ALL, bySufferer, HOUSE, suffererOf } from '#model/checks/sufferer.ts';
import { asId } from '#model/document/ids.ts';
import { aDocument, aLamp, aPlayer, aSetup, aStand } from '../../helpers/build.ts';

const document = aDocument(
  aSetup(),
  aPlayer({ id: asId('player-1') }),
  aPlayer({ id: asId('player-2') }),
  aStand({ id: asId('stand-1') }),
  aStand({ id: asId('stand-2') }),
  aLamp({ id: asId('lamp-1') }),
);

const finding = (code: FindingCode, subjects: readonly string[], measured = 0): Finding => ({
  code,
  severity: 'fail',
  subjects,
  measured,
  required: 1,
  unit: 'share',
  where: null,
  detail: {},
});

it.each([
  ['sight.house', ['player-1', 'stand-1'], HOUSE],
  ['reach.late', ['player-2', 'stand-1'], 'player-2'],
  ['reading.angle', ['player-1', 'stand-1'], 'player-1'],
  ['room.overlap', ['stand-1', 'stand-2'], ALL],
  ['room.edge', ['stand-1'], ALL],
  ['room.overlap', ['stand-1', 'player-2'], 'player-2'],
  ['room.noExit', [], ALL],
  ['room.route', ['player-1', 'gone'], 'player-1'],
] as const)('%s of %j: %s suffers', (code, subjects, sufferer) => {
  expect(suffererOf(document, finding(code, subjects))).toBe(sufferer);
});

it('a cable across the way of one is his, of several everybody’s', () => {
  expect(suffererOf(document, finding('room.cable', ['lamp-1', 'player-1'], 1))).toBe('player-1');
  expect(suffererOf(document, finding('room.cable', ['lamp-1', 'player-1'], 2))).toBe(ALL);
});

it('groups keep the order of the list, and no finding is lost or told twice', () => {
  const list = [
    finding('reach.late', ['player-2', 'stand-1']),
    finding('sight.house', ['player-1']),
    finding('reading.angle', ['player-2', 'stand-1']),
    finding('sight.house', ['player-2']),
  ].map((each, number) => ({ members: [{ finding: each }], number }));
  const groups = bySufferer(document, list);
  expect(groups.map(({ sufferer, findings }) => [sufferer, findings.map(({ number }) => number)])).toEqual([
    ['player-2', [0, 2]],
    [HOUSE, [1, 3]],
  ]);
  expect(bySufferer(document, [])).toEqual([]);
});

it('what several suffer from one cause is everybody’s', () => {
  const both = ['player-1', 'player-2'].map((player) => ({
    finding: finding('reach.late', [player, 'stand-1']),
  }));
  expect(bySufferer(document, [{ members: both }])).toEqual([
    { sufferer: ALL, findings: [{ members: both }] },
  ]);
});
