/** How much of the stage frame things take up, in mm; y upstage. */

import { outlineOf } from '../../catalogue/outlines.ts';
import { placedInSetup, platformOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { housePlaces } from '../../document/seating.ts';
import type { PlacedRecord, Point } from '../../document/records.ts';
import { boxesOverlap, boxOfPoints, grownBox } from '../bounds.ts';
import type { Box } from '../primitives.ts';

const SEAT_REACH = 400;

/** Platform, everything on it in every setup, and the whole house. */
export function planExtent(document: Document): Box {
  return boxOfPoints([...stagePoints(document), ...houseCorners(document)]) ?? NOTHING;
}

/** The platform and what stands in one setup; columns and walls down the house do not make its drawing smaller. */
export function stageExtent(document: Document, setup: Id<'setup'>): Box {
  const records = placedInSetup(document, setup).filter((record) => !isDownTheHouse(document, record));
  return boxOfPoints([...platformOf(document).outline, ...records.flatMap(pointsOf)]) ?? NOTHING;
}

/** A fixed shape that stays for the whole concert and does not come near the platform: part of the house like its seats. */
export function isDownTheHouse(document: Document, record: PlacedRecord): boolean {
  if (record.kind !== 'shape' || !record.fixed || record.setup !== null) return false;
  const platform = boxOfPoints(platformOf(document).outline);
  const shape = boxOfPoints(outlineOf(record));
  return platform !== null && shape !== null && !boxesOverlap(grownBox(platform, NEAR), shape);
}

/** Who passes between the platform and a column so near has to mind both, mm: the breadth of one person's way. */
const NEAR = 600;

const NOTHING: Box = { x: 0, y: 0, width: 0, height: 0 };

function stagePoints(document: Document): Point[] {
  const setups = [...document.records.values()].filter((record) => record.kind === 'setup');
  const records = setups.flatMap(({ id }) => placedInSetup(document, id));
  return [...platformOf(document).outline, ...records.flatMap(pointsOf)];
}

function pointsOf(record: PlacedRecord): readonly Point[] {
  const outline = outlineOf(record);
  return record.kind === 'lamp' ? [...outline, ...record.cable] : outline;
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
