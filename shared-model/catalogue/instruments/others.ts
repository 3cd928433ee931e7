/** Accordion, voice, and the small percussion that waits on a table. */

import { t } from '../../words/say.ts';
import { rowsOf } from './row.ts';

const keyboard = rowsOf('keyboard');
const voice = rowsOf('voice');
const percussion = rowsOf('percussion');

export const KEYBOARD = [
  // The left hand is in the bellows strap.
  keyboard('accordion', () => t`Accordion`, {
    free: 'right',
    room: [300, 120],
    ahead: 400,
    held: { from: 'waist', bottom: 0, top: 420, ahead: 250, left: 40, width: 480, depth: 250 },
  }),
  keyboard('melodica', () => t`Melodica`, { free: 'right', room: [150, 150], ahead: 400 }),
];

export const VOICES = [
  voice('voice', () => t`Voice`, { playing: 'none', free: 'both', room: [120, 120], ahead: 150 }),
  voice('voice-with-folder', () => t`Voice, folder in hand`, {
    playing: 'left',
    free: 'right',
    room: [150, 150],
    ahead: 400,
  }),
  voice('speaker', () => t`Speaker`, { playing: 'none', free: 'both', room: [120, 120], ahead: 150 }),
];

const struck = { free: 'right', room: [200, 200], ahead: 350 } as const;

export const SMALL_PERCUSSION = [
  percussion('shaker', () => t`Shaker`, { playing: 'right', free: 'left', room: [150, 250], ahead: 350 }),
  percussion('maracas', () => t`Maracas`, { free: 'right', room: [200, 200], ahead: 350 }),
  percussion('tambourine', () => t`Tambourine`, struck),
  percussion('triangle', () => t`Triangle`, struck),
  percussion('castanets', () => t`Castanets`, { free: 'none', room: [150, 150], ahead: 350 }),
  percussion('claves', () => t`Claves`, { free: 'right', room: [150, 150], ahead: 350 }),
  percussion('guiro', () => t`Guiro`, struck),
  percussion('wood-block', () => t`Wood block`, struck),
  percussion('cowbell', () => t`Cowbell`, struck),
  percussion('finger-cymbals', () => t`Finger cymbals`, { free: 'right', room: [150, 150], ahead: 300 }),
  percussion('hand-cymbals', () => t`Hand cymbals`, { free: 'none', room: [400, 400], ahead: 450 }),
  percussion('sleigh-bells', () => t`Sleigh bells`, {
    playing: 'right',
    free: 'left',
    room: [150, 200],
    ahead: 300,
  }),
  percussion('ratchet', () => t`Ratchet`, { free: 'right', room: [200, 300], ahead: 350 }),
  percussion('hand-drum', () => t`Hand drum`, { free: 'right', room: [200, 200], ahead: 350, down: 0 }),
  percussion('bongos', () => t`Bongos, between the knees`, {
    free: 'both',
    room: [180, 180],
    ahead: 350,
    down: 150,
  }),
  percussion('whistle', () => t`Whistle`, { playing: 'right', free: 'left', room: [120, 120], ahead: 200 }),
];
