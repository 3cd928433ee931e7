/** Which of very many findings a report lists. */

import { expect, test } from 'vitest';
import type { Finding } from '#model/checks/finding.ts';
import { checkSetup } from '#model/checks/check-setup.ts';
import { listed, MOST_OF_A_CODE } from '#model/checks/listed.ts';
import { explain } from '#model/checks/sentences.ts';
import { aDocument, aSeat, SETUP } from '../../helpers/build.ts';

const edge = (number: number, fields: Partial<Finding> = {}): Finding => ({
  code: 'room.edge',
  severity: 'caution',
  subjects: [`stand-${number}`],
  measured: 500 - number,
  required: 600,
  unit: 'mm',
  where: null,
  detail: { drop: 600 },
  ...fields,
});

test('as many as are allowed are all listed, and say nothing of others', () => {
  const three = [edge(1), edge(2), edge(3)];
  expect(listed(three, 3)).toEqual(three);
});

test('of one more, the one that lacks least is left out, and the last one listed counts it', () => {
  const four = [edge(1), edge(4), edge(2), edge(3)];
  const counted = edge(4, { detail: { drop: 600, notListed: 1 } });
  expect(listed(four, 3)).toEqual([edge(2), edge(3), counted]);
});

test('gravity goes before what is lacking, and codes are counted apart', () => {
  const fail = edge(0, { severity: 'fail' });
  const other = edge(9, { code: 'room.door' });
  const found = listed([edge(8), edge(7), fail, other], 2);
  expect(found.map(({ code, subjects }) => `${code} ${subjects.join(' ')}`)).toEqual([
    'room.edge stand-0',
    'room.door stand-9',
    'room.edge stand-8',
  ]);
  expect(found.map(({ detail }) => detail['notListed'])).toEqual([undefined, undefined, 1]);
});

test('a report on very many chairs at the edge lists a thousand and says in words that there are more', () => {
  const chairs = Array.from({ length: 1200 }, (_, index) =>
    aSeat({ id: `seat-${index + 1}`, x: 6 * index - 3600, y: 500 }),
  );
  const document = aDocument(...chairs);
  const { findings } = checkSetup(document, SETUP);
  const near = findings.filter(({ code }) => code === 'room.edge');
  expect(near).toHaveLength(MOST_OF_A_CODE);
  const last = near.at(-1);
  expect(last?.detail['notListed']).toBe(200);
  expect(last && explain(last, document, SETUP, 'metric').advice).toContain(
    'There are 200 more of this kind',
  );
});
