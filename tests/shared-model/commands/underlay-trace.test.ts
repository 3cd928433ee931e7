import { describe, expect, it } from 'vitest';
import { tracePlatform } from '#model/commands/underlay-trace.ts';
import { allOf, platformOf } from '#model/document/document.ts';
import { aDocument, aDoor, aPlatform } from '../../helpers/build.ts';
import { carriedOut, refusal } from './check-laws.ts';

/** 8 x 5 m before; edge 0 (the front) open, the door of 1 m in edge 2 (upstage), 200 mm from its first corner. */
const document = aDocument();

const WIDER = [
  { x: -5000, y: 0 },
  { x: 5000, y: 0 },
  { x: 5000, y: 6000 },
  { x: -5000, y: 6000 },
];

describe('tracePlatform', () => {
  it('takes the outline, and leaves the front open and the door in the upstage wall', () => {
    const after = carriedOut(document, tracePlatform(document, { outline: WIDER }));
    expect(platformOf(after)).toMatchObject({ outline: WIDER, openEdges: [0], height: 600 });
    // The door was from x = 3800 to 2800, and is.
    expect(allOf(after, 'door')).toEqual([expect.objectContaining({ edge: 2, offset: 1200, width: 1000 })]);
  });

  it('may be traced either way round, from any corner', () => {
    const traced = [...WIDER.slice(2), ...WIDER.slice(0, 2)].toReversed();
    const after = carriedOut(document, tracePlatform(document, { outline: traced }));
    const { outline, openEdges } = platformOf(after);
    const [open = -1] = openEdges;
    expect(openEdges).toHaveLength(1);
    expect([outline[open]?.y, outline[(open + 1) % 4]?.y]).toEqual([0, 0]);
    const [door] = allOf(after, 'door');
    expect(outline[door?.edge ?? -1]?.y).toBe(6000);
  });

  it('opens every part of a front that is bent now, and no side', () => {
    const bent = [
      { x: -4000, y: 0 },
      { x: 0, y: -800 },
      { x: 4000, y: 0 },
      { x: 4000, y: 5000 },
      { x: -4000, y: 5000 },
    ];
    const after = carriedOut(document, tracePlatform(document, { outline: bent }));
    expect(platformOf(after).openEdges).toEqual([0, 1]);
  });

  it('refuses an outline that crosses itself, is too small, or has no room for a door', () => {
    const crossed = [
      { x: 0, y: 0 },
      { x: 4000, y: 4000 },
      { x: 4000, y: 0 },
      { x: 0, y: 4000 },
    ];
    expect(refusal(document, tracePlatform(document, { outline: crossed }))).toMatch(/outline/i);
    expect(refusal(document, tracePlatform(document, { outline: WIDER.slice(0, 2) }))).toMatch(
      /three corners/,
    );
    const wide = aDocument(aPlatform(), aDoor({ width: 3000 }));
    const small = WIDER.map(({ x, y }) => ({ x: x / 5, y: y / 5 }));
    expect(refusal(wide, tracePlatform(wide, { outline: small }))).toMatch(/long enough for door 1/);
  });

  it('does nothing when the outline is the one that there is', () => {
    const outcome = tracePlatform(document, { outline: platformOf(document).outline });
    expect(outcome.ok && outcome.diff.size).toBe(0);
  });
});
