/** What every part of a picture is drawn from. */

import { inSetup, placedInSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightOn } from '../../document/levels.ts';
import type { Units } from '../../document/measures.ts';
import type { Instrument, Millimetres, PlacedRecord, Point, Riser } from '../../document/records.ts';
import { placed, type Vec3 } from '../../geometry/frame.ts';
import type { Palette } from '../palette.ts';
import type { MeasureText } from '../primitives.ts';
import { cameraOf, scaleAt, type Camera } from './camera.ts';
import type { Place } from './mesh.ts';
import { tintsOf, type Tints } from './tints.ts';
import type { View } from './view.ts';

export interface ViewRequest {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly view: View;
  /** Of the paper, mm. */
  readonly width: number;
  readonly height: number;
  readonly palette: Palette;
  readonly measure: MeasureText;
  readonly units: Units;
  /** Whether the players' names stand over their heads. */
  readonly names: boolean;
  /**
   * `figures`: people and things as they look. `counted`: nothing but the bodies that the sight check counts with, so
   * that what is hidden in the picture is what its figures say.
   */
  readonly show: 'figures' | 'counted';
}

export interface ViewContext extends ViewRequest {
  readonly camera: Camera;
  readonly tints: Tints;
  /** Everything placed in the setup, kind by kind in the order of the marks. */
  readonly items: readonly PlacedRecord[];
  readonly risers: readonly Riser[];
  readonly instruments: readonly Instrument[];
}

export function viewContext(request: ViewRequest): ViewContext {
  const { document, setup, view, width, height, palette } = request;
  return {
    ...request,
    camera: cameraOf(view, width, height),
    tints: tintsOf(palette),
    items: placedInSetup(document, setup),
    risers: inSetup(document, setup, 'riser'),
    instruments: inSetup(document, setup, 'instrument'),
  };
}

/** Height of the floor under an item in the stage frame, as the checks have it: on the platform or on a riser. */
export function floorUnder({ risers }: ViewContext, spot: Point): Millimetres {
  return floorHeightOn(risers, spot);
}

/** From an item's own frame, with heights above the floor it stands on, to the stage. */
export function placeOn(item: Point & { readonly facing: number }, floor: Millimetres): Place {
  const across = placed({ x: 0, y: 0, facing: item.facing }, { x: 1, y: 0 });
  return (x, y, z) => ({
    x: item.x + across.x * x - across.y * y,
    y: item.y + across.y * x + across.x * y,
    z: floor + z,
  });
}

/** How large a length is in the picture, mm of paper, where the eye sees it square on. */
export function sizeInPicture({ camera }: ViewContext, length: Millimetres, at: Vec3): number {
  return length * scaleAt(camera, at);
}
