/** Accordion, voice, and the small percussion that waits on a table. */

import { rowsOf } from './row.ts';

const keyboard = rowsOf('keyboard');
const voice = rowsOf('voice');
const percussion = rowsOf('percussion');

export const KEYBOARD = [
  // The left hand is in the bellows strap.
  keyboard('accordion', 'Accordion', {
    free: 'right',
    room: [300, 120],
    ahead: 400,
    held: { from: 'waist', bottom: 0, top: 420, ahead: 250, left: 40, width: 480, depth: 250 },
  }),
  keyboard('melodica', 'Melodica', { free: 'right', room: [150, 150], ahead: 400 }),
];

export const VOICES = [
  voice('voice', 'Voice', { playing: 'none', free: 'both', room: [120, 120], ahead: 150 }),
  voice('voice-with-folder', 'Voice, folder in hand', {
    playing: 'left',
    free: 'right',
    room: [150, 150],
    ahead: 400,
  }),
  voice('speaker', 'Speaker', { playing: 'none', free: 'both', room: [120, 120], ahead: 150 }),
];

const struck = { free: 'right', room: [200, 200], ahead: 350 } as const;

export const SMALL_PERCUSSION = [
  percussion('shaker', 'Shaker', { playing: 'right', free: 'left', room: [150, 250], ahead: 350 }),
  percussion('maracas', 'Maracas', { free: 'right', room: [200, 200], ahead: 350 }),
  percussion('tambourine', 'Tambourine', struck),
  percussion('triangle', 'Triangle', struck),
  percussion('castanets', 'Castanets', { free: 'none', room: [150, 150], ahead: 350 }),
  percussion('claves', 'Claves', { free: 'right', room: [150, 150], ahead: 350 }),
  percussion('guiro', 'Guiro', struck),
  percussion('wood-block', 'Wood block', struck),
  percussion('cowbell', 'Cowbell', struck),
  percussion('finger-cymbals', 'Finger cymbals', { free: 'right', room: [150, 150], ahead: 300 }),
  percussion('hand-cymbals', 'Hand cymbals', { free: 'none', room: [400, 400], ahead: 450 }),
  percussion('sleigh-bells', 'Sleigh bells', {
    playing: 'right',
    free: 'left',
    room: [150, 200],
    ahead: 300,
  }),
  percussion('ratchet', 'Ratchet', { free: 'right', room: [200, 300], ahead: 350 }),
  percussion('hand-drum', 'Hand drum', { free: 'right', room: [200, 200], ahead: 350, down: 0 }),
  percussion('bongos', 'Bongos, between the knees', {
    free: 'both',
    room: [180, 180],
    ahead: 350,
    down: 150,
  }),
  percussion('whistle', 'Whistle', { playing: 'right', free: 'left', room: [120, 120], ahead: 200 }),
];
