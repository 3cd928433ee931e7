/**
 * What parts are headed with: the trade's names of the catalogue's instruments in English, Italian, German and French,
 * singular and plural, in small letters without accents. Common practice, no source.
 */
const NAMES: Readonly<Record<string, string>> = {
  piccolo:
    'piccolo, piccolo flute, flauto piccolo, ottavino, piccoloflote, kleine flote, petite flute, flute piccolo',
  flute: 'flute, flutes, flauto, flauti, flote, floten, grande flute, grosse flote, traversflote, fl',
  'flute alto': 'alto flute, flauto contralto, altflote, flute en sol',
  'flute bass': 'bass flute, flauto basso, bassflote, flute basse',
  recorder: 'recorder, recorders, flauto dolce, blockflote, flute a bec',
  'recorder tenor': 'tenor recorder, flauto dolce tenore, tenorblockflote, flute a bec tenor',
  'recorder bass': 'bass recorder, flauto dolce basso, bassblockflote, flute a bec basse',
  oboe: 'oboe, oboes, oboi, hautbois, ob',
  'cor anglais': 'cor anglais, english horn, corno inglese, englischhorn, englisch horn',
  clarinet:
    'clarinet, clarinets, clarinetto, clarinetti, klarinette, klarinetten, clarinette, clarinettes, cl',
  'basset horn': 'basset horn, corno di bassetto, bassetthorn, cor de basset',
  'clarinet bass': 'bass clarinet, clarinetto basso, clarone, bassklarinette, clarinette basse',
  bassoon: 'bassoon, bassoons, fagotto, fagotti, fagott, fagotte, basson, bassons, bsn, fg',
  contrabassoon: 'contrabassoon, double bassoon, contrafagotto, controfagotto, kontrafagott, contrebasson',
  'saxophone soprano': 'soprano saxophone, soprano sax, sassofono soprano, sopransaxophon, saxophone soprano',
  'saxophone alto':
    'alto saxophone, alto sax, sassofono contralto, altsaxophon, saxophone alto, saxophone contralto',
  'saxophone tenor': 'tenor saxophone, tenor sax, sassofono tenore, tenorsaxophon, saxophone tenor',
  'saxophone baritone':
    'baritone saxophone, baritone sax, sassofono baritono, baritonsaxophon, saxophone baryton',
  horn: 'horn, horns, french horn, corno, corni, waldhorn, horner, cor, cors, hn',
  trumpet: 'trumpet, trumpets, tromba, trombe, trompete, trompeten, trompette, trompettes, tpt',
  cornet: 'cornet, cornets, cornetta, kornett, cornet a pistons',
  flugelhorn: 'flugelhorn, flicorno, bugle',
  trombone: 'trombone, trombones, tromboni, posaune, posaunen, tbn',
  'trombone bass': 'bass trombone, trombone basso, bassposaune, trombone basse',
  euphonium: 'euphonium, eufonio',
  tuba: 'tuba, bass tuba, basstuba',
  violin: 'violin, violins, violino, violini, violine, violinen, geige, geigen, violon, violons, vln, vl',
  viola: 'viola, violas, viole, bratsche, bratschen, alto viola, vla',
  'viol treble': 'treble viol, viola da gamba soprano, diskantgambe, dessus de viole',
  'viol bass': 'bass viol, viola da gamba, bassgambe, basse de viole',
  cello: 'cello, cellos, violoncello, violoncellos, violoncelli, violoncelle, violoncelles, celli, vc, vlc',
  'double bass':
    'double bass, double basses, contrabass, string bass, contrabbasso, contrabbassi, kontrabass, kontrabasse, contrebasse, contrebasses, cb, db',
  guitar: 'guitar, guitars, chitarra, chitarre, gitarre, gitarren, guitare, guitares',
  lute: 'lute, liuto, laute, luth',
  theorbo: 'theorbo, tiorba, theorbe',
  mandolin: 'mandolin, mandolins, mandolino, mandolini, mandoline, mandolinen, mandolines',
  accordion: 'accordion, fisarmonica, akkordeon, accordeon',
  harp: 'harp, harps, arpa, arpe, harfe, harfen, harpe, harpes',
  piano: 'piano, pianoforte, klavier, digital piano, grand piano, upright piano',
  marimba: 'marimba, marimbaphon',
  vibraphone: 'vibraphone, vibrafono, vibraphon',
  xylophone: 'xylophone, xilofono, xylophon',
  glockenspiel: 'glockenspiel, campanelli, jeu de timbres',
  timpani: 'timpani, kettledrums, pauken, timbales',
  triangle: 'triangle, triangolo, triangel',
  tambourine: 'tambourine, tamburello, schellentrommel, tambour de basque',
  castanets: 'castanets, nacchere, castagnette, kastagnetten, castagnettes',
};

const KINDS: ReadonlyMap<string, string> = new Map(
  Object.entries(NAMES).flatMap(([kind, names]) =>
    [kind, ...names.split(', ')].map((name): [string, string] => [name, kind]),
  ),
);

/** The same for all names of one instrument; undefined: no name of the table. */
export function kindNamed(name: string): string | undefined {
  return KINDS.get(name);
}

/** All of them, in all languages. */
export function namesOfInstruments(): readonly string[] {
  return [...KINDS.keys()];
}

/** What voices are called, and with the same words the instruments of a family. Common practice, no source. */
const VOICES: ReadonlySet<string> = new Set(
  (
    'soprano, sopran, mezzo soprano, mezzosopran, mezzo, treble, alto, alt, contralto, haute contre, countertenor, ' +
    'contratenor, tenor, tenore, baritone, baritono, bariton, baryton, bass, basso, basse, voice, voce, stimme, voix'
  ).split(', '),
);

export function isVoiceNamed(name: string): boolean {
  return VOICES.has(name);
}
