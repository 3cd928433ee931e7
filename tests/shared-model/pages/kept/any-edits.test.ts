/** Whatever is done to a plan by hand, it can be judged, told in words and played through. */

import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Outcome } from '#model/commands/command.ts';
import { keepPlan } from '#model/commands/page-plan.ts';
import { addPin } from '#model/commands/plan-pins.ts';
import {
  addPaper,
  removePaper,
  setBinding,
  setLeaves,
  setPage,
  setPagesAcross,
  setStackSide,
} from '#model/commands/plan-paper.ts';
import { addTurn, changeTurn, removeTurn } from '#model/commands/plan-turns.ts';
import { remove } from '#model/commands/remove.ts';
import { setStandForm } from '#model/commands/stands.ts';
import { applyDiff } from '#model/document/diff.ts';
import { allOf, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { KeptStation } from '#model/document/kept-plan.ts';
import { judgedPlan } from '#model/pages/kept/judged.ts';
import { keptJson, keptWords } from '#model/pages/kept/kept-words.ts';
import { pinsOnTurn, turnPin } from '#model/pages/kept/turn-pins.ts';
import { momentAt } from '#model/pages/running/moment.ts';
import { runOf } from '#model/pages/running/run.ts';
import { warningSentence, warningsOf } from '#model/pages/running/warnings.ts';
import { aPlayer, aStand, SETUP, SIDE } from '../../../helpers/build.ts';
import '../../../helpers/seed.ts';
import { demoConcert } from '../../checks/remedies/demo.ts';

/** The demo's duo with a second stand for the clarinet, and somebody without a part with a third. */
function withMoreStands(): Document {
  const demo = demoConcert();
  const reader = allOf(demo, 'player').find(({ setup }) => setup === SETUP)?.id ?? null;
  const guest = aPlayer({ id: 'guest', x: 1500, y: 3000 });
  const records = new Map(demo.records);
  for (const record of [
    guest,
    aStand({ id: 'stand-77', x: -1200, y: 1400, sides: [{ ...SIDE, reader }] }),
    aStand({ id: 'stand-78', x: 1500, y: 2500, sides: [{ ...SIDE, reader: guest.id }] }),
  ])
    records.set(record.id, record);
  return { records };
}

const below = (count: number) => fc.nat({ max: count - 1 });
const step = fc.record({
  what: below(14),
  a: below(4),
  b: below(4),
  c: below(4),
  page: fc.option(fc.integer({ min: 1, max: 9 })),
  place: fc.double({ min: 0, max: 120, noNaN: true }),
});
type Step = typeof step extends fc.Arbitrary<infer S> ? S : never;

const stands = allOf(withMoreStands(), 'stand').flatMap(({ id, setup }) => (setup === SETUP ? [id] : []));
const players = allOf(withMoreStands(), 'player').flatMap(({ id, setup }) => (setup === SETUP ? [id] : []));

function edited(document: Document, { what, a, b, c, page, place }: Step): Outcome {
  const setup = SETUP;
  const stand = stands[a % stands.length] ?? asId('gone');
  const player = players[b % players.length] ?? asId('gone');
  const of = { setup, stand };
  const direction = c === 0 ? 'back' : 'forward';
  const hand = b % 2 === 0 ? 'left' : 'right';
  const turn = { station: stand, player, hand, place, direction } as const;
  const side = (c % 2) as 0 | 1;
  return [
    () => addPaper(document, of),
    () => addPaper(document, of),
    () => setPage(document, { ...of, side, state: b, slot: c, page }),
    () => setPage(document, { ...of, side: 0, state: b, slot: c, page }),
    () => addTurn(document, { setup, turn }),
    () => addTurn(document, { setup, turn }),
    () => changeTurn(document, { setup, turn: a, fields: { place, direction, player } }),
    () => setLeaves(document, { ...of, leaves: b }),
    () => setPagesAcross(document, { ...of, pages: c }),
    () =>
      setBinding(document, {
        ...of,
        kind: (['loose', 'book', 'concertina', 'ridge'] as const)[c] ?? 'loose',
      }),
    () => setStackSide(document, { ...of, stackSide: side }),
    () =>
      addPin(document, { setup, pin: { kind: 'turn', station: stand, player, from: place, to: place + 3 } }),
    () => (c === 0 ? removePaper(document, of) : removeTurn(document, { setup, turn: a })),
    () =>
      c === 0
        ? remove(document, { ids: [stand] })
        : setStandForm(document, { stand, form: side ? 'single' : 'backToBack' }),
  ][what]!();
}

/** From a time when the part was longer: such a page cannot be typed. */
const BEYOND: KeptStation = {
  ...{ station: asId('stand-77'), kind: 'loose', leaves: 0, stackSide: 0 },
  ...{ pagesAcross: [1], views: [[[99]]] },
};

it('is judged, told and played without a fault', () => {
  const codes = new Set<string>();
  fc.assert(
    fc.property(fc.array(step, { minLength: 4, maxLength: 25 }), (steps) => {
      let document = withMoreStands();
      const take = (outcome: Outcome): void => {
        if (outcome.ok) document = applyDiff(document, outcome.diff);
      };
      take(keepPlan(document, { setup: SETUP, stations: steps.length % 2 ? [BEYOND] : [], turns: [] }));
      for (const one of steps) take(edited(document, one));
      const judged = judgedPlan(document, SETUP);
      if (!judged) return;
      for (const { code } of judged.judgement.violations) codes.add(code);
      const words = keptWords(judged, (id) => id);
      expect(words.join('\n')).not.toMatch(/undefined|NaN|Infinity/);
      expect(JSON.parse(JSON.stringify(keptJson(judged, (id) => id)))).toEqual(keptJson(judged, (id) => id));
      for (const turn of judged.plan.turns) {
        expect(Number.isFinite(turn.at + turn.seconds + turn.window.from + turn.window.to)).toBe(true);
        pinsOnTurn(judged, turn);
        const pin = turnPin(judged, turn);
        expect(pin.from).toBeLessThanOrEqual(pin.to);
      }
      const run = runOf(judged.instance, judged.plan, { document, setup: SETUP });
      for (const time of [0, 50, 100, 200, 284]) momentAt(run, time);
      for (const warning of warningsOf(run)) warningSentence(warning, run, (id) => id);
    }),
    { numRuns: 120 },
  );
  // So that it is about something: most rules have to be broken somewhere.
  expect([...codes].sort()).toEqual(
    expect.arrayContaining([
      'binding-not-allowed',
      'hand-not-free',
      'no-such-page',
      'out-of-reach',
      'page-not-in-view',
      'pin-lost',
      'too-wide',
      'unknown-station',
      'wrong-state',
    ]),
  );
});
