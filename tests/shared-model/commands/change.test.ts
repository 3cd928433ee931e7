import { describe, expect, it } from 'vitest';
import { setFields } from '#model/commands/set-fields.ts';
import { seatPlayer, setMobility } from '#model/commands/seat-player.ts';
import { assignReader, setStandForm } from '#model/commands/stands.ts';
import { desksOf } from '#model/document/desks.ts';
import { asId, type Id } from '#model/document/ids.ts';
import type { Document } from '#model/document/document.ts';
import type { Mobility } from '#model/document/records.ts';
import {
  aDocument,
  aPlayer,
  aSetup,
  aStand,
  aTable,
  PERSON,
  recordOf,
  SETUP,
  SIDE,
} from '../../helpers/build.ts';
import { documentOfEveryKind } from '../document/every-kind.ts';
import { frozen } from '../document/freeze.ts';
import { carriedOut, checkLaws, refusal } from './check-laws.ts';

const STAND: Id<'stand'> = asId('stand-1');
const PLAYER: Id<'player'> = asId('player-1');

describe('setFields', () => {
  it('gives several records of a kind the same fields and names the field it changed', () => {
    const document = frozen(aDocument(aStand({ name: 'Left' }), aStand({ id: asId('stand-2') })));
    const one = setFields(document, { ids: [STAND], fields: { lip: 900 } });
    expect(one).toMatchObject({ label: 'change lip of Left (stand 1)' });
    const many = setFields(document, {
      ids: [STAND, asId<'stand'>('stand-2')],
      fields: { lip: 900, tilt: 70 },
    });
    expect(many).toMatchObject({ label: 'change 2 stands' });
    const after = carriedOut(document, many);
    expect(recordOf(after, 'stand-2', 'stand')).toMatchObject({ lip: 900, tilt: 70, x: 0 });
  });

  it('refuses a value that the file format refuses, in the words of the window', () => {
    const document = aDocument(aStand());
    expect(refusal(document, setFields(document, { ids: [STAND], fields: { lip: -20 } }))).toBe(
      'stand 1, lip above the floor: -20 mm is not allowed; give a length from 100 mm to 2500 mm.',
    );
    expect(refusal(document, setFields(document, { ids: [STAND], fields: { name: 'a\nb' } }))).toMatch(
      /one line/,
    );
    expect(refusal(document, setFields(document, { ids: [STAND], fields: { form: 'backToBack' } }))).toMatch(
      /sides has 1 but the form is "backToBack"; give 2/,
    );
  });

  it('refuses ids, kinds, unknown fields and mixed kinds', () => {
    const document = aDocument(aStand(), aTable());
    const wild = (fields: object, ids: readonly string[] = ['stand-1']) =>
      refusal(document, setFields(document, { ids: ids as Id<'stand'>[], fields }));
    expect(wild({ id: 'x' })).toBe('A stand has no field "id" that can be changed.');
    expect(wild({ kind: 'table' })).toMatch(/no field "kind"/);
    expect(wild({ colour: 'red' })).toMatch(/no field "colour"/);
    expect(wild(JSON.parse('{"__proto__": 1}') as object)).toMatch(/no field "__proto__"/);
    expect(wild({ name: 'x' }, ['stand-1', 'table-1'])).toBe('Select things of one kind.');
  });

  it('has an empty diff when the fields are as they were', () => {
    const document = aDocument(aStand());
    const outcome = setFields(document, { ids: [STAND], fields: { lip: 800 } });
    checkLaws(document, outcome);
    expect(outcome).toMatchObject({ ok: true, diff: new Map() });
  });

  it('takes any record’s own fields without a change', () => {
    const document = frozen(documentOfEveryKind());
    for (const { id, kind: _, ...fields } of document.records.values()) {
      const outcome = setFields(document, { ids: [id], fields });
      checkLaws(document, outcome);
      expect(outcome).toMatchObject({ ok: true, diff: new Map() });
    }
  });

  it('does not let a thing leave the setup of the player who uses it', () => {
    const document = aDocument(
      aSetup({ id: 'setup-2' }),
      aPlayer(),
      aStand({ sides: [{ ...SIDE, reader: PLAYER }] }),
    );
    for (const setup of [asId<'setup'>('setup-2'), null]) {
      expect(refusal(document, setFields(document, { ids: [STAND], fields: { setup } }))).toMatch(
        /only in setup “Trio”; both must be in the same setup/,
      );
    }
  });
});

describe('assignReader', () => {
  const document = frozen(aDocument(aPlayer({ name: 'Viola' }), aStand()));

  it('gives a side its reader and takes him away', () => {
    const given = assignReader(document, { stand: STAND, side: 0, reader: PLAYER });
    expect(given).toMatchObject({ label: 'let Viola (player 1) read at stand 1' });
    const after = carriedOut(document, given);
    expect(recordOf(after, 'stand-1', 'stand').sides[0].reader).toBe('player-1');
    const freed = carriedOut(after, assignReader(after, { stand: STAND, side: 0, reader: null }));
    expect(recordOf(freed, 'stand-1', 'stand').sides[0].reader).toBeNull();
  });

  it('refuses a side or a player that is not there', () => {
    expect(refusal(document, assignReader(document, { stand: STAND, side: 1, reader: PLAYER }))).toBe(
      'stand 1 has no second side.',
    );
    expect(
      refusal(document, assignReader(document, { stand: STAND, side: 0, reader: asId('player-5') })),
    ).toBe('There is no player "player-5" any more.');
  });
});

describe('setStandForm', () => {
  it('leaves the first desk where it is', () => {
    const document = frozen(aDocument(aStand({ x: 300, y: 1700, facing: 130, tilt: 40 })));
    const pair = carriedOut(document, setStandForm(document, { stand: STAND, form: 'backToBack' }));
    const [before] = desksOf(recordOf(document, 'stand-1', 'stand'));
    const [first, second] = desksOf(recordOf(pair, 'stand-1', 'stand'));
    for (const [index, corner] of (before?.board ?? []).entries()) {
      const now = first?.board[index];
      expect(now?.x).toBeCloseTo(corner.x, 2);
      expect(now?.y).toBeCloseTo(corner.y, 2);
      expect(now?.z).toBeCloseTo(corner.z, 9);
    }
    expect(second?.side.reader).toBeNull();
    const single = carriedOut(pair, setStandForm(pair, { stand: STAND, form: 'single' }));
    expect(recordOf(single, 'stand-1', 'stand').x).toBeCloseTo(300, 2);
    expect(recordOf(single, 'stand-1', 'stand').sides).toHaveLength(1);
  });

  it('has an empty diff when the stand has that form', () => {
    const document = aDocument(aStand());
    expect(setStandForm(document, { stand: STAND, form: 'single' })).toMatchObject({ diff: new Map() });
  });
});

describe('seatPlayer', () => {
  const measured = { eyeHeight: 1500, shoulderHeight: 1300, armLength: 720 };
  const chair = { model: 'orchestra-chair', height: 460 };
  const seated = () => frozen(aDocument(aPlayer({ setup: SETUP, chair, person: { ...PERSON, measured } })));

  it('seats and unseats; heights measured in the other posture are dropped, the arm stays', () => {
    const document = seated();
    const after = carriedOut(document, seatPlayer(document, { player: PLAYER, chair: null }));
    expect(recordOf(after, 'player-1', 'player')).toMatchObject({
      chair: null,
      person: { measured: { eyeHeight: null, shoulderHeight: null, armLength: 720 } },
    });
    const again = carriedOut(after, seatPlayer(after, { player: PLAYER, chair }));
    expect(recordOf(again, 'player-1', 'player').chair).toEqual(chair);
  });

  it('raises what was measured with the chair', () => {
    const document = seated();
    const outcome = seatPlayer(document, { player: PLAYER, chair: { ...chair, height: 500 } });
    expect(recordOf(carriedOut(document, outcome), 'player-1', 'player').person.measured).toEqual({
      eyeHeight: 1540,
      shoulderHeight: 1340,
      armLength: 720,
    });
  });

  it('in a wheelchair says that he uses one, and he keeps it when he moves over to a bench', () => {
    const document = seated();
    const inWheelchair = { model: 'wheelchair', height: 485 };
    const after = carriedOut(document, seatPlayer(document, { player: PLAYER, chair: inWheelchair }));
    expect(recordOf(after, 'player-1', 'player')).toMatchObject({
      mobility: 'wheelchair',
      chair: inWheelchair,
      person: { measured: { eyeHeight: 1525 } },
    });
    const onBench = carriedOut(after, seatPlayer(after, { player: PLAYER, chair }));
    expect(recordOf(onBench, 'player-1', 'player')).toMatchObject({ mobility: 'wheelchair', chair });
  });

  it('refuses a chair of no sensible height', () => {
    const document = seated();
    const outcome = seatPlayer(document, { player: PLAYER, chair: { ...chair, height: 5 } });
    expect(refusal(document, outcome)).toMatch(
      /seat height: 5 mm is not allowed; give a length from 100 mm to 1500 mm/,
    );
  });
});

describe('setMobility', () => {
  const chair = { model: 'cello-chair', height: 490 };
  const document = frozen(aDocument(aPlayer({ chair })));
  const coming = (from: Document, mobility: Mobility) => {
    const after = carriedOut(from, setMobility(from, { player: PLAYER, mobility }));
    return { after, player: recordOf(after, 'player-1', 'player') };
  };

  it('puts who uses a wheelchair into it, and who walks onto a chair', () => {
    const wheeled = coming(document, 'wheelchair');
    expect(wheeled.player).toMatchObject({
      mobility: 'wheelchair',
      chair: { model: 'wheelchair', height: 485 },
    });
    expect(coming(wheeled.after, 'walks').player).toMatchObject({
      mobility: 'walks',
      chair: { model: 'orchestra-chair', height: 460 },
    });
  });

  it('leaves a chair that he moved over to, and one who stands', () => {
    const wheeled = coming(document, 'wheelchair').after;
    const moved = carriedOut(wheeled, seatPlayer(wheeled, { player: PLAYER, chair }));
    expect(coming(moved, 'wheelchair').player.chair).toEqual(chair);
    expect(coming(moved, 'walks').player).toMatchObject({ mobility: 'walks', chair });
  });

  it('has an empty diff when nothing changes, and says what it did', () => {
    expect(setMobility(document, { player: PLAYER, mobility: 'walks' })).toMatchObject({ diff: new Map() });
    expect(setMobility(document, { player: PLAYER, mobility: 'wheelchair' })).toMatchObject({
      label: 'seat player 1 in a wheelchair',
    });
  });
});
