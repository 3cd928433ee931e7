/** What is said beside a finding of what was tried against it. */

import { describe, expect, test } from 'vitest';
import type { Finding, FindingCode, Remedy, RemedyChange } from '#model/checks/finding.ts';
import { isTried } from '#model/checks/remedy.ts';
import { noneHelps, remedyWords, triedAdvice } from '#model/checks/remedy-words.ts';
import { adviceWords, noRemedyWords } from '../../../renderer/app/remedy-words.ts';
import { text } from '../../../renderer/app/text.ts';

/** Whether the tool tries changes against it, by hand: a code that is added asks for a word here. */
const TRIED: Readonly<Record<FindingCode, boolean>> = {
  'sight.house': true,
  'reach.far': true,
  'reach.late': true,
  'reach.noHand': false,
  'room.overlap': true,
  'room.offPlatform': true,
  'room.elbow': true,
  'room.edge': true,
  'room.door': true,
  'room.route': true,
  'room.cable': true,
  'room.step': true,
  'room.noExit': false,
  'room.noStepFreeExit': false,
  'room.wheelchairLevel': true,
  'room.wheelchairRoute': true,
  'room.turning': true,
  'room.cableRamp': false,
  'reading.angle': true,
  'reading.turn': true,
  'reading.staff': false,
  'reading.far': true,
  'turns.broken': false,
  'facing.blocked': true,
  'facing.turn': true,
  'facing.house': true,
};

const CODES = Object.entries(TRIED) as [FindingCode, boolean][];
const REMEDY: Remedy = { kind: 'lower', item: 'stand-1', by: 50, after: 0 };

const aFinding = (code: FindingCode): Finding => ({
  code,
  severity: 'caution',
  subjects: [],
  measured: 1,
  required: 0,
  unit: 'mm',
  where: null,
  detail: {},
});

describe.each(CODES)('%s', (code, tried) => {
  test(`is ${tried ? '' : 'not '}tried`, () => {
    expect(isTried(code)).toBe(tried);
  });

  test('says that nothing was found only when something was tried', () => {
    expect(noRemedyWords(aFinding(code), [])).toBe(tried ? noneHelps() : null);
    expect(noRemedyWords(aFinding(code), undefined)).toBe(tried ? text.findings.looking : null);
    expect(noRemedyWords(aFinding(code), [REMEDY])).toBeNull();
  });

  test('says what nobody has tried only where nothing can be tried', () => {
    const told = {
      headline: '',
      text: '',
      advice: 'Try: set it apart. The venue decides.',
      remark: 'The venue decides.',
    };
    expect(adviceWords(told, aFinding(code))).toBe(tried ? told.remark : told.advice);
    const printed = (remedies: readonly Remedy[] | null) =>
      triedAdvice(told, aFinding(code), { remedies, nameOf: () => 'stand 1', units: 'metric' });
    const advices = [[REMEDY], [], null].map(printed);
    if (!tried) expect(advices).toEqual([told.advice, told.advice, told.advice]);
    else
      expect(advices).toEqual([
        'Lower stand 1 by 50 mm (tried). The venue decides.',
        `${noneHelps()} The venue decides.`,
        expect.stringMatching(/^Against this nothing was tried here.* The venue decides\.$/),
      ]);
  });
});

describe('a suggested change in words', () => {
  const name = (id: string): string => id.replace('-', ' ');
  test.each<[RemedyChange, string]>([
    [{ kind: 'turn', item: 'stand-1', by: -5 }, 'Turn stand 1 by 5° towards stage right'],
    [
      { kind: 'turnTogether', items: ['player-1', 'stand-1', 'stand-2'], by: 12 },
      'Turn player 1 by 12° towards stage left, and swing stand 1 and stand 2 round to match',
    ],
    [
      { kind: 'moveTogether', items: ['player-1', 'stand-1'], dx: -120, dy: 0 },
      'Move player 1 and stand 1 by 120 mm towards stage right',
    ],
    [{ kind: 'cover', item: 'lamp-1' }, 'Cover the cable of lamp 1 with a ramp or mat'],
  ])('%o', (change, words) => {
    expect(remedyWords(change, name, 'metric').replaceAll('\u00a0', ' ')).toBe(words);
  });
});
