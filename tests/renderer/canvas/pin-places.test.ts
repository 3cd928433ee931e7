/** The pins of the findings beside the words of the plan. Sizes are this program's own; no outside source. */

import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { checkSetup } from '#model/checks/check-setup.ts';
import { setupsOf } from '#model/document/document.ts';
import { overlapArea } from '#model/drawing/bounds.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import { createMeasure } from '../../../electron/services/fonts.ts';
import { toScreen } from '../../../renderer/canvas/camera.ts';
import { firstLook } from '#model/drawing/screen/first-look.ts';
import { paperScaleFor } from '#model/drawing/screen/framing.ts';
import { Picture } from '../../../renderer/canvas/picture.ts';
import {
  headBox,
  headSize,
  withHeads,
  type Headed,
  type PinSurroundings,
} from '../../../renderer/canvas/pin-places.ts';
import { gathered, type Pin } from '../../../renderer/canvas/pins.ts';
import { readDemo } from '#model/file-format/demo.ts';

const around = (parts: Partial<PinSurroundings> = {}): PinSurroundings => ({
  camera: { centre: { x: 0, y: 2000 }, scale: 0.1 },
  view: { width: 800, height: 600 },
  words: [],
  things: [],
  ...parts,
});

const pin = (number: number, parts: Partial<Headed> = {}): Headed => ({
  number,
  where: { x: 0, y: 2000 },
  severity: 'fail',
  chosen: false,
  more: 0,
  ...parts,
});

describe('the head of a pin', () => {
  it('stands above its spot and to the right, at the front edge below it', () => {
    const [standing] = withHeads([pin(1)], around());
    const [hanging] = withHeads([pin(1, { where: { x: 0, y: 0 } })], around());
    expect(standing?.head).toEqual({ x: 14, y: -24 });
    expect(hanging?.head).toEqual({ x: 14, y: 24 });
  });

  it('stands on the other side where words are in the way, and its slip with it', () => {
    const words = [{ x: 20, y: 2060, width: 1200, height: 400 }];
    const [moved] = withHeads([pin(1, { more: 2 })], around({ words }));
    expect(moved?.head).toEqual({ x: -14, y: -24 });
    const box = headBox({ more: 2, head: { x: -14, y: -24 } }, 10, { x: 400, y: 300 });
    expect(box.x + box.width).toBeLessThan(400);
    expect(box.width).toBeGreaterThan(40);
  });

  it('keeps clear of the heads before it', () => {
    const [one, other] = withHeads([pin(1), pin(2, { where: { x: 60, y: 2000 } })], around());
    if (!one || !other) throw new Error('both are placed');
    const box = (placed: typeof one, x: number) => headBox(placed, 10, { x, y: 300 });
    expect(overlapArea(box(one, 400), box(other, 406))).toBe(0);
  });

  it('stays in the view where it can', () => {
    const atTheTop = pin(1, { where: { x: 3990, y: 4990 } });
    const [placed] = withHeads([atTheTop], around());
    expect(placed?.head.x).toBeLessThan(0);
    expect(placed?.head.y).toBeGreaterThan(0);
  });

  it('rather covers nothing that stands there', () => {
    const things = [{ x: 40, y: 2100, width: 900, height: 900 }];
    const [placed] = withHeads([pin(1)], around({ things }));
    expect(placed?.head).toEqual({ x: -14, y: -24 });
  });
});

const DEMO = readFileSync(new URL('../../../assets/demo-concert.standlines', import.meta.url), 'utf8');
const measure = createMeasure();

describe('in the demo concert as it opens', () => {
  afterEach(speakEnglish);

  // The plan's pane at 1440 x 900 and at 1100 x 700 with the columns open.
  const panes = [
    { width: 850, height: 676 },
    { width: 604, height: 458 },
  ];
  for (const locale of ['en-GB', 'de-DE'])
    for (const view of panes)
      it(`no pin covers a word of the plan, ${locale}, ${view.width} pixels wide`, () => {
        if (locale === 'de-DE') speakFrom('de', german);
        const reading = readDemo(DEMO, locale);
        if (!reading.ok) throw new Error(reading.problem.message);
        const { document } = reading;
        let count = 0;
        for (const { id: setup } of setupsOf(document)) {
          const camera = firstLook(document, setup, view);
          const report = checkSetup(document, setup);
          const paperScale = paperScaleFor(camera.scale);
          const picture = new Picture(measure);
          const { ground, items } = picture.draw({
            document,
            setup,
            report,
            paperScale,
            theme: 'light',
            units: 'metric',
            hurried: false,
            layers: {
              ...{ seats: true, sightBands: null, marks: true, names: true, dimensions: 'none' },
              ...{ grid: true, words: true, reach: false, routes: false, storages: true },
            },
          });
          const words = [ground, items].flatMap((drawn) => picture.writtenIn(drawn, paperScale));
          expect(words.length).toBeGreaterThan(10);
          const pins = report.findings.flatMap(({ where, severity }, index): Pin[] =>
            where && severity !== 'note' ? [{ where, severity, number: index + 1 }] : [],
          );
          for (const placed of withHeads(gathered(pins, camera.scale), {
            camera,
            view,
            words,
            things: [],
          })) {
            count += 1;
            const spot = toScreen(camera, view, placed.where);
            const box = headBox(placed, headSize(placed, camera.scale), spot);
            for (const word of words) {
              const at = toScreen(camera, view, { x: word.x, y: word.y + word.height });
              const width = word.width * camera.scale;
              const covered = overlapArea(box, { ...at, width, height: word.height * camera.scale });
              expect(covered, `pin ${placed.number} of ${setup}`).toBeLessThan(1);
            }
          }
        }
        expect(count).toBeGreaterThan(5);
      });
});
