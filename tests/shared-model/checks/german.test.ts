/** Findings in German: nothing of the English is left, and names stand where they need no ending. */

import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { checkSetup } from '#model/checks/check-setup.ts';
import type { FindingCode } from '#model/checks/finding.ts';
import { remedyWords } from '#model/checks/remedy-words.ts';
import { explain } from '#model/checks/sentences.ts';
import type { Document } from '#model/document/document.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import { andMore, listed } from '#model/words/lists.ts';
import { SETUP } from '../../helpers/build.ts';
import { FAULTS, MORE_FAULTS } from './faults.ts';

beforeEach(() => speakFrom('de', german));
afterEach(speakEnglish);

/** Which rule a page plan breaks is told by the planner. */
const told = (document: Document) =>
  checkSetup(document, SETUP).findings.map((finding) =>
    explain({ ...finding, detail: { ...finding.detail, worst: 'Regel.' } }, document, SETUP, 'metric'),
  );

const toldOf = (code: FindingCode) => {
  const { faulty } = FAULTS[code];
  const finding = checkSetup(faulty, SETUP).findings.find((each) => each.code === code);
  if (!finding) throw new Error(`no ${code}`);
  return explain(finding, faulty, SETUP, 'metric');
};

describe('every finding', () => {
  test.each([...Object.values(FAULTS).map(({ faulty }) => faulty), ...MORE_FAULTS])(
    'of concert %# is told in German sentences',
    (document) => {
      for (const { headline, text, advice } of told(document)) {
        expect(headline).toMatch(/^[A-ZÄÖÜ0-9]/);
        expect(text).toMatch(/\.$/);
        expect(advice).toMatch(/^$|\.$/);
        const words = `${headline} ${text} ${advice}`;
        expect(words).not.toMatch(/\b(the|of|and|from|is|stands?|players?|to|it|them)\b/i);
        expect(words).not.toMatch(/NaN|undefined|[{}]| {2}|\d\.\d+ (?:%|mm\b|s\b|Bogen)/);
      }
    },
  );

  test('of things on which people can be hurt leaves it to codes, venue and practice', () => {
    expect(toldOf('room.edge').advice).toBe(
      'Versuch: Um 10 mm nach innen rücken oder die Kante kennzeichnen und beaufsichtigen. ' +
        'Es entscheiden die örtlichen Vorschriften, die Spielstätte und zugelassene Fachleute.',
    );
  });
});

describe('sentences', () => {
  test('of the house, with a list of what is hidden', () => {
    const { headline, text, advice } = toldOf('sight.house');
    expect(headline).toMatch(/^Von \d+ der \d+ Plätze aus ist Spieler 1 nicht gut zu sehen$/);
    expect(text).toMatch(/^Von \d+ % der Plätze aus ist Spieler 1 gut zu sehen; hier gelten 75 %\. /);
    expect(text).toMatch(
      /Pult 1 verdeckt am meisten: .*, für \d+ Plätze.*, im Mittel über den Saal \d+ %\.$/,
    );
    expect(advice).toBe(
      'Versuch: Auflage tiefer stellen, flacher neigen oder seitlich von Spieler 1 aufstellen.',
    );
  });

  test('of a reach, whose purpose goes to the end', () => {
    const { headline, text } = toldOf('reach.late');
    expect(headline).toBe('Spieler 1 hat zu wenig Zeit, um auf Pult 1 umzublättern');
    expect(text).toMatch(/^Es dauert \d+,\d s(:| nach) .*; die Pause dauert 0,5 s\.$/);
  });

  test('of a narrow way', () => {
    expect(toldOf('room.route').text).toBe(
      '900 mm an der engsten Stelle, zwischen Gegenstand 1 und Gegenstand 2; hier gelten 915 mm. ' +
        'ADA/ABA 403.5.1 spricht von 915 mm und von 815 mm auf höchstens 610 mm.',
    );
  });

  test('of eyes that do not meet, and of pages at an angle', () => {
    expect(toldOf('facing.blocked').headline).toBe('Spieler 1 und Spieler 2 haben keinen Blickkontakt');
    expect(toldOf('reading.staff').headline).toBe('Spieler 1 liest Notenzeilen von 6,9 mm auf Pult 1');
    expect(toldOf('reading.staff').text).toMatch(/am besten lesbar sind 7,5 mm/);
  });
});

test('remedies are told as orders, sides as seen from the house', () => {
  const words = (change: Parameters<typeof remedyWords>[0]) => remedyWords(change, () => 'Pult 3', 'metric');
  expect(words({ kind: 'move', item: 'stand-3', dx: 120, dy: -50 })).toBe(
    'Pult 3 um 120 mm nach rechts (vom Saal) und 50 mm nach vorn verschieben',
  );
  expect(words({ kind: 'turn', item: 'stand-3', by: -20 })).toBe(
    'Pult 3 um 20° nach links (vom Saal) drehen',
  );
  expect(words({ kind: 'lower', item: 'stand-3', by: 15 })).toBe('Pult 3 um 15 mm tiefer stellen');
});

test('names that follow each other', () => {
  expect(listed(['Pult 1', 'Pult 2', 'Tisch 1'])).toBe('Pult 1, Pult 2 und Tisch 1');
  expect(andMore(['Pult 1', 'Pult 2', 'Tisch 1', 'Tisch 2'], 2)).toBe('Pult 1, Pult 2 und 2 weitere');
});
