/** Everything there is to see from an eye. */

import type { PlacedRecord } from '../../../document/records.ts';
import type { ViewContext } from '../context.ts';
import type { Solid } from '../mesh.ts';
import { seatSolid } from './chairs.ts';
import { countedSolids } from './counted.ts';
import { playerSolid } from './figure.ts';
import { instrumentStandSolid, lampSolid, shapeSolid, tableSolid } from './furniture.ts';
import { houseFromSeat, houseFromStage } from './house.ts';
import { largeInstrumentSolid } from './large.ts';
import { pianoSolid } from './pianos.ts';
import { platformSolid, riserSolid } from './platform.ts';
import { standSolid } from './stands.ts';

export function solidsOf(context: ViewContext): Solid[] {
  const { view } = context;
  const house = view.from === 'seat' ? houseFromSeat(context) : houseFromStage(context);
  return [platformSolid(context), ...thingsOn(context), ...house];
}

/** A player does not see himself, nor the chair under him and what he holds. */
function thingsOn(context: ViewContext): Solid[] {
  const { view, items, risers } = context;
  if (context.show === 'counted') {
    const own = new Set<string>([view.subject, ...heldBy(context, view.subject)]);
    const counted = countedSolids(context).filter(({ subject }) => !own.has(subject));
    return [...risers.map((riser) => riserSolid(context, riser)), ...counted];
  }
  return items.filter(({ id }) => id !== view.subject).map((record) => solidOf(context, record));
}

function heldBy({ instruments }: ViewContext, player: string): string[] {
  return instruments.flatMap(({ id, player: owner, support }) =>
    owner === player && support === null ? id : [],
  );
}

function solidOf(context: ViewContext, record: PlacedRecord): Solid {
  switch (record.kind) {
    case 'player':
      return playerSolid(context, record);
    case 'stand':
      return standSolid(context, record);
    case 'instrumentStand':
      return instrumentStandSolid(context, record);
    case 'table':
      return tableSolid(context, record);
    case 'seat':
      return seatSolid(context, record);
    case 'piano':
      return pianoSolid(context, record);
    case 'largeInstrument':
      return largeInstrumentSolid(context, record);
    case 'lamp':
      return lampSolid(context, record);
    case 'riser':
      return riserSolid(context, record);
    case 'shape':
      return shapeSolid(context, record);
  }
}
