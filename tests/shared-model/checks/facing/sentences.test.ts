import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { facingFindings } from '#model/checks/facing/findings.ts';
import { facingSentence } from '#model/checks/facing/facing-sentence.ts';
import { readingFindings } from '#model/checks/reading/findings.ts';
import { readingSentence } from '#model/checks/reading/reading-sentence.ts';
import type { Sentence, Told } from '#model/checks/sentence-parts.ts';
import type { Finding } from '#model/checks/finding.ts';
import type { Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { Units } from '#model/document/measures.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { aDocument, aPiano, aPlayer, aStand, PERSON, SETUP, SIDE } from '../../../helpers/build.ts';
import { scenes } from '../reading/scenes.ts';

const SENTENCES: Readonly<Record<string, Sentence>> = { ...readingSentence, ...facingSentence };

function told(found: Finding, document: Document, units: Units = 'metric'): Told {
  const sentence = SENTENCES[found.code];
  if (!sentence) throw new Error(`no sentence for ${found.code}`);
  return sentence(found, document, SETUP, units);
}

function toldOf(code: string, records: readonly AnyRecord[], units: Units = 'metric'): Told[] {
  const document = aDocument(...records);
  const found = [...readingFindings(document, SETUP), ...facingFindings(document, SETUP)];
  return found.filter((finding) => finding.code === code).map((finding) => told(finding, document, units));
}

const eyesAt = (eyeHeight: number) => ({ ...PERSON, measured: { ...PERSON.measured, eyeHeight } });
const side = { ...SIDE, reader: asId<'player'>('player-1') };
const two = [
  aPlayer({ name: 'Oboe', x: -1000, facing: 90, person: eyesAt(1200) }),
  aPlayer({ id: 'player-2', name: 'Horn', x: 1000, facing: -90, person: eyesAt(1200) }),
];
const desk = (top: number) =>
  aStand({
    x: 0,
    facing: -90,
    tilt: 90,
    deskHeight: 300,
    lip: top - 300,
    sides: [{ ...SIDE, pagesAcross: 0 }],
  });

describe('sentences say what was measured and what to do', () => {
  it('of eyes that do not meet', () => {
    expect(toldOf('facing.blocked', [...two, desk(1263.4)])).toEqual([
      {
        headline: 'Oboe (player 1) and Horn (player 2) cannot see each other’s eyes',
        text: 'Stand 1 stands in the line between their eyes and reaches 64 mm above it.',
        advice: 'Lower stand 1 by 64 mm.',
      },
    ]);
    // 63.4 mm are 2.496 in: a quarter of an inch that is enough.
    expect(toldOf('facing.blocked', [...two, desk(1263.4)], 'imperial')[0]?.advice).toBe(
      'Lower stand 1 by 2 1/2".',
    );
  });

  it('of a stand that does not go as low as that', () => {
    const [blocked] = toldOf('facing.blocked', [
      ...two.map((player) => ({ ...player, person: eyesAt(900) })),
      desk(1000),
    ]);
    expect(blocked?.advice).toBe(
      'Tilt the desk of stand 1 flatter, or move it out of the line: its model does not go 100 mm lower.',
    );
  });

  it('of a third player and of a lid', () => {
    const third = aPlayer({ id: 'player-3', x: 0, facing: 90 });
    const [blocked] = toldOf('facing.blocked', [...two, third]);
    expect(blocked?.text).toMatch(/^Player 3 stands in the line/);
    expect(blocked?.advice).toBe('Move one of the three sideways.');
    const [overLid] = toldOf('facing.blocked', [
      aPlayer({ x: 300, y: 1200, person: eyesAt(1300) }),
      aPlayer({ id: 'player-2', x: 300, y: 3600, person: eyesAt(1300) }),
      aPiano({ x: 0, y: 2500, facing: 90, lid: 'full' }),
    ]);
    expect(overLid?.advice).toMatch(/^(?:Close the lid of piano 1|Put the lid of piano 1 on half stick)\.$/);
  });

  it('of a partner behind', () => {
    const [turned] = toldOf('facing.turn', [
      aPlayer({ x: 0, y: 1000 }),
      aPlayer({ id: 'player-2', x: 1500, y: 1000, facing: 20 }),
    ]);
    expect(turned).toEqual({
      headline: 'player 2 turns the whole body to look at player 1',
      text:
        'Player 1 is 110° to the right of straight ahead. Eyes alone turn 35°, with the head 60° (NUREG-0700, after ' +
        'MIL-STD-1472G). That is outside the field of view, 95° to either side. From player 1 to player 2 it is 90°, a turn of the whole body too.',
      advice: 'Turn player 2 50° to the right, which leaves a turn of the head for all whom they must see.',
    });
  });

  it('of a back to the house', () => {
    expect(toldOf('facing.house', [aPlayer({ facing: 90.4 })])).toEqual([
      {
        headline: 'player 1 faces away from the house',
        text: '90.4° from straight at the house; a profile is 90°.',
        advice: 'Turn them back by 1°, to a profile.',
        remark: 'Leave it if it is meant so.',
      },
    ]);
  });

  it('of a steep page', () => {
    const upright = aStand({ y: 1300, lip: 1000, tilt: 90, sides: [{ ...side, pagesAcross: 1 }] });
    const [steep] = toldOf('reading.angle', [
      aPlayer({ person: eyesAt(1148.5 + 700 * Math.sqrt(3)) }),
      upright,
    ]);
    expect(steep?.text).toMatch(
      /^The line of sight meets the page 60° off square at the middle of a page\. /,
    );
    expect(steep?.advice).toMatch(/^Tilt the desk to \d\d°, for 4[45]°\.$/);
  });

  it('of small staves', () => {
    const upright = aStand({
      y: 1300,
      lip: 1000,
      tilt: 90,
      sides: [{ ...side, pagesAcross: 1, staffSize: 6 }],
    });
    // Worked by hand: a space of 1.5 mm, 700 mm from the page's plane, lines end 85.95 and 129.45 mm from the foot:
    // 1.5 x 705.3 / 716.9² rad = 7.08 minutes.
    const [small] = toldOf('reading.staff', [aPlayer({ person: eyesAt(1148.5) }), upright]);
    expect(small?.headline).toBe('player 1 reads staves of 6 mm on stand 1');
    expect(small?.text).toMatch(
      /no staves under 7 mm; 7\.5 mm reads best .* From up to 717 mm away a space .* looks 7\.1 /,
    );
    expect(small?.advice).toBe('Print them at 125 %, for 7.5 mm.');
  });
});

it('every finding is told without holes, in either unit', () => {
  const codes = new Set<string>();
  fc.assert(
    fc.property(scenes, fc.constantFrom<Units>('metric', 'imperial'), (document, units) => {
      for (const found of [...readingFindings(document, SETUP), ...facingFindings(document, SETUP)]) {
        codes.add(found.code);
        for (const words of Object.values(told(found, document, units)) as string[]) {
          expect(words).not.toMatch(/NaN|undefined|null|Infinity/);
          expect(words).toMatch(/\S/);
        }
      }
    }),
    { numRuns: 300 },
  );
  expect([...codes].sort()).toEqual(Object.keys(SENTENCES).sort());
});
