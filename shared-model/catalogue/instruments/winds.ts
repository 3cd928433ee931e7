/** Wind instruments. In a rest the hand at the thumb rest or the valves keeps the instrument, the other is free. */

import { rowsOf } from './row.ts';

const wood = rowsOf('woodwind');
const brass = rowsOf('brass');

export const WOODWIND = [
  // Flutes reach out over the player's right shoulder; the left hand keeps them.
  wood('piccolo', { free: 'right', room: [120, 250], ahead: 250 }),
  wood('flute', { free: 'right', room: [120, 400], ahead: 250 }),
  wood('flute-alto', { free: 'right', room: [120, 500], ahead: 250 }),
  wood('flute-bass', { free: 'right', room: [150, 500], ahead: 300 }),
  wood('recorder', { free: 'left', room: [120, 120], ahead: 300 }),
  wood('recorder-tenor', { free: 'left', room: [120, 120], ahead: 400, down: 50 }),
  wood('recorder-bass', { free: 'left', room: [130, 130], ahead: 350, down: 250 }),
  wood('oboe', { free: 'left', room: [120, 120], ahead: 400 }),
  wood('cor-anglais', { free: 'left', room: [120, 120], ahead: 400, down: 150 }),
  // The right thumb carries a clarinet, so the left hand can go.
  wood('clarinet', { free: 'left', room: [120, 120], ahead: 400, down: 100 }),
  wood('clarinet-b-flat', {
    free: 'left',
    room: [120, 120],
    ahead: 400,
    down: 100,
  }),
  wood('clarinet-a', { free: 'left', room: [120, 120], ahead: 400, down: 130 }),
  wood('clarinet-e-flat', {
    free: 'left',
    room: [120, 120],
    ahead: 350,
    down: 50,
  }),
  wood('basset-horn', { free: 'left', room: [130, 130], ahead: 400, down: 300 }),
  // On its spike or on a strap: one hand steadies it, either one.
  wood('clarinet-bass', { free: 'both', room: [130, 130], ahead: 400, down: 500 }),
  wood('bassoon', { free: 'right', room: [150, 200], ahead: 300, down: 300 }),
  wood('contrabassoon', { free: 'both', room: [180, 250], ahead: 400, down: 500 }),
  // Saxophones hang on a strap.
  wood('saxophone-soprano', { free: 'both', room: [120, 120], ahead: 450 }),
  wood('saxophone-alto', { free: 'both', room: [120, 200], ahead: 350, down: 150 }),
  wood('saxophone-tenor', {
    free: 'both',
    room: [120, 250],
    ahead: 350,
    down: 250,
  }),
  wood('saxophone-baritone', {
    free: 'both',
    room: [130, 300],
    ahead: 400,
    down: 400,
  }),
];

const tubaBox = {
  from: 'waist',
  bottom: -100,
  top: 650,
  ahead: 250,
  left: 0,
  width: 420,
  depth: 300,
} as const;

export const BRASS = [
  brass('horn', { free: 'right', room: [150, 350], ahead: 350, down: 100 }),
  brass('trumpet', { free: 'right', room: [150, 150], ahead: 650 }),
  brass('cornet', { free: 'right', room: [150, 150], ahead: 550 }),
  brass('flugelhorn', { free: 'right', room: [150, 150], ahead: 600 }),
  // The slide goes out to the front, the bell back over the left shoulder.
  brass('trombone', { free: 'right', room: [200, 200], ahead: 1300 }),
  brass('trombone-bass', { free: 'right', room: [220, 200], ahead: 1350 }),
  brass('euphonium', { free: 'right', room: [150, 150], ahead: 400, down: 100 }),
  brass('tuba', { free: 'right', room: [200, 200], ahead: 450, down: 100, held: tubaBox }),
];
