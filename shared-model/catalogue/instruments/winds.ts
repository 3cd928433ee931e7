/** Wind instruments. In a rest the hand at the thumb rest or the valves keeps the instrument, the other is free. */

import { t } from '../../words/say.ts';
import { rowsOf } from './row.ts';

const wood = rowsOf('woodwind');
const brass = rowsOf('brass');

export const WOODWIND = [
  // Flutes reach out over the player's right shoulder; the left hand keeps them.
  wood('piccolo', () => t`Piccolo`, { free: 'right', room: [120, 250], ahead: 250 }),
  wood('flute', () => t`Flute`, { free: 'right', room: [120, 400], ahead: 250 }),
  wood('flute-alto', () => t`Alto flute`, { free: 'right', room: [120, 500], ahead: 250 }),
  wood('flute-bass', () => t`Bass flute`, { free: 'right', room: [150, 500], ahead: 300 }),
  wood('recorder', () => t`Recorder (soprano or alto)`, { free: 'left', room: [120, 120], ahead: 300 }),
  wood('recorder-tenor', () => t`Tenor recorder`, { free: 'left', room: [120, 120], ahead: 400, down: 50 }),
  wood('recorder-bass', () => t`Bass recorder`, { free: 'left', room: [130, 130], ahead: 350, down: 250 }),
  wood('oboe', () => t`Oboe`, { free: 'left', room: [120, 120], ahead: 400 }),
  wood('cor-anglais', () => t`Cor anglais`, { free: 'left', room: [120, 120], ahead: 400, down: 150 }),
  // The right thumb carries a clarinet, so the left hand can go.
  wood('clarinet', () => t`Clarinet`, { free: 'left', room: [120, 120], ahead: 400, down: 100 }),
  wood('clarinet-b-flat', () => t`Clarinet in B flat`, {
    free: 'left',
    room: [120, 120],
    ahead: 400,
    down: 100,
  }),
  wood('clarinet-a', () => t`Clarinet in A`, { free: 'left', room: [120, 120], ahead: 400, down: 130 }),
  wood('clarinet-e-flat', () => t`Clarinet in E flat`, {
    free: 'left',
    room: [120, 120],
    ahead: 350,
    down: 50,
  }),
  wood('basset-horn', () => t`Basset horn`, { free: 'left', room: [130, 130], ahead: 400, down: 300 }),
  // On its spike or on a strap: one hand steadies it, either one.
  wood('clarinet-bass', () => t`Bass clarinet`, { free: 'both', room: [130, 130], ahead: 400, down: 500 }),
  wood('bassoon', () => t`Bassoon`, { free: 'right', room: [150, 200], ahead: 300, down: 300 }),
  wood('contrabassoon', () => t`Contrabassoon`, { free: 'both', room: [180, 250], ahead: 400, down: 500 }),
  // Saxophones hang on a strap.
  wood('saxophone-soprano', () => t`Soprano saxophone`, { free: 'both', room: [120, 120], ahead: 450 }),
  wood('saxophone-alto', () => t`Alto saxophone`, { free: 'both', room: [120, 200], ahead: 350, down: 150 }),
  wood('saxophone-tenor', () => t`Tenor saxophone`, {
    free: 'both',
    room: [120, 250],
    ahead: 350,
    down: 250,
  }),
  wood('saxophone-baritone', () => t`Baritone saxophone`, {
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
  brass('horn', () => t`Horn`, { free: 'right', room: [150, 350], ahead: 350, down: 100 }),
  brass('trumpet', () => t`Trumpet`, { free: 'right', room: [150, 150], ahead: 650 }),
  brass('cornet', () => t`Cornet`, { free: 'right', room: [150, 150], ahead: 550 }),
  brass('flugelhorn', () => t`Flugelhorn`, { free: 'right', room: [150, 150], ahead: 600 }),
  // The slide goes out to the front, the bell back over the left shoulder.
  brass('trombone', () => t`Trombone`, { free: 'right', room: [200, 200], ahead: 1300 }),
  brass('trombone-bass', () => t`Bass trombone`, { free: 'right', room: [220, 200], ahead: 1350 }),
  brass('euphonium', () => t`Euphonium`, { free: 'right', room: [150, 150], ahead: 400, down: 100 }),
  brass('tuba', () => t`Tuba`, { free: 'right', room: [200, 200], ahead: 450, down: 100, held: tubaBox }),
];
