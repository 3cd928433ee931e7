/**
 * The records a document is made of: flat, immutable, each found by its id.
 *
 * Frame: the origin is where the centre line meets the front edge of the platform, on the platform's floor;
 * +x towards stage left, +y upstage, +z up. The house floor is at `z = -platform.height`.
 * Lengths are millimetres, angles degrees, times seconds. A `facing` is measured from "straight at the house"
 * (-y), positive anticlockwise seen from above: 90 faces stage left, 180 faces upstage, -90 stage right.
 */

import type { Id } from './ids.ts';
import type { KeptPin, KeptStation, KeptTurn } from './kept-plan.ts';
import type { Music } from './music.ts';

export type Millimetres = number;
export type Degrees = number;
export type Seconds = number;

export interface Point {
  readonly x: Millimetres;
  readonly y: Millimetres;
}

interface Common<K> {
  readonly id: Id<K & Kind>;
  readonly kind: K;
  /** What people call it; may be empty, then its kind and number stand for it. */
  readonly name: string;
}

/** Something that stands at a spot. `setup: null` means it stays there for the whole concert. */
interface Placed<K> extends Common<K>, Point {
  readonly setup: Id<'setup'> | null;
  readonly facing: Degrees;
}

/** What the director asks for. The tool's own cautions, not requirements of any code. */
export interface Limits {
  /** A place sees a player well when at least this share of his window is visible (0..1). */
  readonly seesWell: number;
  /** At least this share of the places must see each player well (0..1). */
  readonly houseShare: number;
  /** Least distance from a player, chair or stand to an open edge. */
  readonly edgeDistance: Millimetres;
  /** Least width of a walking route. */
  readonly routeWidth: Millimetres;
}

/** Somebody to call, as typed by the user. */
export interface Contact {
  readonly name: string;
  /** What he is there for: "stage manager". */
  readonly role: string;
  /** Telephone, mail or both, in one line. */
  readonly reachedAt: string;
}

/** The one record that names the concert. Exactly one a document. */
export interface Concert extends Common<'concert'> {
  readonly venue: string;
  /** ISO 8601 calendar date, or empty. */
  readonly date: string;
  readonly revision: string;
  /** Who drew it. */
  readonly author: string;
  readonly units: 'metric' | 'imperial';
  /** Whether the heads of the rows in front count as obstacles. */
  readonly headsInFront: boolean;
  readonly limits: Limits;
  readonly contacts: readonly Contact[];
  /** Places of the house whose views are printed, by the ids that `housePlaces` gives them; one that is gone is passed over. */
  readonly views: readonly string[];
}

/** One piece of music (or act) with its own placing of people and things on the shared platform. */
export interface Setup extends Common<'setup'> {
  /** Place in the programme, from 1. */
  readonly order: number;
  readonly notes: string;
  /** Pairs of players, in either order, who may do without seeing each other; all others must. */
  readonly needNotSee: readonly PlayerPair[];
  /**
   * The setup that this one is another version of; null: it is in the programme. A variant is compared and printed
   * like any setup, but no changeover leads to it.
   */
  readonly variantOf: Id<'setup'> | null;
  /** The time there is to set it after what comes before; null: not known. */
  readonly changeTime: Seconds | null;
}

export type PlayerPair = readonly [Id<'player'>, Id<'player'>];

/** The music of one setup and who plays what of it. At most one a setup. */
export interface ScoreRecord extends Common<'score'> {
  readonly setup: Id<'setup'>;
  /** The name of the file that it was read from, for people to know it by. */
  readonly source: string;
  readonly music: Music;
  /** Who plays each part of `music.parts`, in their order; null: nobody on this platform. */
  readonly players: readonly (Id<'player'> | null)[];
  /** What each player reads from, in the same order; null: no PDF of the part is known. */
  readonly pdfs: readonly (PartPdf | null)[];
}

/** A printed part as a PDF. The file itself stays where it is; it is known by its name and by what is in it. */
export interface PartPdf {
  /** Without the folder that it lies in. */
  readonly file: string;
  /** Of its bytes, hexadecimal. */
  readonly sha256: string;
  /** All pages of the file, as they are looked at: turned and cropped. */
  readonly sizes: readonly PageSize[];
  /** The page of the file, from 1, for each page of the part, from its first; null, or beyond the end: none. */
  readonly pages: readonly (number | null)[];
  /** From the bottom to the top line of a staff as printed; null: not known. */
  readonly staffSize: Millimetres | null;
}

export interface PageSize {
  readonly width: Millimetres;
  readonly height: Millimetres;
}

/** The page plan that a setup goes by, planned or made by hand. At most one a setup. */
export interface PagePlanRecord extends Common<'pagePlan'> {
  readonly setup: Id<'setup'>;
  /** The music whose pages and bars it names. */
  readonly score: Id<'score'>;
  /** The stands that hold paper, each once. */
  readonly stations: readonly KeptStation[];
  /** In the order of their places. */
  readonly turns: readonly KeptTurn[];
  /** What another planning has to keep. */
  readonly pins: readonly KeptPin[];
}

/** Exactly one a document. Edge `i` runs from `outline[i]` to `outline[i + 1]` (the last one closes the ring). */
export interface Platform extends Common<'platform'> {
  readonly outline: readonly Point[];
  /** Height of the platform's floor above the house floor. */
  readonly height: Millimetres;
  /** Edges with an unguarded drop. */
  readonly openEdges: readonly number[];
}

/** An opening in an edge of the platform: a door, steps, a ramp. */
export interface Door extends Common<'door'> {
  readonly edge: number;
  /** From the edge's first corner to the near jamb, along the edge. */
  readonly offset: Millimetres;
  readonly width: Millimetres;
  /** People may leave the platform here. */
  readonly exit: boolean;
  readonly stepFree: boolean;
}

export interface Aisle {
  /** The aisle lies after this many seats, counted from the row's first seat. */
  readonly afterSeat: number;
  readonly width: Millimetres;
}

/**
 * A block of seat rows. (x, y) is the middle of the front row and `facing` the way its seats look
 * (180 looks upstage, at the platform). Further rows lie behind.
 */
export interface SeatBlock extends Common<'seatBlock'>, Point {
  readonly facing: Degrees;
  readonly rows: number;
  /** Seats in every row, or one number a row from the front. */
  readonly seatsPerRow: number | readonly number[];
  readonly seatPitch: Millimetres;
  readonly rowDepth: Millimetres;
  /** How much higher each row's floor is than the one before it. */
  readonly riser: Millimetres;
  /** Height of the front row's floor above the house floor: 0 for the stalls, more for a balcony. */
  readonly floor: Millimetres;
  /** 0: straight rows. Otherwise the radius of the front row, its centre before the seats. */
  readonly curveRadius: Millimetres;
  /** Every second row is shifted by half a seat. */
  readonly staggered: boolean;
  readonly aisles: readonly Aisle[];
  /** Height above the front row's floor of a rail before the block; 0: none. */
  readonly frontRail: Millimetres;
  /** Seated eye height above the row's floor. */
  readonly eyeHeight: Millimetres;
  /** Letter (or number) of the front row: "A" goes on B, C, ... */
  readonly firstRow: string;
}

/** A single place in the house. */
export interface Place extends Common<'place'>, Point {
  readonly use: 'standing' | 'wheelchair' | 'camera';
  /** Height of its floor above the house floor. */
  readonly floor: Millimetres;
  readonly eyeHeight: Millimetres;
}

/** Where things wait that are not on the platform. (x, y) may lie anywhere, mostly beyond the platform's edge. */
export interface Storage extends Common<'storage'>, Point {
  /** The opening through which things are carried to it; null: the one that makes the shortest way. */
  readonly door: Id<'door'> | null;
}

/** Things that a crew carries and counts; a player's chair counts as a seat, a back-to-back pair as two stands. */
export type StockItem = Exclude<PlacedRecord['kind'], 'player'> | 'cable';

/** How many there are of one thing. */
export interface Stock extends Common<'stock'> {
  readonly item: StockItem;
  /** Catalogue id of its model; empty: of any, or the kind has no models, and its name says what it is. */
  readonly model: string;
  /** Of the venue's own. */
  readonly owned: number;
  /** Brought in from elsewhere for this concert. */
  readonly borrowed: number;
  /** Where they are when they are not on the platform; null: not said. */
  readonly storage: Id<'storage'> | null;
}

/** A drawing or photograph under the plan, to trace from. Never printed. */
export interface Underlay extends Common<'underlay'>, Point {
  /** (x, y) is where its lower left corner lies; it is turned about that, degrees anticlockwise from above. */
  readonly turn: Degrees;
  /** Millimetres on the platform for each unit of its own (a pixel, or a unit of the drawing). */
  readonly scale: number;
  /** 0 to 1. */
  readonly opacity: number;
  readonly shown: boolean;
  /** Name of the file that it came from, for people. */
  readonly source: string;
  readonly content: UnderlayContent;
}

export type UnderlayContent = UnderlayPicture | UnderlayLines;

export interface UnderlayPicture {
  readonly type: 'picture';
  readonly media: 'image/png' | 'image/jpeg';
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** The bytes of the picture in base64. */
  readonly base64: string;
}

export interface UnderlayLines {
  readonly type: 'lines';
  /** The extent in units of the drawing; all lines lie in 0..width, 0..height, y upwards. */
  readonly width: number;
  readonly height: number;
  /** Each x, y, x, y, ... with at least two points. */
  readonly lines: readonly (readonly number[])[];
}

export type Population = 'female' | 'male' | 'pooled';

/** How tall: a stature, a percentile (1..99) of the population, or "anyone": the small and the tall end both. */
export type BodySize =
  | { readonly by: 'stature'; readonly stature: Millimetres }
  | { readonly by: 'percentile'; readonly percentile: number }
  | { readonly by: 'anyone' };

export interface Person {
  /** `pooled` weighs both sexes equally. */
  readonly population: Population;
  readonly size: BodySize;
  readonly shoes: Millimetres;
  /** Measured on the person, as he stands or sits to play, from the floor; replaces what stature predicts. */
  readonly measured: {
    readonly eyeHeight: Millimetres | null;
    readonly shoulderHeight: Millimetres | null;
    /** Shoulder joint to fingertip. */
    readonly armLength: Millimetres | null;
  };
}

export interface Chair {
  /** Catalogue id of a seat model. */
  readonly model: string;
  readonly height: Millimetres;
}

export type Mobility = 'walks' | 'wheelchair';

/** (x, y) is the vertical axis of the head and shoulders. */
export interface Player extends Placed<'player'> {
  readonly person: Person;
  /** What he sits on, at his own spot; null: he stands. */
  readonly chair: Chair | null;
  /** How he gets to his place and away; who uses a wheelchair may sit in it or move over to another chair. */
  readonly mobility: Mobility;
}

/** A carried instrument: in the player's hands from the start, or lying ready on `support`. */
export interface Instrument extends Common<'instrument'> {
  readonly setup: Id<'setup'> | null;
  /** Catalogue id of an instrument model. */
  readonly model: string;
  readonly player: Id<'player'>;
  /** The instrument stand or table it waits on; null: held. */
  readonly support: Id<'instrumentStand' | 'table'> | null;
  /** The rest in which it has to be picked up; null: not known. */
  readonly freeTime: Seconds | null;
}

/** One side of a stand: who reads there and what lies on the desk. */
export interface StandSide {
  readonly reader: Id<'player'> | null;
  /** Pages side by side on the lip, 0 to 3. */
  readonly pagesAcross: number;
  readonly pageWidth: Millimetres;
  readonly pageHeight: Millimetres;
  /** From the bottom to the top line of a staff as printed; null: not known. */
  readonly staffSize: Millimetres | null;
  /** The reader turns pages here, so he must reach their corner. */
  readonly turned: boolean;
  /** The rest in which the turn has to be made; null: not known. */
  readonly freeTime: Seconds | null;
}

/**
 * A music stand. `single`: the desk's middle is over (x, y), its page looks along `facing`; one side.
 * `backToBack`: two stands whose desks' upper edges meet in a ridge over (x, y); the first side's page looks
 * along `facing`, the second's the other way; two sides.
 */
export interface Stand extends Placed<'stand'> {
  readonly form: 'single' | 'backToBack';
  /** Catalogue id of a stand model. */
  readonly model: string;
  readonly deskWidth: Millimetres;
  /** Along the slope, from the lip to the upper edge. */
  readonly deskHeight: Millimetres;
  /** Height of the lip above the floor the stand is on. */
  readonly lip: Millimetres;
  /** Of the desk from the horizontal: 90 is upright. */
  readonly tilt: Degrees;
  readonly sides: readonly [StandSide] | readonly [StandSide, StandSide];
}

/** A peg or stand that an instrument waits on. */
export interface InstrumentStand extends Placed<'instrumentStand'> {
  readonly model: string;
  /** Height at which a hand takes the instrument. */
  readonly height: Millimetres;
}

/** A table or tray, for instance for small percussion. `width` lies across its facing. */
export interface Table extends Placed<'table'> {
  readonly model: string;
  readonly width: Millimetres;
  readonly depth: Millimetres;
  readonly height: Millimetres;
}

/** A chair, stool or bench that no player of the setup sits on. */
export interface Seat extends Placed<'seat'> {
  readonly model: string;
  readonly height: Millimetres;
}

/** `facing` is the way its player looks when he plays, from the keyboard to the tail; (x, y): middle of the case. */
export interface Piano extends Placed<'piano'> {
  readonly model: string;
  readonly lid: 'closed' | 'half' | 'full';
  readonly player: Id<'player'> | null;
}

/** An instrument that stands on the floor: marimba, timpani, harp. `facing` is the way its player looks over it. */
export interface LargeInstrument extends Placed<'largeInstrument'> {
  readonly model: string;
  readonly player: Id<'player'> | null;
}

export interface Lamp extends Placed<'lamp'> {
  readonly height: Millimetres;
  /** From the lamp to its socket, on the platform's floor. Empty: no cable. */
  readonly cable: readonly Point[];
  /** A ramp or mat covers the cable where people walk. */
  readonly cableCovered: boolean;
}

/** A rectangular level on the platform: what stands on it stands `height` higher. */
export interface Riser extends Placed<'riser'> {
  readonly width: Millimetres;
  readonly depth: Millimetres;
  readonly height: Millimetres;
}

/** Anything else with an outline and a height, from the floor up: a column, a flight case, a lectern. */
export interface Shape extends Placed<'shape'> {
  /** About (x, y), before turning by `facing`. */
  readonly outline: readonly Point[];
  readonly height: Millimetres;
  /** Part of the building. */
  readonly fixed: boolean;
}

/**
 * Things that are taken hold of together; of one thing alone, what keeps it locked or hidden. All members are there in
 * the same setup as the group (null: all for the whole concert), and no thing is in two groups.
 */
export interface Group extends Common<'group'> {
  readonly setup: Id<'setup'> | null;
  readonly members: readonly Id<PlacedRecord['kind']>[];
  /** Not to be moved, turned or removed by hand. */
  readonly locked: boolean;
  /** Not drawn on the screen; checks count its members all the same. */
  readonly hidden: boolean;
}

export type PlacedRecord =
  Player | Stand | InstrumentStand | Table | Seat | Piano | LargeInstrument | Lamp | Riser | Shape;

export type VenueRecord =
  | Concert
  | Setup
  | ScoreRecord
  | PagePlanRecord
  | Platform
  | Door
  | SeatBlock
  | Place
  | Storage
  | Stock
  | Underlay;

export type AnyRecord = VenueRecord | PlacedRecord | Instrument | Group;

export type Kind = AnyRecord['kind'];

export type RecordOf<K extends Kind> = Extract<AnyRecord, { readonly kind: K }>;

export const PLACED_KINDS = [
  'player',
  'stand',
  'instrumentStand',
  'table',
  'seat',
  'piano',
  'largeInstrument',
  'lamp',
  'riser',
  'shape',
] as const satisfies readonly PlacedRecord['kind'][];

export function isPlaced(record: AnyRecord): record is PlacedRecord {
  return (PLACED_KINDS as readonly string[]).includes(record.kind);
}
