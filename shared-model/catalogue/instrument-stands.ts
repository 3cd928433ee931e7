/** Pegs, cradles and stands that an instrument waits on. */

import type { Millimetres } from '../document/records.ts';
import { COMMON_PRACTICE, finder, type Model } from './sources.ts';

export interface InstrumentStandModel extends Model {
  /** Of the circle that its foot needs. */
  readonly footRadius: Millimetres;
  /** Height at which a hand takes the instrument off. */
  readonly takeHeight: Millimetres;
  /** Instrument models it is made for. */
  readonly holds: readonly string[];
}

interface Row {
  readonly foot: Millimetres;
  readonly take: Millimetres;
  readonly holds: readonly string[];
}

const holder = (id: string, name: string, { foot, take, holds }: Row): InstrumentStandModel => ({
  id,
  name,
  footRadius: foot,
  takeHeight: take,
  holds,
  source: COMMON_PRACTICE,
});

const CLARINETS = ['clarinet', 'clarinet-b-flat', 'clarinet-a', 'clarinet-e-flat'];

export const INSTRUMENT_STAND_MODELS: readonly InstrumentStandModel[] = [
  holder('clarinet-peg', 'Clarinet peg', { foot: 130, take: 450, holds: CLARINETS }),
  holder('clarinet-bass-stand', 'Bass clarinet stand', {
    foot: 220,
    take: 850,
    holds: ['clarinet-bass', 'basset-horn'],
  }),
  holder('flute-peg', 'Flute peg', { foot: 120, take: 500, holds: ['flute', 'flute-alto'] }),
  holder('piccolo-peg', 'Piccolo peg', { foot: 90, take: 250, holds: ['piccolo'] }),
  holder('oboe-peg', 'Oboe peg', { foot: 120, take: 420, holds: ['oboe', 'cor-anglais'] }),
  holder('recorder-peg', 'Recorder peg', { foot: 110, take: 350, holds: ['recorder', 'recorder-tenor'] }),
  holder('bassoon-stand', 'Bassoon stand', { foot: 250, take: 800, holds: ['bassoon', 'contrabassoon'] }),
  holder('saxophone-stand', 'Saxophone stand', {
    foot: 230,
    take: 600,
    holds: ['saxophone-alto', 'saxophone-tenor', 'saxophone-baritone'],
  }),
  holder('soprano-peg', 'Soprano saxophone peg', { foot: 130, take: 450, holds: ['saxophone-soprano'] }),
  holder('trumpet-peg', 'Trumpet peg', {
    foot: 130,
    take: 350,
    holds: ['trumpet', 'cornet', 'flugelhorn'],
  }),
  holder('horn-stand', 'Horn stand', { foot: 250, take: 450, holds: ['horn'] }),
  holder('trombone-stand', 'Trombone stand', {
    foot: 260,
    take: 800,
    holds: ['trombone', 'trombone-bass'],
  }),
  holder('tuba-stand', 'Tuba stand', { foot: 300, take: 700, holds: ['tuba', 'euphonium'] }),
  holder('violin-cradle', 'Violin and viola cradle', { foot: 220, take: 650, holds: ['violin', 'viola'] }),
  holder('cello-stand', 'Cello stand', { foot: 260, take: 900, holds: ['cello', 'viol-bass'] }),
  holder('bass-stand', 'Double bass stand', { foot: 350, take: 1200, holds: ['double-bass'] }),
  holder('guitar-stand', 'Guitar stand', {
    foot: 240,
    take: 650,
    holds: ['guitar', 'lute', 'mandolin'],
  }),
  holder('accordion-stand', 'Accordion stand', { foot: 280, take: 500, holds: ['accordion'] }),
];

/** The foot of an instrument stand of an unknown model. */
export const USUAL_FOOT_RADIUS: Millimetres = 200;

export const instrumentStandModel = finder(INSTRUMENT_STAND_MODELS);
