/** Pianos: case outline, lid, music desk and where the pianist sits. */

import { radians, type Vec3 } from '../geometry/frame.ts';
import type { Millimetres, Piano, Point } from '../document/records.ts';
import { t } from '../words/say.ts';
import { boxBetween, type LocalBox } from './boxes.ts';
import { caseWidthShare, grandOutline } from './pianos/case.ts';
import { COMMON_PRACTICE, finder, FROM_MEMORY, type Model } from './sources.ts';

export type LocalQuad = readonly [Vec3, Vec3, Vec3, Vec3];

/** Local frame: the pianist looks along -y (so the tail of a grand is at -y), +x is his left, the bass end. */
export interface PianoModel extends Model {
  readonly form: 'grand' | 'upright';
  /** From the keyboard's front to the tail (upright: front to back). */
  readonly length: Millimetres;
  readonly width: Millimetres;
  /** Of the case, lid closed. */
  readonly height: Millimetres;
  readonly keyboardHeight: Millimetres;
  readonly outline: readonly Point[];
  /** What the case hides: boxes that fill the outline closely, from its underside to the rim. */
  readonly boxes: readonly LocalBox[];
  /** Music desk, folded up. */
  readonly musicDesk: LocalQuad;
  /** Axis of the pianist's head and shoulders. */
  readonly playerAt: Point;
  readonly lidAngle: Readonly<Record<Piano['lid'], number>>;
}

/** Share of a grand's length from the keyboard that the lid's front flap covers; it lies folded back. */
const FLAP_SHARE = 0.27;
const LID_ANGLES = { closed: 0, half: 18, full: 42 } as const;
const SHOULDERS_BEHIND_KEYS = 330;
const UNDERSIDE = 600;
const RIM = 1015;

export const PIANO_MODELS: readonly PianoModel[] = [
  grand('grand-150', () => t`Baby grand, 150`, 1500, 1470),
  grand('grand-180', () => t`Grand, 180`, 1800, 1500),
  grand('grand-210', () => t`Grand, 210`, 2110, 1510),
  grand('grand-230', () => t`Grand, 230`, 2270, 1530),
  grand('grand-275', () => t`Concert grand, 275`, 2740, 1570),
  upright('upright', () => t`Upright`, { width: 1500, length: 620, height: 1200 }),
  upright('upright-studio', () => t`Studio upright`, { width: 1480, length: 580, height: 1120 }),
  upright('digital-piano', () => t`Digital piano on a stand`, { width: 1380, length: 350, height: 850 }),
];

/** What a piano of an unknown model is taken for. */
export const USUAL_PIANO = grand('grand', () => t`Grand`, 2110, 1510);

export const pianoModel = finder(PIANO_MODELS);

/**
 * The open lid of a grand as two quadrilaterals in one plane, in the piano's frame; empty when it is closed or an upright.
 * The lid is hinged along the spine on the pianist's left and opens to his right.
 */
export function lidQuads(model: PianoModel, lid: Piano['lid']): LocalQuad[] {
  if (model.form === 'upright' || lid === 'closed') return [];
  const { length, width } = model;
  const [front, middle, tail] = [FLAP_SHARE * length, 0.5 * length, length];
  return [
    lidPart(model, lid, { from: front, to: middle, wideFrom: width, wideTo: 0.92 * width }),
    lidPart(model, lid, { from: middle, to: tail, wideFrom: 0.92 * width, wideTo: 0.4 * width }),
  ];
}

interface LidPart {
  /** From the keyboard's front. */
  readonly from: Millimetres;
  readonly to: Millimetres;
  /** How far the lid reaches from its hinge at both ends. */
  readonly wideFrom: Millimetres;
  readonly wideTo: Millimetres;
}

function lidPart(model: PianoModel, lid: Piano['lid'], part: LidPart): LocalQuad {
  const angle = radians(model.lidAngle[lid]);
  const corner = (along: Millimetres, out: Millimetres): Vec3 => ({
    x: model.width / 2 - out * Math.cos(angle),
    y: model.length / 2 - along,
    z: model.height + out * Math.sin(angle),
  });
  return [
    corner(part.from, 0),
    corner(part.to, 0),
    corner(part.to, part.wideTo),
    corner(part.from, part.wideFrom),
  ];
}

function grand(id: string, name: () => string, length: Millimetres, width: Millimetres): PianoModel {
  return {
    id,
    get name() {
      return name();
    },
    form: 'grand',
    length,
    width,
    height: RIM,
    keyboardHeight: 735,
    outline: grandOutline(length, width),
    boxes: grandBoxes(length, width),
    musicDesk: deskAcross({ width: 720, at: length / 2 - 330, low: RIM, height: 250 }),
    playerAt: { x: 0, y: length / 2 + SHOULDERS_BEHIND_KEYS },
    lidAngle: LID_ANGLES,
    source: FROM_MEMORY,
    sourceOf: { outline: COMMON_PRACTICE, playerAt: COMMON_PRACTICE, lidAngle: FROM_MEMORY },
  };
}

/** Slices across the case, each as wide as the outline is at the slice's middle. */
function grandBoxes(length: Millimetres, width: Millimetres): LocalBox[] {
  const slices = 6;
  return Array.from({ length: slices }, (_, slice) => {
    const [from, to] = [(slice * length) / slices, ((slice + 1) * length) / slices];
    const reach = width * caseWidthShare((slice + 0.5) / slices);
    return boxBetween([width / 2, width / 2 - reach], [length / 2 - to, length / 2 - from], [UNDERSIDE, RIM]);
  });
}

interface UprightSize {
  readonly width: Millimetres;
  readonly length: Millimetres;
  readonly height: Millimetres;
}

function upright(id: string, name: () => string, { width, length, height }: UprightSize): PianoModel {
  const [w, d] = [width / 2, length / 2];
  const keys = Math.min(300, length);
  return {
    id,
    get name() {
      return name();
    },
    form: 'upright',
    length,
    width,
    height,
    keyboardHeight: 735,
    outline: [
      { x: -w, y: -d },
      { x: w, y: -d },
      { x: w, y: d },
      { x: -w, y: d },
    ],
    boxes: [
      boxBetween([w, -w], [-d, d - keys], [0, height]),
      boxBetween([w, -w], [d - keys, d], [UNDERSIDE, 780]),
    ].filter((box) => box.depth > 0),
    musicDesk: deskAcross({ width: 620, at: d - keys, low: Math.min(900, height), height: 250 }),
    playerAt: { x: 0, y: d + SHOULDERS_BEHIND_KEYS },
    lidAngle: { closed: 0, half: 0, full: 0 },
    source: FROM_MEMORY,
    sourceOf: { playerAt: COMMON_PRACTICE },
  };
}

interface DeskAcross {
  readonly width: Millimetres;
  /** Along y, of its lower edge. */
  readonly at: Millimetres;
  readonly low: Millimetres;
  readonly height: Millimetres;
}

/** A desk that leans 70 degrees from the horizontal, away from the pianist. */
function deskAcross({ width, at, low, height }: DeskAcross): LocalQuad {
  const lean = radians(70);
  const [back, top] = [at - height * Math.cos(lean), low + height * Math.sin(lean)];
  const half = width / 2;
  return [
    { x: half, y: at, z: low },
    { x: -half, y: at, z: low },
    { x: -half, y: back, z: top },
    { x: half, y: back, z: top },
  ];
}
