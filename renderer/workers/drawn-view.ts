/** What somebody sees, drawn for the window. */

import type { Document } from '#model/document/document.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { MeasureText } from '#model/drawing/primitives.ts';
import {
  pictureHeight,
  viewDrawing,
  viewFromPlayer,
  viewFromSeat,
} from '#model/drawing/view/view-drawing.ts';
import type { Picture, PictureQuestion } from './protocol.ts';

/** Null when there is no such place or player. */
export function drawnView(document: Document, question: PictureQuestion): Picture | null {
  const { setup, from, width, palette, units, show, widths } = question;
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
    measure: measureBy(widths),
    units,
    names: true,
    show,
  });
  const [whole] = drawing;
  const description = (whole?.kind === 'group' && whole.description) || '';
  return { label: view.label, width, height, drawing, description };
}

/** Of a letter whose width is not known, as a share of its size: a broad one. */
const BROAD = 0.62;

function measureBy(widths: PictureQuestion['widths']): MeasureText {
  return (text, size) => (widths.get(text) ?? BROAD * Array.from(text).length) * size;
}
