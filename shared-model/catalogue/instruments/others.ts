/** Accordion, voice, and the small percussion that waits on a table. */

import { rowsOf } from './row.ts';

const keyboard = rowsOf('keyboard');
const voice = rowsOf('voice');
const percussion = rowsOf('percussion');

export const KEYBOARD = [
  // The left hand is in the bellows strap.
  keyboard('accordion', {
    free: 'right',
    room: [300, 120],
    ahead: 400,
    held: { from: 'waist', bottom: 0, top: 420, ahead: 250, left: 40, width: 480, depth: 250 },
  }),
  keyboard('melodica', { free: 'right', room: [150, 150], ahead: 400 }),
];

export const VOICES = [
  voice('voice', { playing: 'none', free: 'both', room: [120, 120], ahead: 150 }),
  voice('voice-with-folder', {
    playing: 'left',
    free: 'right',
    room: [150, 150],
    ahead: 400,
  }),
  voice('speaker', { playing: 'none', free: 'both', room: [120, 120], ahead: 150 }),
];

const struck = { free: 'right', room: [200, 200], ahead: 350 } as const;

export const SMALL_PERCUSSION = [
  percussion('shaker', { playing: 'right', free: 'left', room: [150, 250], ahead: 350 }),
  percussion('maracas', { free: 'right', room: [200, 200], ahead: 350 }),
  percussion('tambourine', struck),
  percussion('triangle', struck),
  percussion('castanets', { free: 'none', room: [150, 150], ahead: 350 }),
  percussion('claves', { free: 'right', room: [150, 150], ahead: 350 }),
  percussion('guiro', struck),
  percussion('wood-block', struck),
  percussion('cowbell', struck),
  percussion('finger-cymbals', { free: 'right', room: [150, 150], ahead: 300 }),
  percussion('hand-cymbals', { free: 'none', room: [400, 400], ahead: 450 }),
  percussion('sleigh-bells', {
    playing: 'right',
    free: 'left',
    room: [150, 200],
    ahead: 300,
  }),
  percussion('ratchet', { free: 'right', room: [200, 300], ahead: 350 }),
  percussion('hand-drum', { free: 'right', room: [200, 200], ahead: 350, down: 0 }),
  percussion('bongos', {
    free: 'both',
    room: [180, 180],
    ahead: 350,
    down: 150,
  }),
  percussion('whistle', { playing: 'right', free: 'left', room: [120, 120], ahead: 200 }),
];
