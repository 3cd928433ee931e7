/** Where the handles of the selection are on the stage. */

import { platformOf, type Document } from '#model/document/document.ts';
import { isLocked } from '#model/document/groups.ts';
import { isPlaced, type PlacedRecord } from '#model/document/records.ts';
import { facingVector, type Vec2 } from '#model/geometry/frame.ts';
import type { Camera } from './camera.ts';
import { pickOutline } from './pickables.ts';

/** The handle stands this many pixels before the item. */
const OUT_PIXELS = 26;

/** Handles are caught within this: 24 px across, as WCAG 2.2 (2.5.8) asks of a target. */
export const HANDLE_REACH_PIXELS = 12;

export interface HandleOfItem {
  readonly item: Vec2;
  readonly facing: number;
  readonly at: Vec2;
}

/** The turning handle of a single selected item on the side it faces, of several upstage of their middle. */
export function turnHandle(
  document: Document,
  selection: readonly string[],
  camera: Camera,
): HandleOfItem | null {
  if (selection.some((id) => isLocked(document, id))) return null;
  const [record, ...others] = selection.flatMap((id) => document.records.get(id) ?? []).filter(isPlaced);
  if (!record) return null;
  return others.length > 0 ? handleOfMany([record, ...others], camera) : handleOfOne(record, camera);
}

/** They turn about the mean of their spots, as the command does. */
function handleOfMany(records: readonly PlacedRecord[], camera: Camera): HandleOfItem {
  const mean = (of: (record: PlacedRecord) => number): number =>
    records.reduce((sum, record) => sum + of(record), 0) / records.length;
  const item = { x: mean(({ x }) => x), y: mean(({ y }) => y) };
  const farthest = records.reduce(
    (most, record) => pickOutline(record).reduce((high, { y }) => Math.max(high, y), most),
    item.y,
  );
  return { item, facing: 180, at: { x: item.x, y: farthest + OUT_PIXELS / camera.scale } };
}

function handleOfOne(record: PlacedRecord, camera: Camera): HandleOfItem {
  const ahead = facingVector(record.facing);
  const reach = pickOutline(record).reduce(
    (most, { x, y }) => Math.max(most, (x - record.x) * ahead.x + (y - record.y) * ahead.y),
    0,
  );
  const out = reach + OUT_PIXELS / camera.scale;
  return {
    item: record,
    facing: record.facing,
    at: { x: record.x + ahead.x * out, y: record.y + ahead.y * out },
  };
}

/** Corners of the platform while it is selected by itself. */
export function platformCorners(document: Document, selection: readonly string[]): readonly Vec2[] {
  const platform = platformOf(document);
  return selection.length === 1 && selection[0] === platform.id ? platform.outline : [];
}
