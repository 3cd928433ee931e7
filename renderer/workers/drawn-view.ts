/** What somebody sees, drawn from the document. */

import type { Document } from '#model/document/document.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { MeasureText, Primitive } from '#model/drawing/primitives.ts';
import {
  pictureHeight,
  viewDrawing,
  viewFromPlayer,
  viewFromSeat,
} from '#model/drawing/view/view-drawing.ts';
import type { Picture, PictureQuestion } from './protocol.ts';

export interface DrawnView extends Pick<Picture, 'label' | 'width' | 'height' | 'description'> {
  readonly drawing: readonly Primitive[];
}

/** Null when there is no such place or player. */
export function drawnView(
  document: Document,
  question: PictureQuestion,
  measure: MeasureText,
): DrawnView | null {
  const { setup, from, width, palette, units, show } = question;
  const view =
    from.kind === 'seat'
      ? viewFromSeat(document, setup, from.seat)
      : viewFromPlayer(document, setup, from.player);
  if (!view) return null;
  const height = question.height ?? pictureHeight(view, width);
  const drawing = viewDrawing({
    document,
    setup,
    view,
    width,
    height,
    palette: PALETTES[palette],
    measure,
    units,
    names: true,
    show,
  });
  const [whole] = drawing;
  const description = (whole?.kind === 'group' && whole.description) || '';
  return { label: view.label, width, height, drawing, description };
}

/** In words, by what is drawn. */
export function descriptionsIn(
  drawing: readonly Primitive[],
  into = new Map<string, string>(),
): ReadonlyMap<string, string> {
  for (const each of drawing) {
    if (each.kind !== 'group') continue;
    if (each.subject !== undefined && each.description) into.set(each.subject, each.description);
    else descriptionsIn(each.children, into);
  }
  return into;
}
