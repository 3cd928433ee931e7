import { afterEach, describe, expect, it } from 'vitest';
import type { Outcome, Refusal } from '#model/commands/command.ts';
import { placeAt } from '#model/commands/move.ts';
import { refusalWords } from '#model/commands/refusal-words.ts';
import { setFields } from '#model/commands/set-fields.ts';
import { asId } from '#model/document/ids.ts';
import type { Stand } from '#model/document/records.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { german } from '#model/words/german/index.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { aConcert, aDocument, aDoor, aLamp, aPlatform, aSeatBlock, aStand } from '../../helpers/build.ts';

const STAND = asId<'stand'>('stand-1');

afterEach(speakEnglish);

function refusalOf(outcome: Outcome): Refusal {
  if (outcome.ok) throw new Error('was not refused');
  return outcome;
}

const withLip = (lip: number): Refusal =>
  refusalOf(setFields(aDocument(aStand()), { ids: [STAND], fields: { lip } }));

function withSide(index: 0 | 1, change: Partial<Stand['sides'][0]>): Refusal {
  const [side] = aStand().sides;
  const sides: Stand['sides'] = [
    index === 0 ? { ...side, ...change } : side,
    index === 1 ? { ...side, ...change } : side,
  ];
  const stand = aStand({ name: 'Viola’s stand', form: 'backToBack', sides: [side, side] });
  return refusalOf(setFields(aDocument(stand), { ids: [STAND], fields: { sides } }));
}

describe('a spot too far off', () => {
  it('is told with the limit in the units that are shown', () => {
    const refusal = refusalOf(placeAt(aDocument(aStand()), { id: 'stand-1', x: 999_999, y: 0 }));
    expect(refusalWords(refusal, 'metric')).toContain('more than 50000 mm from the platform');
    // 50 m are 164 ft 0.5 in (1 in = 25.4 mm).
    expect(refusalWords(refusal, 'imperial')).toContain('more than about 164\'-0 1/2" from the platform');
  });
});

describe('a refused length', () => {
  it('is told in feet and inches where these are shown, without a millimetre', () => {
    const words = refusalWords(withLip(9000), 'imperial');
    // 9000 mm are 29 ft 6.33 in, 100 mm 3.94 in and 2500 mm 8 ft 2.43 in (1 in = 25.4 mm).
    expect(words).toBe(
      'stand 1, lip above the floor: 29\'-6 1/4" is not allowed; give a length from about 3 7/8" to about 8\'-2 1/2".',
    );
    expect(refusalWords(withLip(-20.5), 'imperial')).not.toMatch(/\bmm\b|20\.5/);
  });

  it('is told in millimetres where these are shown, with a comma in German', () => {
    expect(refusalWords(withLip(20.5), 'metric')).toBe(
      'stand 1, lip above the floor: 20.5 mm is not allowed; give a length from 100 mm to 2500 mm.',
    );
    speakFrom('de', german);
    expect(refusalWords(withLip(20.5), 'metric')).toContain(
      ': 20,5 mm ist nicht erlaubt; eine Länge von 100 mm bis',
    );
  });

  it('of a door that does not fit counts edges as the window does', () => {
    const door = aDoor({ edge: 0, offset: 0, width: 900 });
    const document = aDocument(aPlatform(), door);
    const refusal = refusalOf(setFields(document, { ids: [door.id], fields: { width: 90_000 } }));
    expect(refusalWords(refusal, 'metric')).toMatch(
      /, width: the door would reach 90000 mm along edge 1, which is \d+ mm long;/,
    );
    expect(refusalWords(refusal, 'imperial')).toMatch(/would reach 295'-3 1\/4" along edge 1/);
  });

  it('stays in millimetres for the staves, which are typed so everywhere', () => {
    const staves =
      'Viola’s stand (stand 1), staff height, printed: 200 is not allowed; give a length from 1 to 100 mm.';
    expect(refusalWords(withSide(0, { staffSize: 200 }), 'imperial')).toBe(staves);
  });
});

describe('a refused field', () => {
  it('is named as in the window, with the side of the stand, in both languages', () => {
    expect(refusalWords(withSide(1, { pagesAcross: 7 }), 'metric')).toBe(
      'Viola’s stand (stand 1), other side, pages side by side: 7 is not allowed; give a whole number from 0 to 3.',
    );
    speakFrom('de', german);
    expect(refusalWords(withSide(0, { pagesAcross: 7 }), 'metric')).toBe(
      'Viola’s stand (Pult 1), Seiten nebeneinander: 7 ist nicht erlaubt; eine ganze Zahl von 0 bis 3 angeben.',
    );
  });

  it('is named with the corner that it belongs to', () => {
    const platform = aPlatform();
    const outline = platform.outline.map((point, index) => (index === 2 ? { ...point, x: 2e6 } : point));
    const refusal = refusalOf(setFields(aDocument(platform), { ids: [platform.id], fields: { outline } }));
    expect(refusalWords(refusal, 'metric')).toMatch(
      /^platform\b.*, corner 3, from the centre line: 2000000 mm is not allowed/,
    );
    const lamp = aLamp();
    const cable = [
      { x: 0, y: 0 },
      { x: 0, y: -3e6 },
    ];
    const cut = refusalOf(setFields(aDocument(lamp), { ids: [lamp.id], fields: { cable } }));
    expect(refusalWords(cut, 'metric')).toContain(
      'lamp 1, corner 2 of the cable, from the front edge: -3000000 mm',
    );
  });

  it('speaks of shares in per cent and of times without the words of the file', () => {
    const concert = aConcert();
    const limits = { ...concert.limits, seesWell: 1.2 };
    const share = refusalOf(setFields(aDocument(), { ids: [concert.id], fields: { limits } }));
    expect(refusalWords(share, 'metric')).toContain(
      'sees of him: 120 % is not allowed; give a share from 0 to 100 %.',
    );
    expect(refusalWords(withSide(0, { turned: true, freeTime: 99_999 }), 'metric')).toMatch(
      /rest to turn in: 99999 .* or nothing when it is not known/,
    );
  });

  it('of rows tells what is lacking without the words of the file', () => {
    const block = aSeatBlock({ rows: 2, seatsPerRow: [8, 9] });
    const refusal = refusalOf(setFields(aDocument(block), { ids: [block.id], fields: { rows: 3 } }));
    expect(refusalWords(refusal, 'metric')).toMatch(
      /seats a row: there are numbers for 2 rows, and the block has 3;/,
    );
  });
});

describe('another refusal', () => {
  it('is told as it is', () => {
    const other: Refusal = {
      ok: false,
      reason: 'The platform cannot be removed: every file has exactly one.',
    };
    expect(refusalWords(other, 'imperial')).toBe(other.reason);
  });
});
