/** Page plans that cannot be played through at all are refused with the place that is wrong. */

import { describe, expect, it } from 'vitest';
import { asId } from '#model/document/ids.ts';
import type { KeptPin, KeptStation, KeptTurn } from '#model/document/kept-plan.ts';
import type { PagePlanRecord } from '#model/document/records.ts';
import { documentRuleBroken } from '#model/file-format/document-rules.ts';
import { readDocument } from '#model/file-format/read.ts';
import { readRecord } from '#model/file-format/record.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { aDocument, aPagePlan, aPlayer, aScore, aStand } from '../../helpers/build.ts';

const STAND = asId<'stand'>('stand-1');
const paper: KeptStation = {
  station: STAND,
  kind: 'book',
  leaves: 1,
  pagesAcross: [2],
  stackSide: 0,
  views: [
    [
      [1, 2],
      [3, null],
    ],
  ],
};
const turn: KeptTurn = {
  station: STAND,
  player: asId('player-1'),
  hand: 'right',
  place: 1.5,
  fromState: 0,
  toState: 1,
};
const pagePin: KeptPin = { kind: 'page', station: STAND, side: 0, state: 1, slot: 0, page: 3 };
const turnPin: KeptPin = { kind: 'turn', station: STAND, player: asId('player-1'), from: 1, to: 2 };
const plan = aPagePlan({ stations: [paper], turns: [turn], pins: [pagePin, turnPin] });

const withPaper = (fields: Partial<KeptStation>): PagePlanRecord => ({
  ...plan,
  stations: [{ ...paper, ...fields }],
});

describe('a page plan', () => {
  it('is read as it was written, and may be empty', () => {
    expect(readRecord(plan)).toEqual({ ok: true, record: plan });
    expect(readRecord(aPagePlan())).toMatchObject({ ok: true });
  });

  it.each<[string, string, unknown]>([
    ['stations[1].station', 'name each stand once', { ...plan, stations: [paper, paper] }],
    ['stations[0].leaves', 'loose pages have no leaves', withPaper({ kind: 'loose' })],
    ['stations[0].leaves', 'from 0 to 999', withPaper({ leaves: -1 })],
    ['stations[0].kind', 'give one of "loose"', withPaper({ kind: 'scroll' as 'book' })],
    ['stations[0].views[0]', 'has 2 entries; give 3', withPaper({ leaves: 2 })],
    ['stations[0].views[0][0]', 'has 2 entries; give 3', withPaper({ pagesAcross: [3] })],
    ['stations[0].views', 'has 1 entries; give 2', withPaper({ pagesAcross: [2, 2] })],
    ['stations[0].pagesAcross[0]', 'from 0 to 12', withPaper({ pagesAcross: [1e9] })],
    [
      'stations[0].views[0][0][0]',
      'from 1 to 999',
      withPaper({
        views: [
          [
            [0.5, 1],
            [1, 2],
          ],
        ],
      }),
    ],
    ['stations[0].stackSide', 'give 0 or 1', withPaper({ stackSide: 2 as 1 })],
    ['turns[0].station', 'paper on', { ...plan, stations: [], pins: [] }],
    ['turns[0].place', 'bars as performed', { ...plan, turns: [{ ...turn, place: Infinity }] }],
    ['turns[0].place', 'bars as performed', { ...plan, turns: [{ ...turn, place: -0.5 }] }],
    ['turns[1].place', 'in the order of their places', { ...plan, turns: [turn, { ...turn, place: 1 }] }],
    ['turns[0].hand', '"left", "right"', { ...plan, turns: [{ ...turn, hand: 'foot' }] }],
    ['turns[0].toState', 'from 0 to 999', { ...plan, turns: [{ ...turn, toState: -1 }] }],
    ['turns[0].seconds', 'not a known field', { ...plan, turns: [{ ...turn, seconds: 2 }] }],
    ['pins[0].state', 'does not have it', { ...plan, pins: [{ ...pagePin, state: 2 }] }],
    ['pins[0].side', 'does not have it', { ...plan, pins: [{ ...pagePin, side: 1 }] }],
    ['pins[0].slot', 'has 2 pages', { ...plan, pins: [{ ...pagePin, slot: 2 }] }],
    ['pins[0].to', 'not before "from"', { ...plan, pins: [{ ...turnPin, to: 0.5 }] }],
    ['pins[0].kind', '"page" or "turn"', { ...plan, pins: [{ ...turnPin, kind: 'wish' }] }],
    ['score', 'is missing', { ...plan, score: undefined }],
  ])('wrong in %s: %s', (field, words, record) => {
    const read = readRecord(JSON.parse(JSON.stringify(record, withoutUnending)));
    expect(read).toMatchObject({ ok: false, complaint: { field } });
    if (!read.ok) expect(read.complaint.text).toContain(words);
  });

  it('is there once a setup, for music and things that are there', () => {
    const there = [aPlayer(), aStand(), aScore(), plan];
    expect(documentRuleBroken(aDocument(...there))).toBeNull();
    expect(
      documentRuleBroken(aDocument(...there, { ...plan, id: asId<'pagePlan'>('pagePlan-2') })),
    ).toMatchObject({
      field: 'setup',
      text: expect.stringContaining('one page plan at most'),
    });
    expect(documentRuleBroken(aDocument(aPlayer(), aStand(), plan))).toMatchObject({ field: 'score' });
    expect(documentRuleBroken(aDocument(aPlayer(), aScore(), plan))).toMatchObject({
      field: 'stations[0].station',
    });
    expect(documentRuleBroken(aDocument(aStand(), aScore(), plan))).toMatchObject({
      field: 'turns[0].player',
    });
  });

  it('is refused in a file with path and value', () => {
    const text = writeDocument(aDocument(aPlayer(), aStand(), aScore(), plan));
    const read = readDocument(text.replace('"place": 1.5', '"place": -2'));
    expect(read.ok ? '' : read.problem.message).toMatch(
      /^page plan "pagePlan-1", turn number 1, when: -2 is not allowed; give a place from 0 to/,
    );
  });
});

/** JSON has no word for what is unending; a number too large stands for it. */
function withoutUnending(_: string, value: unknown): unknown {
  return value === Infinity ? 1e300 : value;
}
