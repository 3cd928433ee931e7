/** Sheets that are not left blank: a short table beside its drawing, a picture as broad as the sheet or in its middle. */

import { describe, expect, it } from 'vitest';
import { bounds } from '#model/drawing/bounds.ts';
import { entryPages, packEntries, type PackKind } from '#model/drawing/pack/pack.ts';
import { pageOf, PAPERS, type PaperName } from '#model/drawing/papers.ts';
import type { Primitive } from '#model/drawing/primitives.ts';
import { bodyOf } from '#model/drawing/sheet/page-frame.ts';
import { pathsIn, roughMeasure, textsIn } from '../drawings.ts';
import { sixty } from '../sixty-items.ts';
import { EVENING, packOf } from './pack-request.ts';

const NUMBERING = { first: 1, sheets: 9, sheetOf: () => 1 };

function pagesOf(kind: PackKind, paper: PaperName, document = EVENING) {
  const entry = packEntries(document).find((each) => each.kind === kind);
  if (!entry) throw new Error(`no ${kind}`);
  return entryPages(packOf(document, { paper }), entry);
}

const wordsOn = (children: readonly Primitive[]): string[] => textsIn(children).map(({ text }) => text);

describe('the paper of a pack', () => {
  it.each(PAPERS)('a short table of a rehearsal floor is on the sheet of its drawing, $name', ({ name }) => {
    const pages = pagesOf('floor', name);
    expect(pages.count).toBe(1);
    const words = wordsOn(pages.draw(0, NUMBERING).sheet.children);
    expect(words).toContain('From E');
    expect(words.filter((word) => word === 'HOUSE')).toHaveLength(1);
    expect(words.some((word) => word.startsWith('Viola'))).toBe(true);
  });

  it('a long one has sheets of its own', () => {
    expect(pagesOf('floor', 'A4', sixty).count).toBeGreaterThan(1);
  });

  it.each(PAPERS)('a view is as broad as the sheet, or in the middle of it, $name', ({ name }) => {
    const { children } = pagesOf('view', name).draw(0, NUMBERING).sheet;
    const body = bodyOf(pageOf(name, 'landscape'));
    const frames = pathsIn(children).flatMap((path) =>
      path.fill ? [] : (bounds([path], roughMeasure) ?? []),
    );
    const picture = frames
      .filter(({ width, height }) => width <= body.width + 1 && height > 20)
      .reduce((most, each) => (each.width > most.width ? each : most));
    expect(picture.x + picture.width / 2).toBeCloseTo(body.x + body.width / 2, 6);
    expect(picture.width).toBeGreaterThan(0.9 * body.width);
  });
});
