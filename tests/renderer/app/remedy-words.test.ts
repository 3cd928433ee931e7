/** What is said beside a finding of what was tried against it. */

import { describe, expect, test } from 'vitest';
import type { Finding, FindingCode, Remedy } from '#model/checks/finding.ts';
import { isTried } from '#model/checks/remedy.ts';
import { noRemedyWords } from '../../../renderer/app/remedy-words.ts';
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
  'room.route': false,
  'room.cable': false,
  'room.step': false,
  'room.noExit': false,
  'room.noStepFreeExit': false,
  'room.wheelchairLevel': false,
  'room.wheelchairRoute': true,
  'room.turning': true,
  'room.cableRamp': false,
  'reading.angle': true,
  'reading.turn': false,
  'reading.staff': false,
  'reading.far': false,
  'facing.blocked': true,
  'facing.turn': false,
  'facing.house': false,
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
    expect(noRemedyWords(aFinding(code), [])).toBe(tried ? text.findings.noRemedy : null);
    expect(noRemedyWords(aFinding(code), undefined)).toBe(tried ? text.findings.looking : null);
    expect(noRemedyWords(aFinding(code), [REMEDY])).toBeNull();
  });
});
