/** A picture in words, for those who cannot see it. */

import { labelOf } from '../../document/labels.ts';
import { formatLength } from '../../document/measures.ts';
import type { PlacedRecord, Point } from '../../document/records.ts';
import { degrees } from '../../geometry/frame.ts';
import { t } from '../../words/say.ts';
import type { ViewContext } from './context.ts';
import type { Head } from './heads.ts';

/** "View from C 12. From left to right: Clarinet (player 1), Viola (player 2). Head not seen: Piano (player 3)." */
export function describeView(context: ViewContext, heads: readonly Head[]): string {
  const { document, setup, view } = context;
  const listed = (those: readonly Head[]): string =>
    those.map(({ player }) => labelOf(document, setup, player.id)).join(', ');
  const seen = listed(heads.filter((head) => head.seen));
  const hidden = listed(heads.filter((head) => !head.seen));
  return [
    t`View from ${view.label}.`,
    ...(seen === '' ? [] : [t`From left to right: ${seen}.`]),
    ...(hidden === '' ? [] : [t`Head not seen: ${hidden}.`]),
  ].join(' ');
}

/** "Viola (player 2): 4120 mm away, 12° to the left". */
export function describeSeen(context: ViewContext, subject: string): string {
  const { document, setup, units, items, camera } = context;
  const label = labelOf(document, setup, subject);
  const record = items.find(({ id }) => id === subject);
  if (!record) return label;
  const away = Math.hypot(record.x - camera.eye.x, record.y - camera.eye.y);
  const told = [t`${formatLength(away, units)} away`, sideOf(context, record), ...sizeNote(record)];
  return `${label}: ${told.join(', ')}`;
}

/** Where anyone may play, the sight check lets the tallest hide what is behind him, and so does the picture. */
function sizeNote(record: PlacedRecord): string[] {
  const isAnyone = record.kind === 'player' && record.person.size.by === 'anyone';
  return isAnyone ? [t`drawn as the tallest who may play`] : [];
}

function sideOf(context: ViewContext, spot: Point): string {
  const bearing = Math.round(bearingTo(context, spot));
  if (bearing === 0) return t`straight ahead`;
  return bearing < 0 ? t`${-bearing}° to the left` : t`${bearing}° to the right`;
}

/** Degrees from the middle of the view, seen from above, to the right positive. */
function bearingTo({ camera }: ViewContext, { x, y }: Point): number {
  const { eye, right } = camera;
  const [dx, dy] = [x - eye.x, y - eye.y];
  return degrees(Math.atan2(dx * right.x + dy * right.y, dy * right.x - dx * right.y));
}
