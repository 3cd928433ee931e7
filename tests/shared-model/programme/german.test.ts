import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { changeover } from '#model/programme/changeover.ts';
import { changeoverNotes, changeoverSummary, timeVerdict } from '#model/programme/changeover-words.ts';
import { shortageSentence } from '#model/programme/stock-words.ts';
import { stepNotes, stepThing, stepTo, workWord, type Telling } from '#model/programme/step-words.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import { asId } from '#model/document/ids.ts';
import { aDocument, aSetup, aStand, SETUP } from '../../helpers/build.ts';

const NEXT = asId<'setup'>('setup-2');

/** One stand goes to the left and is turned and set lower; `more` others come. */
function evening(more: number) {
  const document = aDocument(
    aSetup({ id: NEXT, order: 2, changeTime: 600 }),
    aStand({ x: 0, y: 2000, facing: 0, lip: 900 }),
    aStand({ id: asId('stand-2'), setup: NEXT, x: -1000, y: 2000, facing: 90, lip: 800 }),
    ...Array.from({ length: more }, (_, index) =>
      aStand({ id: asId(`stand-${index + 3}`), setup: NEXT, x: 1000 + 900 * index, y: 3000 }),
    ),
  );
  const change = changeover(document, SETUP, NEXT);
  const telling: Telling = { document, from: SETUP, to: NEXT, units: 'metric' };
  return { change, telling };
}

describe('a changeover in German', () => {
  beforeEach(() => speakFrom('de', german));
  afterEach(speakEnglish);

  it('tells one step and several, and whether the time will do', () => {
    const { change } = evening(0);
    expect(changeoverSummary(change)).toMatch(/^1 Schritt, etwa 0:\d\d \(0:\d\d bis \d:\d\d\)$/);
    expect(timeVerdict(change)).toMatch(/^Zeit dafür: 10:00\. Das reicht, selbst wenn es \d:\d\d dauert\.$/);
    expect(changeoverSummary(evening(2).change)).toMatch(/^3 Schritte, /);
    expect(changeoverNotes(evening(1).change)[0]).toMatch(/^Für 1 Teil ist kein Lager/);
    expect(changeoverNotes(evening(2).change)[0]).toMatch(/^Für 2 Teile ist kein Lager/);
  });

  it('tells a step as seen from the house', () => {
    const { change, telling } = evening(0);
    const [step] = change.steps;
    if (!step) throw new Error('no step');
    expect(workWord(step.work)).toBe('Umstellen');
    expect(stepThing(telling, step)).toMatch(/^PU1 /);
    expect(stepTo(telling, step)).toBe('1000 li, 2000 hi');
    expect(stepNotes(telling, step)).toEqual(['90° linksherum drehen', 'Leiste auf 800']);
  });

  it('says what is missing for which setup', () => {
    const shortage = { thing: { item: 'shape', model: 'Leinwand' }, needed: 3, short: 1 } as const;
    expect(shortageSentence({ ...shortage, setup: aSetup({ name: 'Zugabe' }) })).toBe(
      'Leinwand: 1 zu wenig für Zugabe; gebraucht: 3.',
    );
    expect(shortageSentence({ ...shortage, setup: aSetup({ name: '', order: 4, variantOf: SETUP }) })).toBe(
      'Leinwand: 1 zu wenig für Aufstellung 4 (eine Variante); gebraucht: 3.',
    );
  });
});
