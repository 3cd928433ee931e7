/** How far the hands of the chosen player get, at the height of what he has to get to. */

import { reachEnvelope } from '#model/checks/reach/envelope.ts';
import type { Manner, Report } from '#model/checks/report.ts';
import { find, type Document } from '#model/document/document.ts';
import { asId, type Id } from '#model/document/ids.ts';
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
 * At the height of the hardest of his grips, or of the one on `item`; where he has none, or gets down to it only by
 * stooping, at the height of a desk. Null: there is no such player, or he has no hand free.
 */
export function envelopesOf(
  document: Document,
  { setup, reach }: Pick<Report, 'setup' | 'reach'>,
  player: string,
  item: string | null,
): Envelopes | null {
  const id = asId<'player'>(player);
  // Whatever is selected may be asked about.
  if (find(document, id)?.kind !== 'player') return null;
  const own = reach.filter(({ grip }) => grip.player === player);
  const asked = own.find(({ grip }) => grip.item === item);
  const [hardest] = own.toSorted((a, b) => EFFORT.indexOf(b.manner) - EFFORT.indexOf(a.manner));
  const wanted = (asked ?? hardest)?.grip.z ?? USUAL_HEIGHT;
  const at = (height: number): Envelopes => ({ height, rings: ringsAt(document, { setup, id }, height) });
  return [wanted, USUAL_HEIGHT].map(at).find(({ rings }) => rings.length > 0) ?? null;
}

function ringsAt(
  document: Document,
  { setup, id }: { readonly setup: string; readonly id: Id<'player'> },
  height: number,
): Envelope[] {
  const hands = reachEnvelope(document, asId<'setup'>(setup), id, height);
  const rings = hands.flatMap(({ arm, lean }) => [
    { outline: lean, leaning: true },
    { outline: arm, leaning: false },
  ]);
  return rings.filter(({ outline }) => outline.length > 0);
}
