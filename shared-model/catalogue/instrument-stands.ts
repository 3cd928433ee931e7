/** Pegs, cradles and stands that an instrument waits on. */

import type { Millimetres } from '../document/records.ts';
import { t } from '../words/say.ts';
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

const holder = (id: string, name: () => string, { foot, take, holds }: Row): InstrumentStandModel => ({
  id,
  get name() {
    return name();
  },
  footRadius: foot,
  takeHeight: take,
  holds,
  source: COMMON_PRACTICE,
});

const CLARINETS = ['clarinet', 'clarinet-b-flat', 'clarinet-a', 'clarinet-e-flat'];

export const INSTRUMENT_STAND_MODELS: readonly InstrumentStandModel[] = [
  holder('clarinet-peg', () => t`Clarinet peg`, { foot: 130, take: 450, holds: CLARINETS }),
  holder('clarinet-bass-stand', () => t`Bass clarinet stand`, {
    foot: 220,
    take: 850,
    holds: ['clarinet-bass', 'basset-horn'],
  }),
  holder('flute-peg', () => t`Flute peg`, { foot: 120, take: 500, holds: ['flute', 'flute-alto'] }),
  holder('piccolo-peg', () => t`Piccolo peg`, { foot: 90, take: 250, holds: ['piccolo'] }),
  holder('oboe-peg', () => t`Oboe peg`, { foot: 120, take: 420, holds: ['oboe', 'cor-anglais'] }),
  holder('recorder-peg', () => t`Recorder peg`, {
    foot: 110,
    take: 350,
    holds: ['recorder', 'recorder-tenor'],
  }),
  holder('bassoon-stand', () => t`Bassoon stand`, {
    foot: 250,
    take: 800,
    holds: ['bassoon', 'contrabassoon'],
  }),
  holder('saxophone-stand', () => t`Saxophone stand`, {
    foot: 230,
    take: 600,
    holds: ['saxophone-alto', 'saxophone-tenor', 'saxophone-baritone'],
  }),
  holder('soprano-peg', () => t`Soprano saxophone peg`, {
    foot: 130,
    take: 450,
    holds: ['saxophone-soprano'],
  }),
  holder('trumpet-peg', () => t`Trumpet peg`, {
    foot: 130,
    take: 350,
    holds: ['trumpet', 'cornet', 'flugelhorn'],
  }),
  holder('horn-stand', () => t`Horn stand`, { foot: 250, take: 450, holds: ['horn'] }),
  holder('trombone-stand', () => t`Trombone stand`, {
    foot: 260,
    take: 800,
    holds: ['trombone', 'trombone-bass'],
  }),
  holder('tuba-stand', () => t`Tuba stand`, { foot: 300, take: 700, holds: ['tuba', 'euphonium'] }),
  holder('violin-cradle', () => t`Violin and viola cradle`, {
    foot: 220,
    take: 650,
    holds: ['violin', 'viola'],
  }),
  holder('cello-stand', () => t`Cello stand`, { foot: 260, take: 900, holds: ['cello', 'viol-bass'] }),
  holder('bass-stand', () => t`Double bass stand`, { foot: 350, take: 1200, holds: ['double-bass'] }),
  holder('guitar-stand', () => t`Guitar stand`, {
    foot: 240,
    take: 650,
    holds: ['guitar', 'lute', 'mandolin'],
  }),
  holder('accordion-stand', () => t`Accordion stand`, { foot: 280, take: 500, holds: ['accordion'] }),
];

/** The foot of an instrument stand of an unknown model. */
export const USUAL_FOOT_RADIUS: Millimetres = 200;

export const instrumentStandModel = finder(INSTRUMENT_STAND_MODELS);
