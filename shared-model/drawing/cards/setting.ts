/** What a player sets where before the piece: his place, his stands with their paper, what he plays and what it waits on. */

import { find, inSetup, placedInSetup } from '../../document/document.ts';
import { asId } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import { formatBare, formatFacing, formatLength, formatPosition } from '../../document/measures.ts';
import type { Instrument, PlacedRecord, Player, Stand } from '../../document/records.ts';
import { shortMarks } from '../plan/short-marks.ts';
import { instrumentName, lowerFirst, modelName, whatItIs } from '../sheet/marks-table.ts';
import { seatModel } from '../../catalogue/seats.ts';
import { fixed } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';
import type { CardsOrder } from './order.ts';
import { paperOf, type OwnPaper } from './own-paper.ts';
import { paperWords } from './words.ts';

/** A mark as on the plot, and what stands there and how. */
export interface Setting {
  readonly mark: string;
  readonly words: string;
}

/** `inScore`: the score says in which rests he changes instruments, so that nothing that was typed counts, as in the checks. */
export function settingOf(order: CardsOrder, playerId: string, inScore: boolean): Setting[] {
  const { document, setup } = order;
  const player = find(document, asId<'player'>(playerId));
  if (!player) return [];
  const paper = paperOf(order, playerId);
  const marks = shortMarks(placedInSetup(document, setup));
  const markOf = (record: PlacedRecord): string => marks.get(record.id) ?? '';
  const stands = paper.flatMap((own) => {
    const stand = find(document, asId<'stand'>(own.plan.station));
    return stand ? [{ mark: markOf(stand), words: standWords(order, stand, own) }] : [];
  });
  const unused = inSetup(document, setup, 'stand').filter(
    ({ id, sides }) =>
      sides.some(({ reader }) => reader === playerId) && !paper.some(({ plan }) => plan.station === id),
  );
  return [
    { mark: markOf(player), words: t`You: ${placeWords(order, player)}; ${seatWords(order, player)}.` },
    ...stands,
    ...unused.map((stand) => ({
      mark: markOf(stand),
      words: t`${whatItIs(stand)}, ${placeWords(order, stand)}. No paper in this piece.`,
    })),
    ...instrumentSettings({ order, player, inScore }, markOf),
    ...standing(order, player).map((record) => ({
      mark: markOf(record),
      words: `${whatItIs(record)}, ${placeWords(order, record)}.`,
    })),
  ];
}

function placeWords({ units }: CardsOrder, record: PlacedRecord): string {
  return t`${formatPosition(record, units)}, faces ${formatFacing(record.facing)}`;
}

function seatWords({ units }: CardsOrder, { chair }: Player): string {
  if (!chair) return t`standing`;
  const model = seatModel(chair.model)?.name ?? t`seat`;
  return t`${lowerFirst(model)}, ${formatLength(chair.height, units)} high`;
}

function standWords(order: CardsOrder, stand: Stand, own: OwnPaper): string {
  const measured = stand.form === 'backToBack' ? t`back to back, measured to the ridge` : '';
  const desk = t`lip ${formatLength(stand.lip, order.units)} high, desk at ${Math.round(stand.tilt)}°`;
  const set = [placeWords(order, stand), measured, desk].filter(Boolean).join(', ');
  return `${modelName(stand) ?? t`Stand`} (${labelOf(order.document, order.setup, stand.id)}): ${set}. ${paperWords(order, own)}`;
}

interface Owner {
  readonly order: CardsOrder;
  readonly player: Player;
  readonly inScore: boolean;
}

/** Those held at first in one line, each other where it waits. */
function instrumentSettings(
  { order, player, inScore }: Owner,
  markOf: (record: PlacedRecord) => string,
): Setting[] {
  const own = inSetup(order.document, order.setup, 'instrument').filter((each) => each.player === player.id);
  const held = own.filter(({ support }) => support === null).map(instrumentName);
  const waiting = own.flatMap((instrument): Setting[] => {
    const support = instrument.support === null ? undefined : find(order.document, instrument.support);
    return support
      ? [
          {
            mark: markOf(support),
            words: waitingWords(order, inScore ? { ...instrument, freeTime: null } : instrument, support),
          },
        ]
      : [];
  });
  return [
    ...(held.length > 0 ? [{ mark: '', words: t`In your hands: ${held.join(', ')}.` }] : []),
    ...waiting,
  ];
}

function waitingWords(order: CardsOrder, instrument: Instrument, support: PlacedRecord): string {
  const where = t`${instrumentName(instrument)} waits on the ${lowerFirst(whatItIs(support))}, ${supportPlace(order, support)}.`;
  const { freeTime } = instrument;
  return freeTime === null ? where : `${where} ${t`Take it up in a rest of ${fixed(freeTime, 1)} s.`}`;
}

function supportPlace({ units }: CardsOrder, support: PlacedRecord): string {
  const position = formatPosition(support, units);
  if (!('height' in support)) return position;
  const height = `${formatBare(support.height, units)}${units === 'metric' ? ' mm' : ''}`;
  return t`${position}, ${height} high`;
}

/** What stands on the floor and is played by him. */
function standing({ document, setup }: CardsOrder, { id }: Player): PlacedRecord[] {
  return [...inSetup(document, setup, 'piano'), ...inSetup(document, setup, 'largeInstrument')].filter(
    ({ player }) => player === id,
  );
}
