import { describe, expect, it } from 'vitest';
import { mirroringNotes, mirrorSetup } from '#model/commands/mirror-setup.ts';
import {
  addSetup,
  chooseVariant,
  copySetup,
  removeSetup,
  reorderSetup,
  setChangeTime,
  setupAddedBy,
  varySetup,
} from '#model/commands/setups.ts';
import { inSetup, placedInSetup, programmeOf, setupsOf, type Document } from '#model/document/document.ts';
import { asId, type Id } from '#model/document/ids.ts';
import {
  aDocument,
  aLamp,
  aLargeInstrument,
  anInstrument,
  aPiano,
  aPlayer,
  aSetup,
  aShape,
  aStand,
  aTable,
  recordOf,
  SETUP,
  SIDE,
} from '../../helpers/build.ts';
import { carriedOut, refusal } from './check-laws.ts';

const SECOND: Id<'setup'> = asId('setup-2');

const concert = (): Document =>
  aDocument(
    aSetup({ id: SETUP, name: 'Trio', order: 1 }),
    aSetup({ id: SECOND, name: 'Duo', order: 2, changeTime: 180 }),
    aPlayer({ id: 'player-1', name: 'Viola' }),
    anInstrument(),
    aStand({ id: 'stand-1', sides: [{ ...SIDE, reader: asId('player-1') }] }),
    aStand({ id: 'stand-2', setup: SECOND, x: 500 }),
  );

const names = (document: Document) => setupsOf(document).map(({ name }) => name);
const played = (document: Document) => programmeOf(document).map(({ name }) => name);

function varied(document: Document, setup: Id<'setup'>, name: string) {
  const outcome = varySetup(document, { setup, name });
  const variant = setupAddedBy(outcome);
  if (!variant) throw new Error('no variant was added');
  return { document: carriedOut(document, outcome), variant };
}

describe('variants', () => {
  it('are copies that stand behind their setup and are not in the programme', () => {
    const { document, variant } = varied(concert(), SETUP, 'Trio, closer');
    expect(names(document)).toEqual(['Trio', 'Trio, closer', 'Duo']);
    expect(played(document)).toEqual(['Trio', 'Duo']);
    expect(recordOf(document, variant, 'setup')).toMatchObject({ variantOf: SETUP, changeTime: null });
    expect(inSetup(document, variant, 'stand')[0]?.sides[0].reader).toBe(
      inSetup(document, variant, 'player')[0]?.id,
    );
  });

  it('of a variant are variants of the same setup', () => {
    const first = varied(concert(), SETUP, 'Trio, closer');
    const { document, variant } = varied(first.document, first.variant, 'Trio, wider');
    expect(recordOf(document, variant, 'setup').variantOf).toBe(SETUP);
    expect(names(document)).toEqual(['Trio', 'Trio, closer', 'Trio, wider', 'Duo']);
  });

  it('take the place of their setup, with its time, when they are chosen', () => {
    const first = varied(concert(), SECOND, 'Duo, closer');
    const both = varied(first.document, SECOND, 'Duo, wider');
    const after = carriedOut(both.document, chooseVariant(both.document, { setup: both.variant }));
    expect(played(after)).toEqual(['Trio', 'Duo, wider']);
    expect(recordOf(after, both.variant, 'setup')).toMatchObject({ variantOf: null, changeTime: 180 });
    expect(recordOf(after, SECOND, 'setup')).toMatchObject({ variantOf: both.variant, changeTime: null });
    expect(recordOf(after, first.variant, 'setup').variantOf).toBe(both.variant);
    expect(refusal(after, chooseVariant(after, { setup: both.variant }))).toMatch(/in the programme already/);
  });

  it('go with their setup through the programme', () => {
    const { document, variant } = varied(concert(), SETUP, 'Trio, closer');
    const after = carriedOut(document, reorderSetup(document, { setup: SETUP, to: 2 }));
    expect(names(after)).toEqual(['Duo', 'Trio', 'Trio, closer']);
    const copied = carriedOut(after, copySetup(after, { setup: SECOND, name: 'Encore' }));
    expect(names(copied)).toEqual(['Duo', 'Encore', 'Trio', 'Trio, closer']);
    const added = carriedOut(copied, addSetup(copied, { name: 'Last' }));
    expect(names(added)).toEqual(['Duo', 'Encore', 'Trio', 'Trio, closer', 'Last']);
    expect(refusal(after, setChangeTime(after, { setup: variant, seconds: 60 }))).toMatch(/in the programme/);
  });

  it('stand for themselves when their setup is removed', () => {
    const { document, variant } = varied(concert(), SETUP, 'Trio, closer');
    const after = carriedOut(document, removeSetup(document, { setup: SETUP }));
    expect(recordOf(after, variant, 'setup').variantOf).toBeNull();
    expect(played(after)).toEqual(['Trio, closer', 'Duo']);
  });
});

describe('the time for a changeover', () => {
  it('is given and taken away', () => {
    const document = concert();
    const given = carriedOut(document, setChangeTime(document, { setup: SETUP, seconds: 240 }));
    expect(recordOf(given, SETUP, 'setup').changeTime).toBe(240);
    const taken = carriedOut(given, setChangeTime(given, { setup: SETUP, seconds: null }));
    expect(recordOf(taken, SETUP, 'setup').changeTime).toBeNull();
    expect(refusal(given, setChangeTime(given, { setup: SETUP, seconds: -1 }))).toMatch(
      /time there is before it: -1/,
    );
  });
});

describe('mirroring a setup', () => {
  const stage = (): Document =>
    aDocument(
      aSetup({ id: SETUP }),
      aSetup({ id: SECOND, order: 2 }),
      aPiano({ id: 'piano-1', x: -900, y: 2500, facing: 90 }),
      aLargeInstrument({ id: 'largeInstrument-1', x: 1200, y: 3000, facing: 20 }),
      aTable({ id: 'table-1', x: 300, facing: 10 }),
      aLamp({
        id: 'lamp-1',
        x: 700,
        cable: [
          { x: 700, y: 2000 },
          { x: 4000, y: 2000 },
        ],
      }),
      aShape({ id: 'shape-1', setup: null }),
      aStand({ id: 'stand-2', setup: SECOND, x: 500 }),
    );

  it('puts everything of it on the other side and nothing else', () => {
    const before = stage();
    const after = carriedOut(before, mirrorSetup(before, { setup: SETUP }));
    for (const record of placedInSetup(before, SETUP)) {
      const other = recordOf(after, record.id, record.kind);
      const isOwn = record.setup === SETUP;
      expect([other.x, other.facing]).toEqual(
        isOwn ? [-record.x + 0, -record.facing + 0] : [record.x, record.facing],
      );
    }
    expect(recordOf(after, 'lamp-1', 'lamp').cable[1]).toEqual({ x: -4000, y: 2000 });
    expect(recordOf(after, 'stand-2', 'stand').x).toBe(500);
  });

  it('says what keeps its build, and what stays', () => {
    const before = stage();
    const outcome = mirrorSetup(before, { setup: SETUP });
    if (!outcome.ok) throw new Error(outcome.reason);
    // A grand is longer on one side, and a marimba is deeper at its low end; a table is the same from both sides.
    expect(outcome.asBuilt.map(({ kind }) => kind)).toEqual(['piano', 'largeInstrument']);
    expect(mirroringNotes(before, outcome).join('\n')).toMatch(
      /lid opens to the other side[\s\S]*1 thing stays/,
    );
  });

  it('twice is as before', () => {
    const before = stage();
    const once = carriedOut(before, mirrorSetup(before, { setup: SETUP }));
    const twice = carriedOut(once, mirrorSetup(once, { setup: SETUP }));
    for (const [id, record] of before.records) expect(twice.records.get(id)).toEqual(record);
  });

  it('refuses an empty one', () => {
    const empty = aDocument();
    expect(refusal(empty, mirrorSetup(empty, { setup: SETUP }))).toMatch(/nothing/);
  });
});
