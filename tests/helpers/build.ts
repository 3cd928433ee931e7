/** Small documents for tests: every field has a plain default, name only what the test is about. */

import { documentOf, type Document } from '#model/document/document.ts';
import { asId, type Id } from '#model/document/ids.ts';
import type { Music } from '#model/document/music.ts';
import type {
  AnyRecord,
  Concert,
  Door,
  Group,
  Instrument,
  InstrumentStand,
  Kind,
  Lamp,
  LargeInstrument,
  PagePlanRecord,
  PartPdf,
  Person,
  Piano,
  Place,
  Platform,
  Player,
  RecordOf,
  Riser,
  ScoreRecord,
  Seat,
  SeatBlock,
  Setup,
  Shape,
  Stand,
  StandSide,
  Stock,
  Storage,
  Table,
  Underlay,
} from '#model/document/records.ts';

type Fields<R> = Partial<Omit<R, 'id' | 'kind'>> & { readonly id?: string };

function made<R extends AnyRecord>(defaults: R, fields: Fields<R>): R {
  return { ...defaults, ...fields, id: asId(fields.id ?? defaults.id) } as R;
}

export const SETUP: Id<'setup'> = asId('setup-1');

const placedAt = <K extends Kind>(kind: K) => ({
  id: asId<K>(`${kind}-1`),
  kind,
  name: '',
  setup: SETUP,
  x: 0,
  y: 2000,
  facing: 0,
});

export const PERSON: Person = {
  population: 'pooled',
  size: { by: 'percentile', percentile: 50 },
  shoes: 25,
  measured: { eyeHeight: null, shoulderHeight: null, armLength: null },
};

export const SIDE: StandSide = {
  reader: null,
  pagesAcross: 2,
  pageWidth: 210,
  pageHeight: 297,
  staffSize: null,
  turned: false,
  freeTime: null,
};

export const aConcert = (f: Fields<Concert> = {}): Concert =>
  made<Concert>(
    {
      id: asId('concert-1'),
      kind: 'concert',
      name: 'Test concert',
      venue: '',
      date: '',
      revision: '',
      author: '',
      units: 'metric',
      headsInFront: false,
      limits: { seesWell: 0.9, houseShare: 0.75, edgeDistance: 600, routeWidth: 915 },
      contacts: [],
      views: [],
    },
    f,
  );

export const aSetup = (f: Fields<Setup> = {}): Setup =>
  made<Setup>(
    {
      id: SETUP,
      kind: 'setup',
      name: 'Trio',
      order: 1,
      notes: '',
      needNotSee: [],
      variantOf: null,
      changeTime: null,
    },
    f,
  );

/** 8 m wide, 5 m deep, 600 mm high; edge 0 is the front edge, from stage right to stage left. */
export const aPlatform = (f: Fields<Platform> = {}): Platform =>
  made<Platform>(
    {
      id: asId('platform-1'),
      kind: 'platform',
      name: '',
      outline: [
        { x: -4000, y: 0 },
        { x: 4000, y: 0 },
        { x: 4000, y: 5000 },
        { x: -4000, y: 5000 },
      ],
      height: 600,
      openEdges: [0],
    },
    f,
  );

export const aDoor = (f: Fields<Door> = {}): Door =>
  made<Door>(
    {
      id: asId('door-1'),
      kind: 'door',
      name: '',
      edge: 2,
      offset: 200,
      width: 1000,
      exit: true,
      stepFree: true,
    },
    f,
  );

export const aSeatBlock = (f: Fields<SeatBlock> = {}): SeatBlock =>
  made<SeatBlock>(
    {
      id: asId('stalls'),
      kind: 'seatBlock',
      name: 'Stalls',
      x: 0,
      y: -2500,
      facing: 180,
      rows: 5,
      seatsPerRow: 8,
      seatPitch: 520,
      rowDepth: 900,
      riser: 0,
      floor: 0,
      curveRadius: 0,
      staggered: false,
      aisles: [],
      frontRail: 0,
      eyeHeight: 1200,
      firstRow: 'A',
    },
    f,
  );

export const aPlace = (f: Fields<Place> = {}): Place =>
  made<Place>(
    {
      id: asId('place-1'),
      kind: 'place',
      name: '',
      use: 'wheelchair',
      x: 0,
      y: -4000,
      floor: 0,
      eyeHeight: 1200,
    },
    f,
  );

export const aStorage = (f: Fields<Storage> = {}): Storage =>
  made<Storage>({ id: asId('storage-1'), kind: 'storage', name: '', x: 0, y: 7000, door: null }, f);

export const aStock = (f: Fields<Stock> = {}): Stock =>
  made<Stock>(
    {
      id: asId('stock-1'),
      kind: 'stock',
      name: '',
      item: 'stand',
      model: '',
      owned: 0,
      borrowed: 0,
      storage: null,
    },
    f,
  );

export const aGroup = (f: Fields<Group> = {}): Group =>
  made<Group>(
    { id: asId('group-1'), kind: 'group', name: '', setup: SETUP, members: [], locked: false, hidden: false },
    f,
  );

/** A drawing of one line across 8000 units. */
export const anUnderlay = (f: Fields<Underlay> = {}): Underlay =>
  made<Underlay>(
    {
      id: asId('underlay-1'),
      kind: 'underlay',
      name: '',
      x: -4000,
      y: 0,
      turn: 0,
      scale: 1,
      opacity: 0.5,
      shown: true,
      source: 'hall.dxf',
      content: { type: 'lines', width: 8000, height: 5000, lines: [[0, 0, 8000, 5000]] },
    },
    f,
  );

export const aPlayer = (f: Fields<Player> = {}): Player =>
  made<Player>({ ...placedAt('player'), person: PERSON, chair: null, mobility: 'walks' }, f);

export const anInstrument = (f: Fields<Instrument> = {}): Instrument =>
  made<Instrument>(
    {
      id: asId('instrument-1'),
      kind: 'instrument',
      name: '',
      setup: SETUP,
      model: 'clarinet',
      player: asId('player-1'),
      support: null,
      freeTime: null,
    },
    f,
  );

export const aStand = (f: Fields<Stand> = {}): Stand =>
  made<Stand>(
    {
      ...placedAt('stand'),
      facing: 180,
      form: 'single',
      model: 'orchestral',
      deskWidth: 510,
      deskHeight: 340,
      lip: 800,
      tilt: 65,
      sides: [SIDE],
    },
    f,
  );

export const anInstrumentStand = (f: Fields<InstrumentStand> = {}): InstrumentStand =>
  made<InstrumentStand>({ ...placedAt('instrumentStand'), model: 'clarinet-peg', height: 600 }, f);

export const aTable = (f: Fields<Table> = {}): Table =>
  made<Table>({ ...placedAt('table'), model: 'percussion-table', width: 600, depth: 400, height: 850 }, f);

export const aSeat = (f: Fields<Seat> = {}): Seat =>
  made<Seat>({ ...placedAt('seat'), model: 'orchestra-chair', height: 450 }, f);

export const aPiano = (f: Fields<Piano> = {}): Piano =>
  made<Piano>({ ...placedAt('piano'), model: 'grand-210', lid: 'closed', player: null }, f);

export const aLargeInstrument = (f: Fields<LargeInstrument> = {}): LargeInstrument =>
  made<LargeInstrument>({ ...placedAt('largeInstrument'), model: 'marimba', player: null }, f);

export const aLamp = (f: Fields<Lamp> = {}): Lamp =>
  made<Lamp>({ ...placedAt('lamp'), height: 1400, cable: [], cableCovered: false }, f);

export const aRiser = (f: Fields<Riser> = {}): Riser =>
  made<Riser>({ ...placedAt('riser'), width: 2000, depth: 1000, height: 200 }, f);

export const aShape = (f: Fields<Shape> = {}): Shape =>
  made<Shape>(
    {
      ...placedAt('shape'),
      outline: [
        { x: -150, y: -150 },
        { x: 150, y: -150 },
        { x: 150, y: 150 },
        { x: -150, y: 150 },
      ],
      height: 2500,
      fixed: true,
    },
    f,
  );

/** Concert, setup, platform, one exit and one seat block; `records` are added or replace those of the same id. */
export function aDocument(...records: AnyRecord[]): Document {
  const base: AnyRecord[] = [aConcert(), aSetup(), aPlatform(), aDoor(), aSeatBlock()];
  return documentOf([...base, ...records]);
}

export function recordOf<K extends Kind>(document: Document, id: string, kind: K): RecordOf<K> {
  const record = document.records.get(id);
  if (record?.kind !== kind) throw new Error(`no ${kind} ${id}`);
  return record as RecordOf<K>;
}

/** Four bars of 4/4 at 60, a rest in the third, the second of two pages from there on. */
export const MUSIC: Music = {
  title: 'Study',
  ticksPerQuarter: 2,
  bars: ['1', '2', '3', '4'].map((number) => ({ number, ticks: 8 })),
  tempos: [{ bar: 0, at: 0, quartersPerMinute: 60, source: 'sound' }],
  movements: [0],
  order: [[0, 3]],
  afterJump: null,
  ambiguous: false,
  parts: [
    {
      id: 'P1',
      name: 'Oboe',
      silences: [[2, 0, 4]],
      pages: [
        { page: 1, bar: 0 },
        { page: 2, bar: 2 },
      ],
      ownPages: true,
      instruments: [],
      transpositions: [],
    },
  ],
  remarks: [],
};

export const aScore = (fields: Fields<ScoreRecord> = {}): ScoreRecord =>
  made(
    {
      id: asId('score-1'),
      kind: 'score',
      name: '',
      setup: SETUP,
      source: '',
      music: MUSIC,
      players: [null],
      pdfs: (fields.music ?? MUSIC).parts.map(() => null),
    },
    fields,
  );

export const aPdf = (fields: Partial<PartPdf> = {}): PartPdf => ({
  file: 'oboe.pdf',
  sha256: '0123456789abcdef'.repeat(4),
  sizes: [1, 2, 3].map(() => ({ width: 210, height: 297 })),
  pages: [2, 3],
  staffSize: null,
  ...fields,
});

/** Nothing decided yet. */
export const aPagePlan = (fields: Fields<PagePlanRecord> = {}): PagePlanRecord =>
  made<PagePlanRecord>(
    {
      id: asId('pagePlan-1'),
      kind: 'pagePlan',
      name: '',
      setup: SETUP,
      score: asId('score-1'),
      stations: [],
      turns: [],
      pins: [],
    },
    fields,
  );

/** A box over a stretch across the platform and one of its depth, as people would say where it stands. */
export function aBox(
  id: string,
  [x0, x1]: readonly [number, number],
  [y0, y1]: readonly [number, number],
): Shape {
  const [w, d] = [(x1 - x0) / 2, (y1 - y0) / 2];
  const outline = [
    { x: -w, y: -d },
    { x: w, y: -d },
    { x: w, y: d },
    { x: -w, y: d },
  ];
  return aShape({ id, x: (x0 + x1) / 2, y: (y0 + y1) / 2, outline });
}
