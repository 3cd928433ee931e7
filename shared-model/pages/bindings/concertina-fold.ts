/**
 * Which way each joint of a concertina bends, seen from above with the reader below. The pages that are open lie flat; those
 * still to come lie zig-zag behind the last of them, those done with behind the first. Paper behind an open page is reached
 * by bending outward (blank sides together), and from there on inward and outward take turns. Counted from the right an
 * open row of an odd number of pages begins the other way than counted from the left: there a joint bends first one way and
 * then the other. (`tests/oracles/fold-simulation/concertina.ts` folds it.)
 */

/** `inward`: printed sides lie on each other; `outward`: blank sides do. */
export type Bend = 'inward' | 'outward' | 'flat';

/** `both`: outward in some states, inward in others. `flat`: never bent. */
export type ConcertinaJoint = Bend | 'both';

export interface ConcertinaShape {
  /** Pages that lie open at a time. */
  readonly shown: number;
  readonly leaves: number;
}

/** The joint between pages `joint` and `joint + 1`, counted from 1, in a state. */
export function bendIn({ shown }: ConcertinaShape, joint: number, state: number): Bend {
  const [firstOpen, lastOpen] = [2 * state + 1, 2 * state + shown];
  if (joint >= lastOpen) return alternate(joint - lastOpen);
  return joint < firstOpen ? alternate(firstOpen - 1 - joint) : 'flat';
}

function alternate(fromOpenPage: number): Bend {
  return fromOpenPage % 2 === 0 ? 'outward' : 'inward';
}

/** What a joint has to do over all states. */
export function concertinaJoint(shape: ConcertinaShape, joint: number): ConcertinaJoint {
  const bends = Array.from({ length: shape.leaves + 1 }, (_, state) => bendIn(shape, joint, state));
  const [inward, outward] = [bends.includes('inward'), bends.includes('outward')];
  if (inward && outward) return 'both';
  return inward ? 'inward' : outward ? 'outward' : 'flat';
}
