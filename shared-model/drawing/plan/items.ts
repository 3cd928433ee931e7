/** One group per placed record, so that a painter can redraw only what changed. */

import { formatFacing, formatLength, formatPosition } from '../../document/measures.ts';
import { kindWord } from '../../document/labels.ts';
import type { PlacedRecord } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import type { GroupPrimitive, Primitive } from '../primitives.ts';
import { oneLine } from '../text.ts';
import type { PlanContext } from './context.ts';
import { drawInstrumentStand, drawLamp, drawRiser, drawShape, drawTable } from './furniture.ts';
import { drawLargeInstrument, drawPiano } from './large.ts';
import { drawPlayer } from './players.ts';
import { drawSeat } from './seats.ts';
import { drawStand } from './stands.ts';

/** The symbol of one record, without its label; `subject` is its id. */
export function drawItem(record: PlacedRecord, context: PlanContext): GroupPrimitive {
  return {
    kind: 'group',
    subject: record.id,
    description: describeItem(record, context),
    children: symbolOf(record, context),
  };
}

/** The risers of the setup: the ground that dimension lines and items lie on. */
export function drawRisers(context: PlanContext): GroupPrimitive[] {
  return context.risers.map((riser) => drawItem(riser, context));
}

/** All items of the setup, what lies lowest first. */
export function drawItems(context: PlanContext): GroupPrimitive[] {
  return [...drawRisers(context), ...drawThings(context)];
}

/** The items of the setup without its risers. */
export function drawThings(context: PlanContext): GroupPrimitive[] {
  return LAYERS.flatMap((kinds) => context.items.filter((record) => kinds.includes(record.kind))).map(
    (record) => drawItem(record, context),
  );
}

/** "S3 stand 3: 820 SL, 1450 US, desk faces 20° towards SR". */
export function describeItem(record: PlacedRecord, context: PlanContext): string {
  const mark = context.marks.get(record.id) ?? '';
  const name = record.name ? ` ${oneLine(record.name)}` : '';
  const position = formatPosition(record, context.units);
  const stands = FACING_WORDS[record.kind](position, formatFacing(record.facing));
  const lip = record.kind === 'stand' ? [t`lip ${formatLength(record.lip, context.units)}`] : [];
  return `${mark} ${kindWord(record.kind)}${name}: ${[stands, ...lip].join(', ')}`;
}

type Facing = (position: string, facing: string) => string;

const faces: Facing = (position, facing) => t`${position}, faces ${facing}`;
const playerLooks: Facing = (position, facing) => t`${position}, player looks ${facing}`;

const FACING_WORDS: Readonly<Record<PlacedRecord['kind'], Facing>> = {
  player: faces,
  stand: (position, facing) => t`${position}, desk faces ${facing}`,
  instrumentStand: faces,
  table: faces,
  seat: faces,
  piano: playerLooks,
  largeInstrument: playerLooks,
  lamp: faces,
  riser: faces,
  shape: (position, facing) => t`${position}, turned ${facing}`,
};

const LAYERS: readonly (readonly PlacedRecord['kind'][])[] = [
  ['shape'],
  ['largeInstrument', 'piano'],
  ['seat', 'table'],
  ['instrumentStand'],
  ['player'],
  ['stand'],
  ['lamp'],
];

function symbolOf(record: PlacedRecord, context: PlanContext): Primitive[] {
  switch (record.kind) {
    case 'player':
      return drawPlayer(context, record);
    case 'stand':
      return drawStand(context, record);
    case 'instrumentStand':
      return drawInstrumentStand(context, record);
    case 'table':
      return drawTable(context, record);
    case 'seat':
      return drawSeat(context, record);
    case 'piano':
      return drawPiano(context, record);
    case 'largeInstrument':
      return drawLargeInstrument(context, record);
    case 'lamp':
      return drawLamp(context, record);
    case 'riser':
      return drawRiser(context, record);
    case 'shape':
      return drawShape(context, record);
  }
}
