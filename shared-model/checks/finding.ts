/** What checks return: data. `sentences.ts` turns the codes into words. */

import type { Point } from '../document/records.ts';

/** `fail`: the director's own limit is missed. `caution`: somebody should look. `note`: worth knowing. */
export type Severity = 'fail' | 'caution' | 'note';

export type Unit = 'mm' | 'share' | 's' | 'count' | 'degrees' | 'minutesOfArc';

export type FindingCode =
  /** A player is seen well from too small a share of the places. Subjects: player, then what covers him most. */
  | 'sight.house'
  /** A grip is out of reach without walking, or cannot be got to at all. Subjects: player, item. */
  | 'reach.far'
  /** The grip takes longer than the rest he has. Subjects: player, item. */
  | 'reach.late'
  /** No hand is free for a grip. Subjects: player, item. */
  | 'reach.noHand'
  /** Two footprints overlap. Subjects: the two items. */
  | 'room.overlap'
  /** Something reaches over the platform's outline, or over the level it stands on. Subjects: item, that level. */
  | 'room.offPlatform'
  /** A player lacks elbow room. Subjects: player, what is in the way. */
  | 'room.elbow'
  /** A player, chair or stand is near an open edge. Subjects: item; the level it stands on, if the edge is of that. */
  | 'room.edge'
  /** Something stands close before a door. Subjects: door, item. */
  | 'room.door'
  /** No route of the asked width from a player to an exit. Subjects: player, what makes it narrow (door, or two things). */
  | 'room.route'
  /** The only way out goes over the edge of a level higher than a step. Subjects: player, level. */
  | 'room.step'
  /** An uncovered cable lies across routes. Subjects: lamp, the first player whose route it is. */
  | 'room.cable'
  /** The platform has no exit. */
  | 'room.noExit'
  /** Somebody uses a wheelchair, and no exit is free of steps. Subjects: all who do. */
  | 'room.noStepFreeExit'
  /** The place of somebody in a wheelchair is on a level that he cannot roll off. Subjects: he, the level. */
  | 'room.wheelchairLevel'
  /** No step-free route of the asked width for a wheelchair. Subjects: its user, what makes it narrow, as above. */
  | 'room.wheelchairRoute'
  /** Too little room to turn a wheelchair. Subjects: its user; the exit if it is there. */
  | 'room.turning'
  /** A covered cable lies across the way of a wheelchair. Subjects: lamp, the first user whose way it is. */
  | 'room.cableRamp'
  /** Pages are seen at a steep angle, or from behind. Subjects: player, stand. */
  | 'reading.angle'
  /** A row of pages is so wide that the head or the body turns across it. Subjects: player, stand. */
  | 'reading.turn'
  /** Staves are printed smaller or larger than librarians ask for. Subjects: player, stand. */
  | 'reading.staff'
  /** Pages are so far away that a space of their staves looks small. Subjects: player, stand. */
  | 'reading.far'
  /** The page plan that is kept breaks rules. Subjects: whom and what the gravest is about. */
  | 'turns.broken'
  /** Two players who must see each other cannot. Subjects: the two, then what is in the way, worst first. */
  | 'facing.blocked'
  /** A player has to turn his body to look at another whom he must see. Subjects: player, partner. */
  | 'facing.turn'
  /** A player faces away from the house by more than a profile. Subjects: player. */
  | 'facing.house';

/** `by`: how much lower, mm; degrees anticlockwise from above for a turn about its own spot. */
export interface ItemChange {
  readonly item: string;
  readonly by: number;
}

/**
 * One change that might clear a finding. `lowerAll`: several desks together, each as far as its stand goes. `flatten`: a
 * desk laid so many degrees flatter. `moveTogether`, `turnTogether`: somebody, who is the first, with the stands that he
 * alone reads from; turned about his spot. `cover`: a cable gets a ramp or a mat.
 */
export type SingleChange =
  | ({ readonly kind: 'lower' } & ItemChange)
  | ({ readonly kind: 'flatten' } & ItemChange)
  | { readonly kind: 'lowerAll'; readonly items: readonly ItemChange[] }
  | { readonly kind: 'move'; readonly item: string; readonly dx: number; readonly dy: number }
  | {
      readonly kind: 'moveTogether';
      readonly items: readonly string[];
      readonly dx: number;
      readonly dy: number;
    }
  | ({ readonly kind: 'turn' } & ItemChange)
  | { readonly kind: 'turnTogether'; readonly items: readonly string[]; readonly by: number }
  | { readonly kind: 'cover'; readonly item: string };

/** `both`: one after the other, where neither helps alone. */
export type RemedyChange =
  SingleChange | { readonly kind: 'both'; readonly first: SingleChange; readonly second: SingleChange };

/** A change that was tried on the document and clears the finding; `after` is what the check measured then. */
export type Remedy = RemedyChange & { readonly after: number };

export interface Finding {
  readonly code: FindingCode;
  readonly severity: Severity;
  readonly subjects: readonly string[];
  readonly measured: number;
  readonly required: number;
  readonly unit: Unit;
  /** Where to look on the plan. */
  readonly where: Point | null;
  /** Further figures that the sentence names. */
  readonly detail: Readonly<Record<string, number | string>>;
}
