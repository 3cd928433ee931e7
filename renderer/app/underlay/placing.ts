/** Where an underlay lies at first: a drawing at its own coordinates when these are about the stage, all else over the platform. */

import type { NewRecord } from '#model/commands/add.ts';
import { platformOf, type Document } from '#model/document/document.ts';
import type { Underlay, UnderlayContent } from '#model/document/records.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { boundsOf } from '#model/geometry/polygon.ts';
import type { DxfLines } from '#model/underlay/dxf-lines.ts';

/** Of the platform's width, so that the house round it shows too. */
const WIDER = 1.5;
/** A drawing that lies within this of the platform, mm, was drawn about it. */
const NEAR = 50_000;
const LONGEST_NAME = 200;

type NewUnderlay = Extract<NewRecord, { readonly kind: 'underlay' }>;

export function pictureUnderlay(document: Document, file: string, content: UnderlayContent): NewUnderlay {
  const { minX, maxX, minY, maxY } = boundsOf(platformOf(document).outline);
  const scale = ((maxX - minX) * WIDER) / content.width;
  const middle = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  return underlayAt(file, { content, scale, ...cornerOf(content, scale, middle) });
}

/** `unit`: millimetres for one unit of the drawing. */
export function drawingUnderlay(
  document: Document,
  file: string,
  drawing: DxfLines,
  unit: number,
): NewUnderlay {
  const { content, corner } = drawing;
  const own = { x: corner.x * unit, y: corner.y * unit };
  const { minX, maxX, minY, maxY } = boundsOf(platformOf(document).outline);
  const isNear =
    own.x < maxX + NEAR &&
    own.x + content.width * unit > minX - NEAR &&
    own.y < maxY + NEAR &&
    own.y + content.height * unit > minY - NEAR;
  const middle = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  return underlayAt(file, { content, scale: unit, ...(isNear ? own : cornerOf(content, unit, middle)) });
}

function cornerOf({ width, height }: UnderlayContent, scale: number, middle: Vec2): Vec2 {
  return { x: Math.round(middle.x - (width * scale) / 2), y: Math.round(middle.y - (height * scale) / 2) };
}

function underlayAt(file: string, where: Pick<Underlay, 'x' | 'y' | 'scale' | 'content'>): NewUnderlay {
  const source = file.slice(0, LONGEST_NAME);
  const name = source.replace(/\.[^.]*$/, '');
  return { kind: 'underlay', name, source, turn: 0, opacity: 0.6, shown: true, ...where };
}
