/** Builds the scene of one setup again and again, the house only once: no remedy changes that. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { buildScene } from '../scene/build-scene.ts';
import type { Scene } from '../scene.ts';

export interface Scenes {
  readonly base: Scene;
  /** The same as buildScene gives for a document with the same house. */
  of(changed: Document): Scene;
}

export function scenesOf(document: Document, setup: Id<'setup'>): Scenes {
  const base = buildScene(document, setup);
  const { seats } = base;
  const house = base.occluders.filter(({ record }) => isHouse(document, record));
  return {
    base,
    of(changed) {
      const { targets, occluders } = buildScene(withoutHouse(changed), setup);
      return { seats, targets, occluders: [...occluders, ...house] };
    },
  };
}

function withoutHouse(document: Document): Document {
  return { records: new Map([...document.records].filter(([id]) => !isHouse(document, id))) };
}

function isHouse({ records }: Document, id: string): boolean {
  const kind = records.get(id)?.kind;
  return kind === 'seatBlock' || kind === 'place';
}
