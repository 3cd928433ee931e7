/** The points that hands must get to: corners and ridges of pages that are turned, instruments that wait. */

import { desksOf, type Desk } from '../../document/desks.ts';
import { belongsTo, find, inSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightAt } from '../../document/levels.ts';
import { keptPlanOf } from '../../document/parts.ts';
import type { Instrument, InstrumentStand, PagePlanRecord, Stand, Table } from '../../document/records.ts';
import { placed, type Vec3 } from '../../geometry/frame.ts';
import type { Grip } from '../report.ts';
import { turnersOn } from './kept-turns.ts';

/**
 * Every grip of a setup, pages first, in the order of the records' ids; mm, z above the platform's floor.
 *
 * A page that is turned by its reader: its lower outer corner on his right; over a back-to-back pair also the middle
 * of its upper edge, since the leaf goes over the ridge. Where a page plan is kept, its turns alone, by whom it says. An instrument on a support: there, beside its neighbours.
 * What belongs to a player who is not in the setup is left out.
 */
export function gripsOf(document: Document, setup: Id<'setup'>): Grip[] {
  const isThere = (player: Id<'player'>) => {
    const record = find(document, player);
    return record !== undefined && belongsTo(record, setup);
  };
  return [...pageGrips(document, setup), ...instrumentGrips(document, setup)].filter((grip) =>
    isThere(grip.player),
  );
}

type GripFor = Omit<Grip, 'player'> & { readonly player: Id<'player'> };

function pageGrips(document: Document, setup: Id<'setup'>): GripFor[] {
  const plan = keptPlanOf(document, setup);
  return inSetup(document, setup, 'stand').flatMap((stand) =>
    desksOf(stand, floorHeightAt(document, setup, stand)).flatMap((desk) =>
      plan ? plannedGrips(stand, desk, plan) : turnGrips(stand, desk),
    ),
  );
}

/** A partner may turn for the reader. */
function plannedGrips(stand: Stand, desk: Desk, plan: PagePlanRecord): GripFor[] {
  return turnersOn(plan, stand.id, desk.sideIndex).flatMap((player) =>
    leafGrips(stand, desk, player).map((grip) =>
      player === desk.side.reader ? grip : { ...grip, id: `${grip.id}/${player}` },
    ),
  );
}

function turnGrips(stand: Stand, desk: Desk): GripFor[] {
  const { turned, reader } = desk.side;
  return turned && reader !== null ? leafGrips(stand, desk, reader) : [];
}

/** What `player` would have to get to, to turn a leaf that lies on a desk, whoever reads there. */
export function leafGrips(stand: Stand, { sideIndex, paper }: Desk, player: Id<'player'>): GripFor[] {
  if (paper === null) return [];
  const [, lowerRight, upperRight, upperLeft] = paper;
  const grip = (purpose: 'turnCorner' | 'turnRidge', at: Vec3): GripFor => ({
    id: `${stand.id}/${purpose}-${sideIndex}`,
    player,
    item: stand.id,
    purpose,
    ...at,
  });
  const corner = grip('turnCorner', lowerRight);
  return stand.form === 'single' ? [corner] : [corner, grip('turnRidge', middle(upperLeft, upperRight))];
}

function middle(a: Vec3, b: Vec3): Vec3 {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, z: (a.z + b.z) / 2 };
}

function instrumentGrips(document: Document, setup: Id<'setup'>): GripFor[] {
  const waiting = inSetup(document, setup, 'instrument').filter(({ support }) => support !== null);
  const supports = [...inSetup(document, setup, 'instrumentStand'), ...inSetup(document, setup, 'table')];
  const bySupport = new Map<string, (typeof supports)[number]>(
    supports.map((support) => [support.id, support]),
  );
  return waiting.flatMap((instrument) => {
    const support = bySupport.get(instrument.support ?? '');
    if (!support) return [];
    const beside = waiting.filter((other) => other.support === support.id);
    const floor = floorHeightAt(document, setup, support);
    return [
      pickUp(instrument, spotOn(support, beside.indexOf(instrument), beside.length), floor + support.height),
    ];
  });
}

function pickUp(instrument: Instrument, at: { readonly x: number; readonly y: number }, z: number): GripFor {
  return {
    id: `${instrument.id}/pickUp`,
    player: instrument.player,
    item: instrument.id,
    purpose: 'pickUp',
    x: at.x,
    y: at.y,
    z,
  };
}

/** On a table the instruments lie side by side, evenly over its width; on a stand there is one spot. */
function spotOn(support: InstrumentStand | Table, index: number, count: number) {
  const along = support.kind === 'table' ? support.width * ((index + 0.5) / count - 0.5) : 0;
  return placed(support, { x: along, y: 0 });
}
