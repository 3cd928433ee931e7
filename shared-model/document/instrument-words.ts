/** What carried instruments are called: the one place, for the catalogue and for those that have no name of their own. */

import { language } from '../words/catalogue.ts';
import { t } from '../words/say.ts';

const NAMES: Readonly<Record<string, () => string>> = {
  violin: () => t`Violin`,
  viola: () => t`Viola`,
  'viol-treble': () => t`Treble viol`,
  'viol-bass': () => t`Bass viol`,
  cello: () => t`Cello`,
  'double-bass': () => t`Double bass`,
  guitar: () => t`Guitar`,
  lute: () => t`Lute`,
  theorbo: () => t`Theorbo`,
  mandolin: () => t`Mandolin`,
  piccolo: () => t`Piccolo`,
  flute: () => t`Flute`,
  'flute-alto': () => t`Alto flute`,
  'flute-bass': () => t`Bass flute`,
  recorder: () => t`Recorder (soprano or alto)`,
  'recorder-tenor': () => t`Tenor recorder`,
  'recorder-bass': () => t`Bass recorder`,
  oboe: () => t`Oboe`,
  'cor-anglais': () => t`Cor anglais`,
  clarinet: () => t`Clarinet`,
  'clarinet-b-flat': () => t`Clarinet in B flat`,
  'clarinet-a': () => t`Clarinet in A`,
  'clarinet-e-flat': () => t`Clarinet in E flat`,
  'basset-horn': () => t`Basset horn`,
  'clarinet-bass': () => t`Bass clarinet`,
  bassoon: () => t`Bassoon`,
  contrabassoon: () => t`Contrabassoon`,
  'saxophone-soprano': () => t`Soprano saxophone`,
  'saxophone-alto': () => t`Alto saxophone`,
  'saxophone-tenor': () => t`Tenor saxophone`,
  'saxophone-baritone': () => t`Baritone saxophone`,
  horn: () => t`Horn`,
  trumpet: () => t`Trumpet`,
  cornet: () => t`Cornet`,
  flugelhorn: () => t`Flugelhorn`,
  trombone: () => t`Trombone`,
  'trombone-bass': () => t`Bass trombone`,
  euphonium: () => t`Euphonium`,
  tuba: () => t`Tuba`,
  accordion: () => t`Accordion`,
  melodica: () => t`Melodica`,
  voice: () => t`Voice`,
  'voice-with-folder': () => t`Voice, folder in hand`,
  speaker: () => t`Speaker`,
  shaker: () => t`Shaker`,
  maracas: () => t`Maracas`,
  tambourine: () => t`Tambourine`,
  triangle: () => t`Triangle`,
  castanets: () => t`Castanets`,
  claves: () => t`Claves`,
  guiro: () => t`Guiro`,
  'wood-block': () => t`Wood block`,
  cowbell: () => t`Cowbell`,
  'finger-cymbals': () => t`Finger cymbals`,
  'hand-cymbals': () => t`Hand cymbals`,
  'sleigh-bells': () => t`Sleigh bells`,
  ratchet: () => t`Ratchet`,
  'hand-drum': () => t`Hand drum`,
  bongos: () => t`Bongos, between the knees`,
  whistle: () => t`Whistle`,
};

/** "Bass clarinet", "Bongos, between the knees"; a model that the catalogue lacks goes by its id. */
export function instrumentName(model: string): string {
  return NAMES[model]?.() ?? model.replaceAll('-', ' ');
}

/** Within a sentence, without what only tells one model from another: "bass clarinet", "bongos". */
export function instrumentWord(model: string): string {
  const name = instrumentName(model).replace(/(?:, | \().*$/, '');
  // German nouns keep their capital.
  return language() === 'en' ? name.slice(0, 1).toLowerCase() + name.slice(1) : name;
}
