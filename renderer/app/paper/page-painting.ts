/** Paints pages of parts where the print has them: at their true place and size, standing on their head where it does. */

import { paint, type Pen } from '../../canvas/painter.ts';
import type { PagePicture } from './page-pictures.ts';
import type { PrintedPage } from './prints.ts';

/** `pixels`: of the canvas to a millimetre. What stands for a page is painted while its picture is on its way. */
export function paintPages(
  pen: Pen,
  pages: readonly PrintedPage[],
  pixels: number,
  pictureOf: (page: PrintedPage, width: number) => PagePicture | undefined,
): void {
  for (const page of pages) {
    const picture = pictureOf(page, page.placed.width * pixels);
    if (picture) paintPicture(pen, picture, page);
    else paint(pen, page.instead);
  }
}

function paintPicture(pen: Pen, picture: HTMLCanvasElement, { placed }: PrintedPage): void {
  const { x, y, width, height, turned } = placed;
  pen.save();
  pen.translate(x + width / 2, y + height / 2);
  if (turned) pen.rotate(Math.PI);
  pen.drawImage(picture, -width / 2, -height / 2, width, height);
  pen.restore();
}
