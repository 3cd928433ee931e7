/** Bodies: what a player's size says about the heights and lengths that the checks need. */

import type { BodySize, Millimetres, Person, Population } from '../document/records.ts';
import { ARM_LENGTH_ENDS, statureAt } from './percentiles.ts';
import { ON_STATURE, predict, type Measure } from './survey.ts';

/** All in mm. Heights are above the floor that the player stands or sits on, shoes included. */
export interface Body {
  /** Barefoot. */
  readonly stature: Millimetres;
  readonly crown: Millimetres;
  readonly eyeHeight: Millimetres;
  /** Of the shoulder joints (acromion). */
  readonly shoulderHeight: Millimetres;
  readonly waistHeight: Millimetres;
  /** Over both upper arms (bideltoid). */
  readonly shoulderBreadth: Millimetres;
  /** Between the shoulder joints. */
  readonly biacromialBreadth: Millimetres;
  /** Over both elbows, arms bent (forearm to forearm). */
  readonly elbowBreadth: Millimetres;
  /** Shoulder joint to fingertip. */
  readonly armLength: Millimetres;
  /** Standard deviation of arms about what stature predicts; 0 when measured, or when it is a percentile of arms. */
  readonly armResidual: Millimetres;
  readonly headBreadth: Millimetres;
  readonly headLength: Millimetres;
}

export interface Bodies {
  readonly small: Body;
  readonly tall: Body;
}

/** Shares of the survey that "anyone" reaches to at the small and the tall end. */
export const ANYONE = { small: 5, tall: 95 } as const;

/**
 * The smallest and the tallest who may play; equal unless the size is "anyone".
 *
 * A percentile is one of stature, and the mean body of that stature follows. "Anyone" spans P5 to P95; his arms are
 * the P5 and P95 of arms, because somebody of average height may have short ones.
 * `chairHeight`: mm above the floor, null when he stands.
 */
export function bodies(person: Person, chairHeight: Millimetres | null): Bodies {
  const { population, size } = person;
  if (size.by !== 'anyone') {
    const body = bodyOf(person, statureOf(population, size), chairHeight);
    return { small: body, tall: body };
  }
  const [shortArm, longArm] = ARM_LENGTH_ENDS[population];
  return {
    small: withArm(person, bodyOf(person, statureAt(population, ANYONE.small), chairHeight), shortArm),
    tall: withArm(person, bodyOf(person, statureAt(population, ANYONE.tall), chairHeight), longArm),
  };
}

function statureOf(population: Population, size: Exclude<BodySize, { by: 'anyone' }>): Millimetres {
  return size.by === 'stature' ? size.stature : statureAt(population, size.percentile);
}

function withArm(person: Person, body: Body, armLength: Millimetres): Body {
  return person.measured.armLength === null ? { ...body, armLength, armResidual: 0 } : body;
}

function bodyOf(person: Person, stature: Millimetres, chairHeight: Millimetres | null): Body {
  const { population, measured } = person;
  const mean = (measure: Measure): Millimetres => predict(measure, population, stature);
  const heights = chairHeight === null ? standing(mean, stature, person.shoes) : seated(mean, chairHeight);
  const eyeHeight = measured.eyeHeight ?? heights.eyeHeight;
  return {
    stature,
    ...heights,
    eyeHeight,
    crown: heights.crown + (eyeHeight - heights.eyeHeight),
    shoulderHeight: measured.shoulderHeight ?? heights.shoulderHeight,
    shoulderBreadth: mean('shoulderBreadth'),
    biacromialBreadth: mean('biacromialBreadth'),
    elbowBreadth: mean('elbowBreadth'),
    armLength: measured.armLength ?? mean('armLength'),
    armResidual: measured.armLength === null ? ON_STATURE.armLength[population].residual : 0,
    headBreadth: mean('headBreadth'),
    headLength: mean('headLength'),
  };
}

type Heights = Pick<Body, 'crown' | 'eyeHeight' | 'shoulderHeight' | 'waistHeight'>;
type Mean = (measure: Measure) => Millimetres;

function standing(mean: Mean, stature: Millimetres, shoes: Millimetres): Heights {
  return {
    crown: stature + shoes,
    eyeHeight: mean('standingEyeHeight') + shoes,
    shoulderHeight: mean('shoulderHeight') + shoes,
    waistHeight: mean('waistHeight') + shoes,
  };
}

/** Seated upright: shoes lift the feet, not the seat. */
function seated(mean: Mean, chairHeight: Millimetres): Heights {
  return {
    crown: mean('sittingHeight') + chairHeight,
    eyeHeight: mean('sittingEyeHeight') + chairHeight,
    shoulderHeight: mean('sittingShoulderHeight') + chairHeight,
    waistHeight: mean('sittingWaistHeight') + chairHeight,
  };
}
