/** Cue cards: what a player sets where, and every turn that he makes or that is made for him. */

import type { Entries } from '../catalogue.ts';

const FRAME: Entries = {
  'Cue cards': 'Stichwortkarten',
  '{0}: cue cards, sheet {1}': '{0}: Stichwortkarten, Blatt {1}',
  'cue card': 'Stichwortkarte',
  'cue card {0} of {1}': 'Karte {0} von {1}',
  ', continued': ', Fortsetzung',
  'revision {0}': 'Fassung {0}',
  'Set up': 'Aufbau',
  'SL, SR: left and right of one who faces the house; US: upstage, DS: downstage.':
    'li, re: vom Saal aus gesehen; hi: nach hinten, vo: nach vorn.',
  'Pages and turns': 'Seiten und Wendestellen',
  'Pages and turns, continued': 'Seiten und Wendestellen, Fortsetzung',
  'Counted in strict time from the score: try every turn in rehearsal.':
    'Streng im Zeitmaß der Partitur gezählt: Jede Wendestelle in der Probe ausprobieren.',
  'What, and what lies before you then': 'Was, und was dann auf den Pulten liegt',
};

const SETTING: Entries = {
  'You: {0}; {1}.': 'Eigener Platz: {0}; {1}.',
  '{0}, {1}. No paper in this piece.': '{0}, {1}. In diesem Stück ohne Papier.',
  '{0}, faces {1}': '{0}, Blick {1}',
  standing: 'stehend',
  '{0}, {1} high': '{0}, {1} hoch',
  'back to back, measured to the ridge': 'Rücken an Rücken, gemessen zum First',
  'lip {0} high, desk at {1}°': 'Leiste {0} hoch, Auflage {1}° geneigt',
  Stand: 'Pult',
  'In your hands: {0}.': 'In der Hand: {0}.',
  '{0} waits on the {1}, {2}.': '{0} steht bereit: {1}, {2}.',
  'Take it up in a rest of {0} s.': 'In einer Pause von {0} s nehmen.',
  'Loose pages side by side': 'Lose Seiten nebeneinander',
  'A book': 'Ein Buch',
  'A concertina': 'Ein Leporello',
  'A booklet over the ridge': 'Ein Heft über dem First',
  '{0}, {1} leaf': ['{0}, {1} Wendeblatt', '{0}, {1} Wendeblätter'],
  '{0}, {1} pages open at a time; each turn moves them on by two':
    '{0}, {1} Seiten zugleich offen; jedes Umblättern rückt sie um zwei weiter',
  'nobody reads on the other side': 'auf der anderen Seite liest niemand',
  '{0} reads on the other side': 'auf der anderen Seite liest {0}',
  '{0}, at first all on your side; {1}.': '{0}, am Anfang alle auf der eigenen Seite; {1}.',
  '{0}, at first all on the other side; {1}.': '{0}, am Anfang alle auf der anderen Seite; {1}.',
};

const MOMENTS: Entries = {
  'At first': 'Zuerst',
  'Lay your pages so.': 'Die Seiten so legen.',
  'Begin with: {0}.': 'Beginnen mit: {0}.',
  'Take up: {0}.': 'Zur Hand nehmen: {0}.',
  'You play it from {0} on.': 'Gespielt wird es ab {0}.',
  'You rest for {0}.': 'Pause: {0}.',
  'You rest for {0}; the change takes {1}, with care {2}.':
    'Pause: {0}; der Wechsel dauert {1}, mit Bedacht {2}.',
  'Thin: hardly time to change!': 'Knapp: kaum Zeit zum Wechseln!',
  'Thin: {0} to spare!': 'Knapp: nur {0} übrig!',
  'Turn {0}: {1}.': '{0}. Umblättern: {1}.',
  'you turn {0}, left hand': '{0}, linke Hand',
  'you turn {0}, right hand': '{0}, rechte Hand',
  'you turn {0} back, left hand': '{0} zurück, linke Hand',
  'you turn {0} back, right hand': '{0} zurück, rechte Hand',
  '{0} turns {1} for you': '{0} an {1}',
  '{0} turns {1} back for you': '{0} an {1} zurück',
  'while you are on page {0}': 'während Seite {0}',
  'Leave your hands off it.': 'Nicht selbst umblättern.',
  'It is also for {0}.': 'Auch für {0}.',
  'Hand and leaf free for {0}; the turn takes {1} with care, hand there and back; {2} to spare.':
    'Hand und Blatt frei: {0}; Umblättern mit Bedacht, Hand hin und zurück: {1}; übrig: {2}.',
  'Hand and leaf free for any time; the turn takes {0} with care, hand there and back.':
    'Hand und Blatt beliebig lange frei; Umblättern mit Bedacht, Hand hin und zurück: {0}.',
};

export const cards: Entries = { ...FRAME, ...SETTING, ...MOMENTS };
