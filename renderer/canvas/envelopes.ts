/** How far the hands of the chosen player get, at the height of what he has to get to. */

import { reachEnvelope } from '#model/checks/reach/envelope.ts';
import type { Manner, Report } from '#model/checks/report.ts';
import { find, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { Id } from '#model/document/ids.ts';
import type { Polygon } from '#model/geometry/polygon.ts';

export interface Envelope {
  readonly outline: Polygon;
  /** Whether he has to lean to get to its edge. */
  readonly leaning: boolean;
}

export interface Envelopes {
  readonly rings: readonly Envelope[];
  /** Above the platform's floor, mm. */
  readonly height: number;
}

/** Music lies, and hands are held, at about this height. Common practice, no source. */
const USUAL_HEIGHT = 900;

/** From the easiest to the hardest. */
const EFFORT: readonly Manner[] = ['reach', 'lean', 'step', 'walk', 'none'];

/**
 * At the height of the hardest of his grips, or of the one on `item`; where he has none, at the height of a desk. Null:
 * there is no such player, or no hand of his is free to get there.
 */
export function envelopesOf(
  document: Document,
  { setup, reach }: Pick<Report, 'setup' | 'reach'>,
  player: string,
  item: string | null,
): Envelopes | null {
  const id = asId<'player'>(player);
  if (!find(document, id)) return null;
  const own = reach.filter(({ grip }) => grip.player === player);
  const asked = own.find(({ grip }) => grip.item === item);
  const [hardest] = own.toSorted((a, b) => EFFORT.indexOf(b.manner) - EFFORT.indexOf(a.manner));
  const height = (asked ?? hardest)?.grip.z ?? USUAL_HEIGHT;
  const rings = reachEnvelope(document, setup as Id<'setup'>, id, height).flatMap(({ arm, lean }) => [
    { outline: lean, leaning: true },
    { outline: arm, leaning: false },
  ]);
  const shown = rings.filter(({ outline }) => outline.length > 0);
  return shown.length === 0 ? null : { rings: shown, height };
}
