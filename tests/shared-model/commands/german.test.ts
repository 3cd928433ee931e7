import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { addSetup } from '#model/commands/setups.ts';
import { changingWords } from '#model/commands/changing-words.ts';
import { placeAt, move } from '#model/commands/move.ts';
import { refusalWords } from '#model/commands/refusal-words.ts';
import { setFields } from '#model/commands/set-fields.ts';
import { asId } from '#model/document/ids.ts';
import { KINDS, RECORD_SCHEMAS } from '#model/file-format/schema.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import type { Outcome, Refusal } from '#model/commands/command.ts';
import { aDocument, aPlayer, aStand } from '../../helpers/build.ts';

const STAND = asId<'stand'>('stand-1');
const said = (outcome: Outcome): string => (outcome.ok ? outcome.label : outcome.reason);

function refusalOf(outcome: Outcome): Refusal {
  if (outcome.ok) throw new Error('was not refused');
  return outcome;
}

afterEach(speakEnglish);

describe('a changed field', () => {
  it('is named in English, whichever it is', () => {
    for (const kind of KINDS)
      for (const field of Object.keys(RECORD_SCHEMAS[kind].entries)) {
        if (field === 'id' || field === 'kind') continue;
        const words = changingWords(field, 'stand 3');
        expect(words, `${kind}.${field}`).toMatch(/^change \S.* stand 3|^change whether stand 3 is/);
        expect(words, `${kind}.${field}`).not.toMatch(/[a-z][A-Z]|of of|change change/);
      }
    expect(changingWords('lip', 'stand 3')).toBe('change lip of stand 3');
    expect(changingWords('variantOf', 'Trio')).toBe('change what Trio is a variant of');
  });
});

describe('in German', () => {
  beforeEach(() => speakFrom('de', german));

  it('what is done is an infinitive behind what it is done to', () => {
    const document = aDocument(aStand(), aPlayer());
    expect(said(move(document, { ids: ['stand-1'], dx: 10, dy: 0 }))).toBe('Pult 1 verschieben');
    const both = move(document, { ids: ['stand-1', 'player-1'], dx: 10, dy: 0 });
    expect(said(both)).toBe('2 Elemente verschieben');
    const lip = setFields(document, { ids: [STAND], fields: { lip: 900 } });
    expect(said(lip)).toBe('Leiste ändern – Pult 1');
  });

  it('an empty name leaves no gap', () => {
    expect(said(addSetup(aDocument(), { name: 'Zugabe' }))).toBe('Aufstellung Zugabe hinzufügen');
    expect(said(addSetup(aDocument(), { name: '' }))).toBe('Aufstellung hinzufügen');
  });

  it('a refusal can be told in feet and inches', () => {
    const document = aDocument(aStand());
    const far = refusalOf(placeAt(document, { id: 'stand-1', x: 999_999, y: 0 }));
    expect(far.reason).toBe('Pult 1 wäre mehr als 50000 mm vom Podium entfernt; eine nähere Stelle angeben.');
    // 50 m are 164 ft 0.5 in (1 in = 25.4 mm).
    expect(refusalWords(far, 'imperial')).toContain('mehr als etwa 164\'-0 1/2" vom Podium');
    const lip = refusalOf(setFields(document, { ids: [STAND], fields: { lip: 9000 } }));
    expect(lip.reason).toBe(
      'Pult 1, Leiste über dem Boden: 9000 mm ist nicht erlaubt; eine Länge von 100 mm bis 2500 mm angeben.',
    );
    expect(refusalWords(lip, 'imperial')).toContain('29\'-6 1/4"');
    expect(refusalWords(lip, 'imperial')).not.toMatch(/\bmm\b|9000/);
    // Staves are in millimetres everywhere.
    const [side] = aStand().sides;
    const staves = refusalOf(
      setFields(document, { ids: [STAND], fields: { sides: [{ ...side, staffSize: 200 }] } }),
    );
    expect(staves.reason).toBe(
      'Pult 1, Höhe der Notenzeile: 200 ist nicht erlaubt; eine Länge von 1 bis 100 mm angeben.',
    );
    expect(refusalWords(staves, 'imperial')).toBe(staves.reason);
  });
});
