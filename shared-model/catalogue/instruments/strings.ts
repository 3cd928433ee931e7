/** Strings, bowed and plucked. Bowing room: the right elbow and the bow swing out sideways, downstage of the bridge. */

import type { HeldBox } from './model.ts';
import { rowsOf } from './row.ts';

const bowed = rowsOf('bowed');
const plucked = rowsOf('plucked');

const celloBox: HeldBox = {
  from: 'floor',
  bottom: 250,
  top: 1150,
  ahead: 250,
  left: 50,
  width: 440,
  depth: 230,
};

const bassBox: HeldBox = {
  from: 'floor',
  bottom: 150,
  top: 1450,
  ahead: 320,
  left: 120,
  width: 670,
  depth: 350,
};

export const BOWED = [
  // The left hand keeps the instrument; the right turns with the bow between the fingers.
  bowed('violin', { free: 'right', room: [200, 350], ahead: 450 }),
  bowed('viola', { free: 'right', room: [220, 380], ahead: 500 }),
  bowed('viol-treble', { free: 'left', room: [150, 350], ahead: 350, down: 300 }),
  // Held between the knees, so the left hand can go while the right keeps the bow.
  bowed('viol-bass', {
    free: 'left',
    room: [200, 450],
    ahead: 400,
    down: 550,
    held: celloBox,
  }),
  bowed('cello', { free: 'left', room: [200, 450], ahead: 450, down: 600, held: celloBox }),
  bowed('double-bass', {
    free: 'right',
    room: [300, 450],
    ahead: 550,
    down: 800,
    held: bassBox,
  }),
];

const guitarBox: HeldBox = {
  from: 'waist',
  bottom: -120,
  top: 260,
  ahead: 200,
  left: 0,
  width: 500,
  depth: 120,
};

const luteBox: HeldBox = { ...guitarBox, bottom: -80, top: 250, depth: 170 };

export const PLUCKED = [
  // Lies on the leg: either hand can go while the other steadies it.
  plucked('guitar', {
    free: 'both',
    room: [450, 200],
    ahead: 300,
    down: 120,
    held: guitarBox,
  }),
  plucked('lute', { free: 'right', room: [450, 200], ahead: 320, down: 80, held: luteBox }),
  plucked('theorbo', {
    free: 'right',
    room: [1000, 200],
    ahead: 400,
    down: 80,
    held: luteBox,
  }),
  plucked('mandolin', { free: 'right', room: [300, 180], ahead: 280, down: 50 }),
];
