/** What the sight check has to say: players whom too small a share of the house sees well. */

import { concertOf, find, type Document } from '../document/document.ts';
import { asId } from '../document/ids.ts';
import type { Finding } from './finding.ts';
import type { HouseFigure, SightReport } from './report.ts';
import type { SeatPoint } from './scene.ts';
import { coverPartOf } from './sightlines/cover-part.ts';
import { hidingOf } from './sightlines/hidden-part.ts';

/**
 * `sight.house`, one a player at most: the share of places that see him well against the share the director asked for.
 * Subjects: the player, then what covers him most. Detail: `lost` places of `places` do not see him well, in rows
 * `firstRow` to `lastRow` of one block, or in several `blocks` (empty: not so); the worst place and its share; the mean share of the
 * window that the worst cover takes; what of the cover it is (`coverPart`, see CoverPart), which `part` of the window it hides from `hiddenFrom` places, and in which rows or blocks
 * these are (`hiddenFirstRow`, `hiddenLastRow`, `hiddenBlocks`).
 */
export function sightFindings(document: Document, sight: SightReport): Finding[] {
  const { limits } = concertOf(document);
  return sight.figures.flatMap((figure, target) => {
    if (figure.seenWell >= limits.houseShare) return [];
    return [sightFinding(document, sight, figure, placesThatLost(sight, target, limits.seesWell))];
  });
}

function placesThatLost({ scene, visible }: SightReport, target: number, seesWell: number): SeatPoint[] {
  const targets = scene.targets.length;
  return scene.seats.filter((_, seat) => (visible[seat * targets + target] ?? 1) < seesWell);
}

function sightFinding(
  document: Document,
  sight: SightReport,
  figure: HouseFigure,
  lost: readonly SeatPoint[],
): Finding {
  const player = find(document, asId<'player'>(figure.player));
  const cover = figure.coveredBy[0];
  const worstSeat = sight.scene.seats.find(({ id }) => id === figure.worst.seat);
  return {
    code: 'sight.house',
    severity: 'fail',
    subjects: cover ? [figure.player, cover.record] : [figure.player],
    measured: figure.seenWell,
    required: concertOf(document).limits.houseShare,
    unit: 'share',
    where: player ? { x: player.x, y: player.y } : null,
    detail: {
      lost: lost.length,
      places: sight.scene.seats.length,
      ...rowsOf(document, lost),
      worstSeat: worstSeat?.label ?? '',
      worstShare: figure.worst.share,
      loss: cover?.loss ?? 0,
      ...hiddenBy(document, sight, figure.player, cover?.record),
    },
  };
}

/** What the worst cover hides by itself; empty when there is none, or nobody loses enough by it alone. */
function hiddenBy(
  document: Document,
  { scene }: SightReport,
  player: string,
  cover: string | undefined,
): Finding['detail'] {
  const target = scene.targets.find(({ id }) => id === player);
  const { seesWell } = concertOf(document).limits;
  const hiding = target && cover !== undefined ? hidingOf(scene, target, cover, seesWell) : null;
  if (!target || cover === undefined || !hiding) return {};
  const { firstRow, lastRow, blocks } = rowsOf(document, hiding.from);
  return {
    coverPart: coverPartOf(document, scene, target, cover),
    part: hiding.part,
    hiddenFrom: hiding.from.length,
    hiddenFirstRow: firstRow,
    hiddenLastRow: lastRow,
    hiddenBlocks: blocks,
  };
}

interface Rows {
  readonly firstRow: string;
  readonly lastRow: string;
  readonly blocks: string;
}

/**
 * Where these places are: the first and the last row while they are all of one block, the blocks' names when they are
 * of several, whose rows may have the same letters. Single places have no row.
 */
function rowsOf(document: Document, places: readonly SeatPoint[]): Rows {
  const inRows = places.filter(({ record }) => document.records.get(record)?.kind === 'seatBlock');
  const blocks = [...new Set(inRows.map(({ record }) => record))];
  if (blocks.length > 1) {
    const names = blocks.map((id) => document.records.get(id)?.name || id);
    return { firstRow: '', lastRow: '', blocks: names.join(', ') };
  }
  const rowOf = (place: SeatPoint | undefined): string => place?.label.split(' ')[0] ?? '';
  return { firstRow: rowOf(inRows[0]), lastRow: rowOf(inRows.at(-1)), blocks: '' };
}
