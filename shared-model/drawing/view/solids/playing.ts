/** What a player does: where his hands are, and the instrument in them as a plain hint of its shape. */

import { instrumentModel, type HeldBox, type InstrumentModel } from '../../../catalogue/instruments.ts';
import { largeInstrumentModel } from '../../../catalogue/large-instruments.ts';
import { pianoModel, USUAL_PIANO } from '../../../catalogue/pianos.ts';
import type { Player } from '../../../document/records.ts';
import type { Vec3 } from '../../../geometry/frame.ts';
import { isBars, isDrums } from '../../plan/large.ts';
import type { ViewContext } from '../context.ts';
import { limb, type Part, type Place } from '../mesh.ts';
import { between } from '../vectors.ts';
import type { Hands } from './arms.ts';
import { plate, roundedOutline } from './plates.ts';
import type { Build } from './trunk.ts';

export interface Playing {
  readonly hands: Hands;
  readonly parts: (place: Place) => Part[];
}

/** What is in his hands; else what he stands or sits at; else his hands are at rest. */
export function playingOf(context: ViewContext, player: Player, build: Build): Playing {
  const held = context.instruments.find(
    (instrument) => instrument.player === player.id && instrument.support === null,
  );
  const model = held && instrumentModel(held.model);
  if (model) return holding(context, build, model);
  return atKeysOrBars(context, player, build) ?? atRest(build);
}

const at = (x: number, y: number, z: number): Vec3 => ({ x, y, z });

function atRest({ body, seat }: Build): Playing {
  const side = body.shoulderBreadth / 2 + 30;
  const hanging = body.shoulderHeight - 50 - 0.95 * (body.armLength - 90);
  const hands: Hands =
    seat === null
      ? {
          left: at(side, -40, hanging),
          right: at(-side, -40, hanging),
          elbows: 'down',
        }
      : { left: at(110, -280, seat + 170), right: at(-110, -280, seat + 170), elbows: 'down' };
  return { hands, parts: () => [] };
}

function holding(context: ViewContext, build: Build, model: InstrumentModel): Playing {
  switch (model.family) {
    case 'woodwind':
      return isTransverse(model) ? transverse(context, build, model) : straight(context, build, model);
    case 'brass':
      return model.held ? boxed(context, build, model.held) : flared(context, build, model);
    case 'bowed':
      return model.held ? onSpike(context, build, model.held) : onShoulder(context, build, model);
    case 'plucked':
      return fretted(context, build, model);
    case 'keyboard':
      return model.held ? boxed(context, build, model.held) : straight(context, build, model);
    case 'percussion':
      return handPercussion(context, build);
    case 'voice':
      return model.playing === 'none' ? atRest(build) : withFolder(context, build);
  }
}

/** Flutes want far more room on the right than on the left. */
function isTransverse({ elbowRoom }: InstrumentModel): boolean {
  return elbowRoom.right >= elbowRoom.left + 100 && elbowRoom.right >= 250;
}

function transverse({ palette }: ViewContext, { mouth }: Build, { elbowRoom }: InstrumentModel): Playing {
  const near = at(90, mouth.y - 18, mouth.z + 4);
  const far = at(-elbowRoom.right - 180, mouth.y + 30, mouth.z - 70);
  return {
    hands: { left: between(near, far, 0.32), right: between(near, far, 0.68), elbows: 'down' },
    parts: (place) => [rod(place, [near, far], 13, palette.instrument)],
  };
}

function straight({ palette }: ViewContext, build: Build, model: InstrumentModel): Playing {
  const { mouth, body } = build;
  const end = at(
    0,
    -model.ahead,
    Math.max(120, Math.min(mouth.z - 420, body.waistHeight - model.showsDownTo)),
  );
  const bell = model.showsDownTo >= 250 ? [22, 60] : [13, 30];
  return {
    hands: { left: between(mouth, end, 0.38), right: between(mouth, end, 0.68), elbows: 'down' },
    parts: (place) => [
      rod(place, [mouth, between(mouth, end, 0.86)], bell[0] ?? 13, palette.instrument),
      rod(place, [between(mouth, end, 0.84), end], [bell[0] ?? 13, bell[1] ?? 30], palette.instrument),
    ],
  };
}

function flared({ palette }: ViewContext, { mouth }: Build, { ahead }: InstrumentModel): Playing {
  const end = at(0, -ahead, mouth.z - 60 - ahead * 0.08);
  return {
    hands: { left: between(mouth, end, 0.42), right: between(mouth, end, 0.55), elbows: 'down' },
    parts: (place) => [
      rod(place, [mouth, between(mouth, end, 0.8)], 13, palette.instrument),
      rod(place, [between(mouth, end, 0.36), between(mouth, end, 0.62)], 42, palette.instrument),
      rod(place, [between(mouth, end, 0.78), end], [15, 62], palette.instrument),
    ],
  };
}

/** Over the left collar bone, with the bow across it. */
function onShoulder(
  { palette, tints }: ViewContext,
  { body, mouth }: Build,
  { ahead }: InstrumentModel,
): Playing {
  const chin = at(62, -75, body.shoulderHeight + 28);
  const scroll = at(62 + ahead * 0.62, -75 - ahead * 0.95, body.shoulderHeight - 60);
  const waist = between(chin, scroll, 0.36);
  const string = between(chin, scroll, 0.5);
  const frog = at(-250, -270, mouth.z - 190);
  const tip = between(frog, at(string.x, string.y, string.z + 34), 1.55);
  return {
    hands: { left: between(chin, scroll, 0.93), right: frog, elbows: 'bowing' },
    parts: (place) => [
      plate(place, {
        middle: waist,
        along: at(0.5, -0.8, -0.14),
        across: at(-0.84, -0.5, -0.42),
        outline: roundedOutline(355, 205, 0.42),
        thickness: 42,
        fill: palette.instrument,
      }),
      rod(place, [between(chin, scroll, 0.6), scroll], 15, tints.hair),
      rod(place, [frog, tip], 6, palette.wood),
    ],
  };
}

function onSpike(context: ViewContext, build: Build, box: HeldBox): Playing {
  const { palette, tints } = context;
  const floor = heightOf(box, build);
  const [low, high] = [floor + box.bottom, floor + box.top];
  const middle = at(box.left, -box.ahead, (low + high) / 2);
  const neckEnd = at(box.left + 60, -90, Math.max(high + 120, build.mouth.z - 30));
  const bridge = at(box.left, -box.ahead - box.depth / 2 - 30, low + (high - low) * 0.42);
  const frog = at(-400, bridge.y + 60, bridge.z - 60);
  return {
    hands: {
      left: between(at(box.left, -box.ahead - 40, high), neckEnd, 0.72),
      right: frog,
      elbows: 'out',
    },
    parts: (place) => [
      rod(place, [at(box.left, -box.ahead - 40, 0), at(box.left, -box.ahead - 20, low + 40)], 7, tints.metal),
      plate(place, {
        middle,
        along: at(0, 0.1, 1),
        across: at(1, 0, 0),
        outline: roundedOutline(high - low, box.width, 0.3),
        thickness: box.depth,
        fill: palette.instrument,
      }),
      rod(place, [at(box.left, -box.ahead - 40, high - 160), neckEnd], 20, tints.hair),
      rod(place, [frog, between(frog, bridge, 1.75)], 7, palette.wood),
    ],
  };
}

function fretted({ palette, tints }: ViewContext, build: Build, model: InstrumentModel): Playing {
  const waist = build.body.waistHeight;
  const box = model.held;
  const [width, tall] = box ? [box.width, box.top - box.bottom] : [330, 260];
  const middle = at(-60, -(box?.ahead ?? model.ahead * 0.7), waist + (box ? (box.top + box.bottom) / 2 : 60));
  const head = at(240 + model.elbowRoom.left, middle.y + 20, middle.z + 210);
  return {
    hands: {
      left: between(middle, head, 0.78),
      right: at(-70, middle.y - 70, middle.z + 30),
      elbows: 'down',
    },
    parts: (place) => [
      rod(place, [between(middle, head, 0.2), head], 24, tints.hair),
      plate(place, {
        middle,
        along: at(1, 0, 0.28),
        across: at(-0.28, 0, 1),
        outline: roundedOutline(width, tall, 0.3),
        thickness: box?.depth ?? 90,
        fill: palette.instrument,
      }),
    ],
  };
}

/** Tubas and accordions fill the box that the sight check counts. */
function boxed({ palette }: ViewContext, build: Build, box: HeldBox): Playing {
  const floor = heightOf(box, build);
  const middle = at(box.left, -box.ahead, floor + (box.bottom + box.top) / 2);
  const side = box.width / 2 + 20;
  return {
    hands: {
      left: at(box.left + side, middle.y, middle.z),
      right: at(box.left - side, middle.y, middle.z),
      elbows: 'out',
    },
    parts: (place) => [
      plate(place, {
        middle,
        along: at(0, 0, 1),
        across: at(1, 0, 0),
        outline: roundedOutline(box.top - box.bottom, box.width, 0.22),
        thickness: box.depth,
        fill: palette.instrument,
      }),
    ],
  };
}

function handPercussion({ palette }: ViewContext, { body }: Build): Playing {
  const right = at(-130, -300, body.shoulderHeight - 190);
  const left = at(150, -290, body.shoulderHeight - 250);
  return {
    hands: { left, right, elbows: 'down' },
    parts: (place) => [
      rod(place, [at(-130, -330, right.z + 40), at(-110, -345, right.z + 130)], 34, palette.instrument),
    ],
  };
}

function withFolder({ tints }: ViewContext, { body }: Build): Playing {
  const left = at(40, -330, body.shoulderHeight - 260);
  return {
    hands: { left, right: at(-120, -310, body.shoulderHeight - 250), elbows: 'down' },
    parts: (place) => [
      plate(place, {
        middle: at(-20, -350, body.shoulderHeight - 190),
        along: at(0, -0.5, 0.86),
        across: at(1, 0, 0),
        outline: roundedOutline(240, 340, 0),
        thickness: 18,
        fill: tints.desk,
      }),
    ],
  };
}

/** Hands on a keyboard, or mallets over bars and drums. */
function atKeysOrBars(context: ViewContext, player: Player, { body }: Build): Playing | null {
  for (const item of context.items) {
    if (item.kind === 'piano' && item.player === player.id) {
      const z = (pianoModel(item.model) ?? USUAL_PIANO).keyboardHeight + 45;
      return keysAt(z);
    }
    if (item.kind === 'largeInstrument' && item.player === player.id) {
      const model = largeInstrumentModel(item.model);
      const top = model?.height ?? 900;
      if (!model || isDrums(model) || isBars(model)) {
        return withMallets(context, Math.min(top + 160, body.shoulderHeight - 120), top + 25);
      }
      return keysAt(Math.min(top - 60, body.waistHeight + 120));
    }
  }
  return null;
}

function keysAt(z: number): Playing {
  return { hands: { left: at(210, -400, z), right: at(-210, -400, z), elbows: 'down' }, parts: () => [] };
}

function withMallets({ tints, palette }: ViewContext, hands: number, heads: number): Playing {
  const stick = (side: number): [Vec3, Vec3] => [at(side * 190, -330, hands), at(side * 130, -640, heads)];
  return {
    hands: { left: stick(1)[0], right: stick(-1)[0], elbows: 'down' },
    parts: (place) =>
      [1, -1].flatMap((side) => {
        const [hand, head] = stick(side);
        return [
          rod(place, [hand, head], 6, palette.wood),
          rod(place, [head, { ...head, z: head.z + 2 }], 20, tints.hair),
        ];
      }),
  };
}

function heightOf(box: HeldBox, { body }: Build): number {
  return box.from === 'floor' ? 0 : body.waistHeight;
}

function rod(
  place: Place,
  [from, to]: readonly [Vec3, Vec3],
  radii: number | readonly [number, number],
  fill: string,
): Part {
  return limb(place(from.x, from.y, from.z), place(to.x, to.y, to.z), radii, fill);
}
