import { describe, expect, it } from 'vitest';
import { readingFindings } from '#model/checks/reading/findings.ts';
import { LEAST_SPACE } from '#model/checks/reading/published.ts';
import { readingResults } from '#model/checks/reading/reading.ts';
import { heightSeenUnder } from '#model/checks/reading/visual-angle.ts';
import { explain } from '#model/checks/sentences.ts';
import { asId } from '#model/document/ids.ts';
import { aDocument, aPlayer, aStand, SETUP, SIDE } from '../../../helpers/build.ts';

const from = (apart: number, staffSize: number | null, facing = 180) =>
  aDocument(
    aPlayer({ y: 2000 + apart }),
    aStand({ lip: 1050, facing, sides: [{ ...SIDE, staffSize, reader: asId('player-1') }] }),
  );
const far = (document: ReturnType<typeof from>) =>
  readingFindings(document, SETUP).filter(({ code }) => code === 'reading.far');
const standFacing = aStand().facing;

// Letters of 16 minutes of arc (ISO 9241-3) of five details each (eye charts): 3.2 minutes a detail.
describe('pages far away', () => {
  it('are under the details of the least lettering from about two metres on with staves that read best', () => {
    expect(LEAST_SPACE).toBeCloseTo(3.2, 12);
    // 1.875 mm = 2 d tan(1.6'): d = 2014 mm.
    expect(heightSeenUnder(LEAST_SPACE, 2014)).toBeCloseTo(7.5 / 4, 3);
  });

  it('are a caution, with the figure that the check has measured and the distance that helps', () => {
    const document = from(3000, 7, standFacing);
    const [finding, ...others] = far(document);
    const [result] = readingResults(document, SETUP);
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ severity: 'caution', required: LEAST_SPACE, unit: 'minutesOfArc' });
    expect(finding?.measured).toBe(result?.spaceMinutes?.middle);
    expect(finding?.subjects).toEqual(['player-1', 'stand-1']);
    const within = Number(finding?.detail['within']);
    // Of 1.75 mm spaces, seen square at the most.
    expect(heightSeenUnder(LEAST_SPACE, within)).toBeLessThanOrEqual(1.75);
    expect(far(from(within - 300, 7, standFacing))).toEqual([]);
  });

  it('are none at the distances that players and librarians speak of, with the smallest staves they take', () => {
    // 559 to 914 mm and "about 3 feet" by musicians' own measurements; 1360 mm is the farthest line of the demo.
    for (const apart of [500, 700, 914, 1360]) expect(far(from(apart, 7, standFacing))).toEqual([]);
  });

  it('are judged by the distance alone where no staff size is typed, and it is said so', () => {
    expect(far(from(1360, null, standFacing))).toEqual([]);
    const document = from(3000, null, standFacing);
    const [finding] = far(document);
    if (!finding) throw new Error('nothing was found');
    expect(finding.measured).toBe(far(from(3000, 7.5, standFacing))[0]?.measured);
    const { headline, text, advice } = explain(finding, document, SETUP, 'metric');
    expect(headline).toBe('Player 1 reads stand 1 from far away');
    expect(text).toMatch(/even a space of the staves that librarians find most readable/);
    expect(text).toMatch(/tool’s own/);
    expect(advice).toMatch(/within about \d+ mm of the eyes/);
  });

  it('that are seen from behind have only their angle told', () => {
    expect(far(from(3000, 7, standFacing + 180))).toEqual([]);
  });
});
