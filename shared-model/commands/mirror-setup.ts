/** A whole setup on the other side of the centre line, and what of it has no mirror image. */

import { outlineOf } from '../catalogue/outlines.ts';
import { placedInSetup, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { PlacedRecord } from '../document/records.ts';
import { depthInPolygon, type Polygon } from '../geometry/polygon.ts';
import { msgid, ngettext, t } from '../words/say.ts';
import { mirror } from './arrange-items.ts';
import { refuse, type Proposal, type Refusal } from './command.ts';
import { theRecord } from './targets.ts';
import { nameOf } from './words.ts';

export interface MirrorSetup {
  readonly setup: Id<'setup'>;
}

export interface Mirroring extends Proposal {
  /** What keeps its build although everything round it is mirrored: a keyboard's lid, the low end of a marimba. */
  readonly asBuilt: readonly PlacedRecord[];
  /** What stays for the whole concert, and so stays where it is. */
  readonly stays: readonly PlacedRecord[];
}

/** Things are put on the other side, with their facing; what is built one way round stays built so. */
export function mirrorSetup(document: Document, { setup }: MirrorSetup): Mirroring | Refusal {
  const target = theRecord(document, setup, 'setup');
  if (!target.ok) return target;
  const placed = placedInSetup(document, setup);
  const own = placed.filter((record) => record.setup === setup);
  if (own.length === 0) return refuse(t`There is nothing in this setup that could be mirrored.`);
  const outcome = mirror(document, { ids: own.map(({ id }) => id) });
  if (!outcome.ok) return outcome;
  const name = nameOf(document, target.record);
  return {
    ...outcome,
    label: t`mirror ${name}`,
    asBuilt: own.filter(isHanded),
    stays: placed.filter((record) => record.setup === null),
  };
}

/** "Grand (piano 1): built as it is, so its lid opens to the other side now." */
export function mirroringNotes(document: Document, { asBuilt, stays }: Mirroring): string[] {
  return [
    ...asBuilt.map((record) => handedWords(record.kind, nameOf(document, record))),
    ...(stays.length > 0 ? [stayingWords(stays.length)] : []),
  ];
}

function stayingWords(count: number): string {
  return ngettext(
    msgid`${count} thing stays for the whole concert, and so was not mirrored.`,
    `${count} things stay for the whole concert, and so were not mirrored.`,
    count,
  );
}

function handedWords(kind: PlacedRecord['kind'], name: string): string {
  switch (kind) {
    case 'piano':
      return t`${name}: cannot be mirrored: its case and its lid are built as they are, so the lid opens to the other side of the platform.`;
    case 'largeInstrument':
      return t`${name}: cannot be mirrored: its low end stays at the same hand of its player.`;
    case 'shape':
      return t`${name}: its outline was turned over: see whether it can stand so.`;
    default:
      return t`${name}: is built one way round.`;
  }
}

const SAME_OUTLINE = 1;

/** A thing whose outline is no mirror image of itself, about the way that it looks. */
function isHanded(record: PlacedRecord): boolean {
  if (record.kind !== 'piano' && record.kind !== 'largeInstrument' && record.kind !== 'shape') return false;
  const straight = { ...record, x: 0, y: 0, facing: 0 };
  const outline: Polygon = outlineOf(straight);
  return outline.some(({ x, y }) => Math.abs(depthInPolygon({ x: -x, y }, outline)) > SAME_OUTLINE);
}
