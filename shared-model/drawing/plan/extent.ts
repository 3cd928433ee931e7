/** How much of the stage frame things take up, in mm; y upstage. */

import { outlineOf } from '../../catalogue/outlines.ts';
import { placedInSetup, platformOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { housePlaces } from '../../document/seating.ts';
import type { Point } from '../../document/records.ts';
import { boxOfPoints, grownBox } from '../bounds.ts';
import type { Box } from '../primitives.ts';

const SEAT_REACH = 400;

/** Platform, everything on it in every setup, and the whole house. */
export function planExtent(document: Document): Box {
  return boxOfPoints([...stagePoints(document, null), ...houseCorners(document)]) ?? NOTHING;
}

/** The platform and what stands in one setup. */
export function stageExtent(document: Document, setup: Id<'setup'>): Box {
  return boxOfPoints(stagePoints(document, setup)) ?? NOTHING;
}

const NOTHING: Box = { x: 0, y: 0, width: 0, height: 0 };

function stagePoints(document: Document, setup: Id<'setup'> | null): Point[] {
  const setups = [...document.records.values()].filter((record) => record.kind === 'setup');
  const records = (setup === null ? setups.map((record) => record.id) : [setup]).flatMap((id) =>
    placedInSetup(document, id),
  );
  const points = [...platformOf(document).outline];
  for (const record of records) {
    for (const point of outlineOf(record)) points.push(point);
    if (record.kind === 'lamp') for (const point of record.cable) points.push(point);
  }
  return points;
}

function houseCorners(document: Document): Point[] {
  const box = boxOfPoints(housePlaces(document));
  if (!box) return [];
  const grown = grownBox(box, SEAT_REACH);
  return [
    { x: grown.x, y: grown.y },
    { x: grown.x + grown.width, y: grown.y + grown.height },
  ];
}
