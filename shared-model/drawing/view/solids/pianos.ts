/** Pianos: case, keys, music desk, and the lid as far as it is open. */

import { lidQuads, pianoModel, USUAL_PIANO, type PianoModel } from '../../../catalogue/pianos.ts';
import type { LocalBox } from '../../../catalogue/boxes.ts';
import { rectangle } from '../../../catalogue/shapes.ts';
import type { Piano } from '../../../document/records.ts';
import type { Vec2, Vec3 } from '../../../geometry/frame.ts';
import { WEIGHT } from '../../style.ts';
import { floorUnder, placeOn, sizeInPicture, type ViewContext } from '../context.ts';
import { allOver, limb, prism, sheet, type Marks, type Part, type Place, type Solid } from '../mesh.ts';

export function pianoSolid(context: ViewContext, piano: Piano): Solid {
  const place = placeOn(piano, floorUnder(context, piano));
  const model = pianoModel(piano.model) ?? USUAL_PIANO;
  const { palette, tints } = context;
  const put = ({ x, y, z }: Vec3): Vec3 => place(x, y, z);
  const lids = lidQuads(model, piano.lid).map((quad) => sheet(quad.map(put), { fill: tints.lid }));
  return {
    subject: piano.id,
    parts: [
      ...(model.form === 'grand' ? grandParts(context, model, place) : uprightParts(context, model, place)),
      sheet(model.musicDesk.map(put), { fill: palette.wood }),
      ...lids,
    ],
  };
}

/** From the front of the keys to the fallboard behind them. */
const KEYBED = 230;
const BED_HEIGHT = 130;
const LEG = 60;

/** The case behind the keyboard at full height, the keyboard before it lower, three legs. */
function grandParts(context: ViewContext, model: PianoModel, place: Place): Part[] {
  const { palette, tints } = context;
  const { length, width, keyboardHeight: keys } = model;
  const fall = length / 2 - KEYBED;
  const underside = model.boxes[0]?.bottom ?? 0;
  const body = [
    { x: width / 2, y: fall },
    { x: -width / 2, y: fall },
    ...model.outline.filter(({ y }) => y < fall - 1),
  ];
  const wood = { top: tints.lid, side: palette.wood, bottom: palette.wood };
  const feet: Vec2[] = [
    { x: width / 2 - 150, y: fall - 60 },
    { x: 150 - width / 2, y: fall - 60 },
    { x: width / 2 - 0.3 * width, y: -length / 2 + 0.16 * length },
  ];
  const legs = feet.map(({ x, y }) =>
    limb(place(x, y, underside), place(x, y, 0), [LEG, LEG * 0.6], palette.wood),
  );
  return [
    ...legs,
    prism(body, [underside, model.height], place, wood),
    ...keybed(context, { width, fall, front: length / 2, top: keys }, place),
  ];
}

function uprightParts(context: ViewContext, model: PianoModel, place: Place): Part[] {
  const { palette } = context;
  const [back, bed] = model.boxes;
  const block = ({ x, y, width, depth, bottom, top }: LocalBox): Part => {
    const corners = rectangle(width, depth).map((corner) => ({ x: x + corner.x, y: y + corner.y }));
    return prism(corners, [bottom, top], place, allOver(palette.wood));
  };
  if (!back) return [];
  if (!bed) return [block(back)];
  const fall = bed.y - bed.depth / 2;
  return [
    block(back),
    ...keybed(context, { width: model.width, fall, front: bed.y + bed.depth / 2, top: bed.top }, place),
  ];
}

interface Keybed {
  readonly width: number;
  /** Along y, of the fallboard and of the front edge. */
  readonly fall: number;
  readonly front: number;
  readonly top: number;
}

const CHEEK = 130;

function keybed(context: ViewContext, { width, fall, front, top }: Keybed, place: Place): Part[] {
  const { palette } = context;
  const strip = (from: number, to: number): Vec2[] => [
    { x: from, y: fall },
    { x: to, y: fall },
    { x: to, y: front },
    { x: from, y: front },
  ];
  const half = width / 2;
  const marks = keyMarks(context, { half: half - CHEEK, fall, front: front - 45, top }, place);
  return [
    prism(strip(-half, half), [top - BED_HEIGHT, top], place, { ...allOver(palette.wood), marks }),
    ...[1, -1].map((side) =>
      prism(strip(side * half, side * (half - CHEEK)), [top, top + 110], place, allOver(palette.wood)),
    ),
  ];
}

interface KeysAt {
  readonly half: number;
  readonly fall: number;
  readonly front: number;
  readonly top: number;
}

const WHITE_KEYS = 52;
const LEAST_KEY = 0.35;
/** Of the white keys from the left, those with a black key on their right: all but every E and B. */
const hasBlack = (white: number): boolean => ![1, 4].includes(white % 7) && white < WHITE_KEYS - 1;

function keyMarks(context: ViewContext, { half, fall, front, top }: KeysAt, place: Place): Marks[] {
  const { palette, tints } = context;
  // The player looks along -y, so his left is at +x.
  const at = (share: number, y: number): Vec3 => place(half - 2 * half * share, y, top);
  const white: Marks = {
    rings: [[at(0, front), at(1, front), at(1, fall), at(0, fall)]],
    fill: tints.keys,
  };
  if (sizeInPicture(context, (2 * half) / WHITE_KEYS, at(0.5, front)) < LEAST_KEY) return [white];
  const joints = Array.from({ length: WHITE_KEYS - 1 }, (_, key) => {
    const share = (key + 1) / WHITE_KEYS;
    return [at(share, front), at(share, fall)];
  });
  const blacks = Array.from({ length: WHITE_KEYS }, (_, key) => key).filter(hasBlack);
  const black = blacks.map((key) => {
    const [from, to] = [(key + 0.7) / WHITE_KEYS, (key + 1.3) / WHITE_KEYS];
    const middle = fall + (front - fall) * 0.62;
    return [at(from, middle), at(to, middle), at(to, fall), at(from, fall)];
  });
  return [
    white,
    { rings: joints, stroke: { colour: palette.faint, width: WEIGHT.hair / 2 } },
    { rings: black, fill: palette.ink },
  ];
}
