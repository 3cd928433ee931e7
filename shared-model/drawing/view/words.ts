/** A picture in words, for those who cannot see it. */

import { labelOf } from '../../document/labels.ts';
import { formatLength } from '../../document/measures.ts';
import type { PlacedRecord, Point } from '../../document/records.ts';
import { degrees } from '../../geometry/frame.ts';
import type { ViewContext } from './context.ts';
import type { Head } from './heads.ts';

/** "View from C 12. From left to right: Clarinet (player 1), Viola (player 2). Head not seen: Piano (player 3)." */
export function describeView(context: ViewContext, heads: readonly Head[]): string {
  const { document, setup, view } = context;
  const listed = (words: string, those: readonly Head[]): string =>
    those.length === 0
      ? ''
      : ` ${words}: ${those.map(({ player }) => labelOf(document, setup, player.id)).join(', ')}.`;
  const seen = heads.filter((head) => head.seen);
  const hidden = heads.filter((head) => !head.seen);
  return `View from ${view.label}.${listed('From left to right', seen)}${listed('Head not seen', hidden)}`;
}

/** "Viola (player 2): 4120 mm away, 12° to the left". */
export function describeSeen(context: ViewContext, subject: string): string {
  const { document, setup, units, items, camera } = context;
  const label = labelOf(document, setup, subject);
  const record = items.find(({ id }) => id === subject);
  if (!record) return label;
  const away = Math.hypot(record.x - camera.eye.x, record.y - camera.eye.y);
  return `${label}: ${formatLength(away, units)} away, ${sideOf(context, record)}${sizeNote(record)}`;
}

/** Where anyone may play, the sight check lets the tallest hide what is behind him, and so does the picture. */
function sizeNote(record: PlacedRecord): string {
  const isAnyone = record.kind === 'player' && record.person.size.by === 'anyone';
  return isAnyone ? ', drawn as the tallest who may play' : '';
}

function sideOf(context: ViewContext, spot: Point): string {
  const bearing = Math.round(bearingTo(context, spot));
  if (bearing === 0) return 'straight ahead';
  return `${Math.abs(bearing)}° to the ${bearing < 0 ? 'left' : 'right'}`;
}

/** Degrees from the middle of the view, seen from above, to the right positive. */
function bearingTo({ camera }: ViewContext, { x, y }: Point): number {
  const { eye, right } = camera;
  const [dx, dy] = [x - eye.x, y - eye.y];
  return degrees(Math.atan2(dx * right.x + dy * right.y, dy * right.x - dx * right.y));
}
