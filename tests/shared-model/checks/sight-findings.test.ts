import { describe, expect, test } from 'vitest';
import { sightFindings } from '#model/checks/sight-findings.ts';
import { explain } from '#model/checks/sentences.ts';
import { sightReport } from '#model/checks/sightlines/sight-report.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { aConcert, aDocument, aPlace, aPlayer, aSeatBlock, aShape, SETUP } from '../../helpers/build.ts';

const findings = (...records: AnyRecord[]) => {
  const document = aDocument(...records);
  return sightFindings(document, sightReport(document, SETUP));
};

const asking = (houseShare: number) =>
  aConcert({ limits: { seesWell: 0.9, houseShare, edgeDistance: 600, routeWidth: 915 } });

/** Tall and broad, a metre before the seats towards stage right: whoever sits at x < 0 sees nothing of the platform. */
const SCREEN = aShape({
  x: 0,
  y: -19_000,
  outline: [
    { x: -3500, y: -10 },
    { x: 0, y: -10 },
    { x: 0, y: 10 },
    { x: -3500, y: 10 },
  ],
});
/** Two rows of four seats at x = -1500, -500, 500, 1500. */
const SEATS = aSeatBlock({ rows: 2, seatsPerRow: 4, seatPitch: 1000, y: -20_000, rowDepth: 1000 });
const PLAYER = aPlayer();

describe('a player whom half of the house sees well', () => {
  test('is a finding where more are asked for', () => {
    const [finding, ...others] = findings(asking(0.75), SEATS, PLAYER, SCREEN);
    expect(others).toEqual([]);
    expect(finding).toMatchObject({
      code: 'sight.house',
      severity: 'fail',
      subjects: ['player-1', 'shape-1'],
      measured: 0.5,
      required: 0.75,
      unit: 'share',
      where: { x: 0, y: 2000 },
    });
  });

  test.each([
    [0.5, 0],
    [0.51, 1],
  ])('where %d are asked for: %i findings', (share, count) => {
    expect(findings(asking(share), SEATS, PLAYER, SCREEN)).toHaveLength(count);
  });

  test('tells how many places lost, in which rows, and which sees least', () => {
    const [finding] = findings(asking(0.6), SEATS, PLAYER, SCREEN);
    expect(finding?.detail).toMatchObject({ lost: 4, places: 8, firstRow: 'A', lastRow: 'B' });
    expect(finding?.detail['worstSeat']).toMatch(/^[AB] [1-4]$/);
    expect(finding?.detail['worstShare']).toBe(0);
    expect(finding?.detail['loss']).toBeCloseTo(0.5, 6);
  });
});

test('tells which part of the player the worst cover hides, from how many places and in which rows', () => {
  const [finding] = findings(asking(0.6), SEATS, PLAYER, SCREEN);
  expect(finding?.detail).toMatchObject({
    part: 'whole',
    hiddenFrom: 4,
    hiddenFirstRow: 'A',
    hiddenLastRow: 'B',
    hiddenBlocks: '',
  });
  const told = finding && explain(finding, aDocument(SEATS, PLAYER, SCREEN), SETUP, 'metric');
  expect(told?.text).toMatch(/hides most: nearly everything, from 4 places, 50 % on average/);
});

test('single places have no row', () => {
  const noBlock = aSeatBlock({ rows: 1, seatsPerRow: 0 });
  const [finding] = findings(noBlock, aPlace({ x: -500, y: -20_000, name: 'Camera' }), PLAYER, SCREEN);
  expect(finding?.detail).toMatchObject({
    lost: 1,
    places: 1,
    firstRow: '',
    lastRow: '',
    worstSeat: 'Camera',
  });
});

test('with nothing in the way there is none, and without places neither', () => {
  expect(findings(SEATS, PLAYER)).toEqual([]);
  expect(findings(aSeatBlock({ rows: 1, seatsPerRow: 0 }), PLAYER, SCREEN)).toEqual([]);
});
