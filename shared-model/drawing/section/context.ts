/** What every part of the section is drawn from, and the step from the upright plane to the page. */

import { outlineOf } from '../../catalogue/outlines.ts';
import { eyeOfRow, firstCut, type EyeOnPlane, type LineCut } from '../../checks/sightlines/rake-cuts.ts';
import type { FocusPoint, RakeFocus } from '../../checks/sightlines/rake-focus.ts';
import { CENTRE_PLANE, onPlane, planeThrough, type SightPlane } from '../../checks/sightlines/rake-plane.ts';
import {
  rakesOnPlane,
  sceneWithoutHeads,
  type BlockRake,
  type RakeRow,
} from '../../checks/sightlines/rake.ts';
import type { Scene } from '../../checks/scene.ts';
import { allOf, find, placedInSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Units } from '../../document/measures.ts';
import type { Instrument, Millimetres, Place, PlacedRecord, Point } from '../../document/records.ts';
import { housePlaces, type HousePlace } from '../../document/seating.ts';
import { mapPoint, type Affine } from '../affine.ts';
import type { Palette } from '../palette.ts';
import { heldInstruments } from '../plan/context.ts';
import { shortMarks } from '../plan/short-marks.ts';
import type { Box, MeasureText } from '../primitives.ts';
import { oneLine } from '../text.ts';

/** Through the centre line, or through a place of the house and a player of the setup. */
export type SectionCut =
  | { readonly through: 'centre' }
  | { readonly through: 'seat'; readonly seat: string; readonly player: Id<'player'> };

/** What a section is of. */
export interface SectionRequest {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly cut: SectionCut;
  /** Where the lines of sight lead. */
  readonly focus: RakeFocus;
  readonly palette: Palette;
  readonly measure: MeasureText;
  readonly units: Units;
  /** The figures of the rows are told beside the drawing, which then has only the rows' names and discs. */
  readonly figuresBeside?: boolean;
}

/** Where it goes on the page. */
export interface SectionPlacement {
  /** The ratio's denominator: 50 for 1:50. */
  readonly scale: number;
  /** On the page, mm: the front edge on the platform's floor; in a section through a seat, the spot of the player. */
  readonly origin: Point;
  /** The part of the page that labels keep to. Null: no bounds. */
  readonly area: Box | null;
}

/** A thing on the platform as the section shows it. */
export interface ShownItem<R extends PlacedRecord = PlacedRecord> {
  readonly record: R;
  /** How far behind the plane it stands; what is nearest to the onlooker is painted last. */
  readonly beyond: Millimetres;
  /** In the strip along the plane, or in the way of a line of sight: drawn full. Others are drawn as outlines. */
  readonly full: boolean;
}

/** A single place of the house near the plane. */
export interface ShownPlace {
  readonly place: Place;
  readonly out: Millimetres;
  readonly floorZ: Millimetres;
  readonly eyeZ: Millimetres;
}

/** From the eyes of a row, or of a single place, to the focus. */
export interface SightLine {
  readonly eye: EyeOnPlane;
  readonly focus: FocusPoint;
  readonly cut: LineCut | null;
  /** "C", or the place's name. */
  readonly name: string;
  /** Of the seat that the section goes through. */
  readonly chosen: boolean;
}

/** All that does not depend on where it goes on the page. */
export interface SectionSource extends SectionRequest {
  readonly plane: SightPlane;
  readonly scene: Scene;
  /** Blocks that lie behind each other seen from the side are drawn once, under all their names. */
  readonly rakes: readonly NamedRake[];
  readonly lines: readonly SightLine[];
  /** What is painted, the farthest first. */
  readonly items: readonly ShownItem[];
  readonly places: readonly ShownPlace[];
  readonly marks: ReadonlyMap<string, string>;
  readonly held: ReadonlyMap<string, readonly Instrument[]>;
  /** Half the width of the strip in which things are drawn full. */
  readonly strip: Millimetres;
}

export interface SectionContext extends SectionSource, SectionPlacement {
  /** From the plane (mm along it, mm up from the platform's floor) to the page. */
  readonly toPage: Affine;
}

export interface NamedRake extends BlockRake {
  readonly name: string;
  /** All that it stands for. */
  readonly blocks: readonly Id<'seatBlock'>[];
}

/** Beside the centre line, and beside a line through a seat: about what such a line passes near. */
const STRIP = { centre: 1000, seat: 500 } as const;

/** Null when the seat or the player of the cut, or the player of the focus, is not there. */
export function sectionSource(request: SectionRequest): SectionSource | null {
  const { document, setup, cut, focus } = request;
  const cutHouse = houseOnCut(request);
  if (!cutHouse) return null;
  const { plane, scene, rakes } = cutHouse;
  const strip = STRIP[cut.through];
  const places = shownPlaces(document, plane, strip);
  const lines = sightLines(request, { plane, scene, rakes, places });
  const placed = placedInSetup(document, setup);
  return {
    ...request,
    plane,
    scene,
    rakes,
    lines,
    items: shownItems(placed, {
      plane,
      strip,
      important: importantRecords(lines, focus),
      others: cut.through === 'centre',
    }),
    places,
    marks: shortMarks(placed),
    held: heldInstruments(document, setup),
    strip,
  };
}

/** The rakes that a section shows; null as above. */
export function houseOnCut(request: HouseCut): Pick<SectionSource, 'plane' | 'scene' | 'rakes'> | null {
  const { document, setup, cut, focus } = request;
  const plane = planeOfCut(request);
  const scene = sceneWithoutHeads(document, setup);
  if (!plane || (focus.kind === 'player' && !scene.targets.some(({ id }) => id === focus.player)))
    return null;
  const view = { plane, focus, beside: cut.through === 'centre' };
  return { plane, scene, rakes: withoutDoubles(document, rakesOnPlane(document, scene, view)) };
}

export type HouseCut = Pick<SectionRequest, 'document' | 'setup' | 'cut' | 'focus'>;

export function placedSection(source: SectionSource, placement: SectionPlacement): SectionContext {
  const { scale, origin } = placement;
  const toPage = { a: 1 / scale, b: 0, c: 0, d: -1 / scale, e: origin.x, f: origin.y };
  return { ...source, ...placement, toPage };
}

function planeOfCut(request: HouseCut): SightPlane | null {
  const { document, setup, cut } = request;
  if (cut.through === 'centre') return CENTRE_PLANE;
  const seat = chosenPlace(request);
  const player = find(document, cut.player);
  if (!seat || !player || (player.setup !== null && player.setup !== setup)) return null;
  return planeThrough(seat, player);
}

/** Blocks left and right of the plane that look the same from the side become one. */
function withoutDoubles(document: Document, rakes: readonly BlockRake[]): NamedRake[] {
  const looks = new Map<string, NamedRake>();
  for (const rake of rakes) {
    const name = oneLine(find(document, rake.block)?.name ?? '');
    const look = rake.rows.map(({ out, eyeZ }) => `${Math.round(out)} ${Math.round(eyeZ)}`).join();
    const known = looks.get(look);
    looks.set(
      look,
      known
        ? { ...known, name: `${known.name} · ${name}`, blocks: [...known.blocks, rake.block] }
        : { ...rake, name, blocks: [rake.block] },
    );
  }
  return [...looks.values()];
}

interface Seen {
  readonly plane: SightPlane;
  readonly scene: Scene;
  readonly rakes: readonly BlockRake[];
  readonly places: readonly ShownPlace[];
}

function sightLines(request: SectionRequest, { plane, scene, rakes, places }: Seen): SightLine[] {
  const chosen = chosenPlace(request);
  const cutOf = (eye: EyeOnPlane, focus: FocusPoint) => firstCut(eye, focus, { plane, scene });
  const ofRows = rakes.flatMap(({ block, focus, rows }) =>
    rows.map((row) => {
      const eye = eyeOfRow(row);
      const isChosen = chosen?.record === block && chosen.row === row.row;
      return { eye, focus, cut: cutOf(eye, focus), name: row.name, chosen: isChosen };
    }),
  );
  const focus = rakes[0]?.focus;
  if (!focus) return ofRows;
  const all = rakes.flatMap(({ rows }) => rows).sort((a, b) => b.out - a.out);
  const ofPlaces = places.map((shown) => {
    const eye = eyeOfPlace(shown, all);
    return {
      eye,
      focus,
      cut: cutOf(eye, focus),
      name: shown.place.name,
      chosen: chosen?.record === shown.place.id,
    };
  });
  return [...ofRows, ...ofPlaces];
}

/** Nobody knows whose head is in line with a single place: all are taken to be. */
function eyeOfPlace({ out, floorZ, eyeZ }: ShownPlace, rows: readonly RakeRow[]): EyeOnPlane {
  const inLine = rows.filter((row) => row.out < out && row.looks === 1 && row.eyeZ > floorZ);
  return { out, z: eyeZ, looks: 1, inLine };
}

function chosenPlace({ document, cut }: HouseCut): HousePlace | undefined {
  return cut.through === 'seat' ? housePlaces(document).find(({ id }) => id === cut.seat) : undefined;
}

function importantRecords(lines: readonly SightLine[], focus: RakeFocus): Set<string> {
  const records = new Set(lines.flatMap(({ cut }) => cut?.record ?? []));
  if (focus.kind === 'player') records.add(focus.player);
  return records;
}

interface Showing {
  readonly plane: SightPlane;
  readonly strip: Millimetres;
  readonly important: ReadonlySet<string>;
  /** Whether players and levels beside the strip are shown too: not on a slant, where they would seem to float. */
  readonly others: boolean;
}

function shownItems(
  placed: readonly PlacedRecord[],
  { plane, strip, important, others }: Showing,
): ShownItem[] {
  return placed
    .map((record) => ({
      record,
      beyond: onPlane(plane, record).beyond,
      full: important.has(record.id) || touchesStrip(record, plane, strip),
    }))
    .filter(({ record, full }) => full || (others && (record.kind === 'player' || record.kind === 'riser')))
    .sort((a, b) => orderOf(a) - orderOf(b) || b.beyond - a.beyond);
}

/** Levels under everything, outlines behind what is full. */
function orderOf({ record, full }: ShownItem): number {
  return (record.kind === 'riser' ? 0 : 2) + (full ? 1 : 0);
}

function touchesStrip(record: PlacedRecord, plane: SightPlane, strip: Millimetres): boolean {
  let [nearest, farthest] = [Infinity, -Infinity];
  for (const corner of outlineOf(record)) {
    const { beyond } = onPlane(plane, corner);
    [nearest, farthest] = [Math.min(nearest, beyond), Math.max(farthest, beyond)];
  }
  return nearest <= strip && farthest >= -strip;
}

function shownPlaces(document: Document, plane: SightPlane, strip: Millimetres): ShownPlace[] {
  const spots = new Map(housePlaces(document).map((place) => [place.id, place]));
  return allOf(document, 'place').flatMap((place) => {
    const spot = spots.get(place.id);
    const { out, beyond } = onPlane(plane, place);
    if (!spot || Math.abs(beyond) > strip) return [];
    return [{ place, out, floorZ: spot.floorZ, eyeZ: spot.eyeZ }];
  });
}

/** A spot of the plane on the page: mm along the plane, and mm above the platform's floor. */
export function planeToPage(
  { toPage }: Pick<SectionContext, 'toPage'>,
  out: Millimetres,
  z: Millimetres,
): Point {
  return mapPoint(toPage, { x: out, y: z });
}
