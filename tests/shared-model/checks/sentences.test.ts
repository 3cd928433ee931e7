/** Every code of a finding: a concert that has it, one that has not, and words for it that keep to the rules. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkSetup } from '#model/checks/check-setup.ts';
import type { FindingCode } from '#model/checks/finding.ts';
import { withLimits } from '#model/checks/remedies/excerpt.ts';
import { USUAL_LIMITS, wished } from '#model/checks/sentence-parts.ts';
import { explain } from '#model/checks/sentences.ts';
import { concertOf, type Document } from '#model/document/document.ts';
import { readDocument } from '#model/file-format/read.ts';
import { writeDocument } from '#model/file-format/write.ts';
import type { Units } from '#model/document/measures.ts';
import { aDocument, aPlayer, aStand, SETUP } from '../../helpers/build.ts';
import { FAULTS, MORE_FAULTS } from './faults.ts';

const CODES = Object.keys(FAULTS) as FindingCode[];
const DOCUMENTS = [...Object.values(FAULTS).map(({ faulty }) => faulty), ...MORE_FAULTS];

const ofCode = (document: Document, code: FindingCode) =>
  checkSetup(document, SETUP).findings.filter((finding) => finding.code === code);

const toldOf = (code: FindingCode, units: Units = 'metric') => {
  const { faulty } = FAULTS[code];
  const [finding] = ofCode(faulty, code);
  if (!finding) throw new Error(`no ${code}`);
  return explain(finding, faulty, SETUP, units);
};

const everything = (units: Units) =>
  DOCUMENTS.flatMap((document) =>
    checkSetup(document, SETUP).findings.map((finding) => ({
      code: finding.code,
      ...explain(finding, document, SETUP, units),
    })),
  );

/** The millimetres that "914.6 mm" or `2'-11 7/8"` stand for. */
function lengthIn(words = ''): number {
  const metric = /^([\d.]+) mm$/.exec(words);
  if (metric) return Number(metric[1]);
  const read = /^(?:(\d+)'-)?(\d+(?![\d/]))? ?(?:(\d+)\/(\d+))?"$/.exec(words);
  if (!read) return NaN;
  const [, feet = 0, inches = 0, above, below] = read;
  return 25.4 * (12 * Number(feet) + Number(inches) + (above ? Number(above) / Number(below) : 0));
}

describe('every code', () => {
  test.each(CODES)('%s is found in its faulty concert and not in its sound one', (code) => {
    expect(ofCode(FAULTS[code].faulty, code)).not.toEqual([]);
    expect(ofCode(FAULTS[code].sound, code)).toEqual([]);
  });

  test.each(CODES)('%s names its subjects by records of the document, and a place on the plan', (code) => {
    const { faulty } = FAULTS[code];
    for (const { subjects, where, measured, required } of ofCode(faulty, code)) {
      for (const id of subjects) expect(faulty.records.has(id)).toBe(true);
      if (where) expect(Number.isFinite(where.x + where.y)).toBe(true);
      expect(Number.isFinite(measured + required)).toBe(true);
    }
  });
});

describe('the words', () => {
  test('are whole sentences without a gap', () => {
    for (const { headline, text, advice } of [...everything('metric'), ...everything('imperial')]) {
      expect(headline).toMatch(/^[A-Z0-9]/);
      expect(text).toMatch(/\.$/);
      expect(advice).toMatch(/^$|\.$/);
      expect(`${headline} ${text} ${advice}`).not.toMatch(/NaN|undefined|Infinity|null|\[object| {2}/);
    }
  });

  test('speak of people as they, and never claim that a rule is kept', () => {
    for (const { headline, text, advice } of everything('metric')) {
      const words = `${headline} ${text} ${advice}`;
      expect(words).not.toMatch(/\b(he|him|his|she|her|hers)\b/i);
      expect(words).not.toMatch(/compl(y|ies|iant|iance)|conform|legal|certif|guarantee|\bsafe\b/i);
    }
  });

  test.each([
    'room.offPlatform',
    'room.edge',
    'room.door',
    'room.route',
    'room.step',
    'room.cable',
    'room.noExit',
    'room.noStepFreeExit',
    'room.wheelchairLevel',
    'room.wheelchairRoute',
    'room.turning',
    'room.cableRamp',
  ] as const)('%s, where people can be hurt, ends by leaving it to codes and venue', (code) => {
    expect(toldOf(code).advice).toMatch(/Local codes, the venue and licensed practice decide\.$/);
  });

  test('are in the units asked for', () => {
    for (const told of everything('imperial')) {
      // Staves are measured in millimetres everywhere.
      if (told.code !== 'reading.staff') expect(`${told.headline} ${told.text}`).not.toMatch(/\d mm\b/);
    }
    expect(toldOf('room.edge').text).toMatch(/^590 mm to the edge/);
    expect(toldOf('room.edge', 'imperial').text).toMatch(/^1'-11 1\/4" to the edge/);
  });
});

describe('what is said of the room', () => {
  test('things in one another', () => {
    expect(toldOf('room.overlap')).toMatchObject({
      headline: 'Table 1 and table 2 run into each other',
      text: 'They overlap by 10 mm on the floor.',
      advice: 'Try: set them 10 mm apart.',
    });
  });

  test('elbows at a wall', () => {
    const [, atWall] = MORE_FAULTS;
    const [finding] = atWall ? ofCode(atWall, 'room.elbow') : [];
    if (!atWall || !finding) throw new Error('no elbow in the wall');
    expect(explain(finding, atWall, SETUP, 'metric').text).toMatch(/^The wall leaves 150 mm on the right, /);
  });

  test('a narrow way, with what ADA/ABA says of pinch points', () => {
    const { headline, text } = toldOf('room.route');
    expect(headline).toBe('The way out for player 1 is narrow');
    expect(text).toBe(
      '900 mm at its narrowest, between object 1 and object 2; 915 mm is kept here. ' +
        'ADA/ABA 403.5.1 speaks of 915 mm, and of 815 mm over at most 610 mm.',
    );
  });

  test('where a way is narrow, of doors, levels and the platform’s own boundary', () => {
    const texts = everything('metric').flatMap(({ code, text }) =>
      code === 'room.route' || code === 'room.wheelchairRoute' ? [text] : [],
    );
    const saying = (words: RegExp) => expect(texts).toContainEqual(expect.stringMatching(words));
    saying(/^880 mm at its narrowest, at door 1; 915 mm is kept here\./);
    saying(/^700 mm at its narrowest, between .*riser 1/);
    saying(/^700 mm at its narrowest, between .*the edge of the platform/);
  });

  test('an edge of a level, and a step on the way out', () => {
    const texts = everything('metric').map(({ text }) => text);
    expect(texts).toContainEqual(
      expect.stringMatching(/^250 mm from the edge of riser 1, which drops 900 mm; 600 mm is kept here\./),
    );
    expect(toldOf('room.step').headline).toBe('The way out for player 1 goes over a step of 210 mm');
  });

  test('a closed way', () => {
    const closed = MORE_FAULTS[2];
    const [finding] = closed ? ofCode(closed, 'room.route') : [];
    if (!closed || !finding) throw new Error('no closed way');
    expect(explain(finding, closed, SETUP, 'metric').text).toMatch(/^No way from player 1 to an exit/);
  });

  test('a narrow way for a wheelchair, with what it is narrow between', () => {
    expect(toldOf('room.wheelchairRoute')).toMatchObject({
      headline: 'The way out for player 1 is narrow for a wheelchair',
      text:
        '900 mm at its narrowest, between object 1 and object 2; 915 mm are wanted. ' +
        'ADA/ABA 403.5.1 speaks of 915 mm, and of 815 mm over at most 610 mm.',
      advice: expect.stringMatching(/^Try: widen it by 1[56] mm there\. Local codes, .* decide\.$/),
    });
  });

  test('too little room to turn', () => {
    expect(toldOf('room.turning', 'imperial')).toMatchObject({
      headline: 'Player 1 has little room to turn a wheelchair at the place',
      text: expect.stringMatching(
        /^The widest free circle there measures 4'-7.*; ADA\/ABA 304\.3\.1 speaks of 5'-0"\.$/,
      ),
    });
  });

  test.each(['metric', 'imperial'] as const)(
    'what is less than its limit never reads as the limit (%s)',
    (units) => {
      const { faulty } = FAULTS['room.route'];
      const [finding] = ofCode(faulty, 'room.route');
      if (!finding) throw new Error('no route');
      const text = (measured: number, required: number) =>
        explain({ ...finding, measured, required }, faulty, SETUP, units).text;
      fc.assert(
        fc.property(
          fc.double({ min: 300, max: 2000, noNaN: true }),
          fc.double({ min: 1e-6, max: 3, noNaN: true }),
          (limit, lack) => {
            const [, measured, required] =
              /^(.*) at its narrowest, between object 1 and object 2; you asked for (.*?)\.(?: |$)/.exec(
                text(limit - lack, limit),
              ) ?? [];
            expect(lengthIn(measured)).toBeLessThan(lengthIn(required));
            expect(Math.abs(lengthIn(measured) - (limit - lack))).toBeLessThan(25.4 / 8 + 1e-9);
          },
        ),
      );
    },
  );

  test('edges: a precaution of the tool’s own, with what IBC says of guards only where the drop is great', () => {
    const { faulty } = FAULTS['room.edge'];
    const [finding] = ofCode(faulty, 'room.edge');
    if (!finding) throw new Error('no edge');
    const textFor = (guard: string) =>
      explain({ ...finding, detail: { ...finding.detail, guard } }, faulty, SETUP, 'metric').text;
    expect(textFor('none')).toMatch(/The distance is the tool’s own precaution\.$/);
    expect(textFor('guard')).toMatch(/over drops of more than 762 mm IBC 1015\.2 asks for guards/);
    // What codes exempt is no comfort to who falls.
    expect(textFor('audienceSide')).toBe(textFor('none'));
    expect(textFor('guard')).not.toMatch(/audience|exempt/);
  });
});

describe('limits', () => {
  test('that nobody set are the tool’s; others were asked for', () => {
    expect(wished('600 mm', true)).toBe('600 mm is kept here');
    expect(wished('75 %', true, 'wanted')).toBe('75 % is wanted here');
    const { faulty } = FAULTS['room.edge'];
    const asked = withLimits(faulty, { edgeDistance: 700 });
    const [finding] = ofCode(asked, 'room.edge');
    if (!finding) throw new Error('no edge');
    expect(explain(finding, asked, SETUP, 'metric').text).toContain('; you asked for 700 mm. ');
  });

  test('that nobody set are those that a file without limits is read with', () => {
    const text = writeDocument(aDocument()).replace(/"limits": \{[^}]*\}/, '"limits": {}');
    expect(text).toContain('"limits": {}');
    const read = readDocument(text);
    expect(read.ok && concertOf(read.document).limits).toEqual(USUAL_LIMITS);
  });
});

test('people are them, things are it', () => {
  const at = (document: Document, code: FindingCode) => {
    const [finding] = ofCode(document, code);
    if (!finding) throw new Error(`no ${code}`);
    return explain(finding, document, SETUP, 'metric').advice;
  };
  expect(at(aDocument(aPlayer({ y: 300 })), 'room.edge')).toMatch(/^Try: move them in by /);
  expect(at(aDocument(aStand({ y: 300 })), 'room.edge')).toMatch(/^Try: move it in by /);
  expect(at(aDocument(aPlayer({ y: 50 })), 'room.offPlatform')).toMatch(/^Try: move them in by /);
});

test('what is said of sight names the loss, the rows and the wish', () => {
  expect(toldOf('sight.house')).toMatchObject({
    headline: '40 of 40 places do not see player 1 well',
    text: expect.stringMatching(
      /^0 % of the places see player 1 well; 75 % is wanted here\. Those that do not are in rows A to E; /,
    ),
    advice: expect.stringMatching(/^Try: lower the desk/),
  });
});
