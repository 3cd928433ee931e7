import { asId } from '#model/document/ids.ts';
import type { Document } from '#model/document/document.ts';
import type { GroupPrimitive, Primitive } from '#model/drawing/primitives.ts';
import { describe, expect, it } from 'vitest';
import { Picture, type PictureRequest } from '../../../renderer/canvas/picture.ts';
import { partsOf } from '../../../renderer/canvas/parts.ts';
import { paperScaleFor, PIXELS_PER_MILLIMETRE } from '#model/drawing/screen/framing.ts';
import { aDocument, aGroup, aPlatform, aPlayer, aStand, SETUP } from '../../helpers/build.ts';

const measure = (text: string, size: number): number => text.length * size * 0.5;

const request = (document: Document, change: Partial<PictureRequest> = {}): PictureRequest => ({
  document,
  setup: SETUP,
  report: null,
  paperScale: 50,
  theme: 'light',
  units: 'metric',
  hurried: false,
  layers: {
    seats: true,
    sightBands: null,
    marks: true,
    names: true,
    dimensions: 'none',
    grid: true,
    words: true,
    reach: false,
    routes: false,
  },
  ...change,
});

const subjects = (primitives: readonly Primitive[]): (string | undefined)[] =>
  primitives.map((primitive) => (primitive.kind === 'group' ? primitive.subject : undefined));

const groupOf = (primitives: readonly Primitive[], id: string): GroupPrimitive | undefined =>
  primitives.find((one): one is GroupPrimitive => one.kind === 'group' && one.subject === id);

/** A clock by which every drawing takes as long as it says. */
const slowClock = (step: number) => {
  let now = 0;
  return () => (now += step);
};

describe('Picture', () => {
  it('keeps the ground as long as nothing of it changed', () => {
    const picture = new Picture(measure);
    const document = aDocument(aPlayer(), aStand());
    const first = picture.draw(request(document));
    const moved = { records: new Map([...document.records, ['stand-1', aStand({ x: 100 })]]) };
    expect(picture.draw(request(moved)).ground).toBe(first.ground);
    const raised = { records: new Map([...document.records, ['platform-1', aPlatform({ height: 900 })]]) };
    expect(picture.draw(request(raised)).ground).not.toBe(first.ground);
  });

  it('draws only what changed while a slow drawing is dragged, and the changed thing truly', () => {
    const document = aDocument(aPlayer(), aStand());
    const moved = { records: new Map([...document.records, ['stand-1', aStand({ x: 700 })]]) };
    const slow = new Picture(measure, slowClock(100));
    const before = slow.draw(request(document));
    const hurried = slow.draw(request(moved, { hurried: true }));
    const exact = new Picture(measure).draw(request(moved));
    expect(groupOf(hurried.items, 'player-1')).toBe(groupOf(before.items, 'player-1'));
    expect(groupOf(hurried.items, 'stand-1')).toEqual(groupOf(exact.items, 'stand-1'));
    expect(slow.draw(request(moved)).items).toEqual(exact.items);
  });

  it('leaves out what is hidden, and everything else keeps the mark it has with it', () => {
    const shown = aDocument(aPlayer(), aStand(), aStand({ id: 'stand-2', x: 900 }));
    const group = aGroup({ members: [asId('stand-1')], hidden: true });
    const hidden = aDocument(...shown.records.values(), group);
    const [before, after] = [shown, hidden].map((each) => new Picture(measure).draw(request(each)).items);
    expect(subjects(before ?? [])).toContain('stand-1');
    expect(subjects(after ?? [])).not.toContain('stand-1');
    expect(JSON.stringify(after)).toContain('"S2"');
    expect(JSON.stringify(after)).not.toContain('"S1"');
  });

  it('draws everything while that is quick', () => {
    const document = aDocument(aPlayer(), aStand());
    const moved = { records: new Map([...document.records, ['stand-1', aStand({ x: 700 })]]) };
    const quick = new Picture(measure, slowClock(1));
    quick.draw(request(document));
    expect(quick.draw(request(moved, { hurried: true })).items).toEqual(
      new Picture(measure).draw(request(moved)).items,
    );
  });

  it('draws everything when something came or went, however slow', () => {
    const slow = new Picture(measure, slowClock(100));
    slow.draw(request(aDocument(aPlayer())));
    const { items } = slow.draw(request(aDocument(aPlayer(), aStand({ id: 'stand-7' })), { hurried: true }));
    expect(subjects(items)).toContain('stand-7');
    const elsewhere = request(aDocument(aPlayer()), { hurried: true, setup: asId('setup-2') });
    expect(subjects(slow.draw(elsewhere).items)).not.toContain('player-1');
  });
});

describe('paperScaleFor', () => {
  it('stays within a step of the scale on the screen', () => {
    for (const scale of [0.004, 0.02, 0.05, 0.31, 2]) {
      const letters = (scale * paperScaleFor(scale)) / PIXELS_PER_MILLIMETRE;
      expect(letters).toBeGreaterThan(1.12 / 1.13);
      expect(letters).toBeLessThan(1.12 * 1.13);
    }
  });
});

describe('partsOf', () => {
  it('puts each subject by itself and what lies between together', () => {
    const line: Primitive = { kind: 'path', path: [] };
    const item = (subject: string): Primitive => ({ kind: 'group', subject, children: [] });
    expect(partsOf([line, line, item('a'), item('b'), line]).map((part) => part.length)).toEqual([
      2, 1, 1, 1,
    ]);
    expect(partsOf([])).toEqual([]);
  });
});
