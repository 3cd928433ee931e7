/** Houses to begin with. Left and right are as seen from the house, the other way round than stage right and stage left. */

import type { Entries } from '../../catalogue.ts';

export const houses: Entries = {
  'Church chancel': 'Altarraum einer Kirche',
  'A chancel of 7.2 by 5.2 m, 450 mm up, before pews for 144 on both sides of a nave with six columns.':
    'Ein Altarraum von 7,2 × 5,2 m, 450 mm hoch, vor Bänken für 144 zu beiden Seiten eines Schiffs mit sechs Säulen.',
  'Vestry door': 'Sakristeitür',
  'Chancel steps': 'Stufen zum Altarraum',
  'Pews, stage right': 'Bänke links',
  'Pews, stage left': 'Bänke rechts',
  'Wheelchair place': 'Rollstuhlplatz',
  'Drawing-room': 'Salon',
  '42 chairs in arcs before a playing area of 5 by 3.5 m on the floor.':
    '42 Stühle in Bögen vor einer Spielfläche von 5 × 3,5 m auf dem Boden.',
  'Double doors': 'Flügeltür',
  Chairs: 'Stühle',
  Platform: 'Podium',
  Column: 'Säule',
  'Recital room': 'Vortragssaal',
  '180 chairs on a flat floor before a platform of 8.4 by 5.6 m, 650 mm high.':
    '180 Stühle auf ebenem Boden vor einem Podium von 8,4 × 5,6 m, 650 mm hoch.',
  'Door to the green room': 'Tür zum Künstlerzimmer',
  'Steps to the house': 'Treppe zum Saal',
  Stalls: 'Parkett',
  'Wheelchair place, stage right': 'Rollstuhlplatz links',
  'Wheelchair place, stage left': 'Rollstuhlplatz rechts',
  'School hall': 'Schulaula',
  '240 chairs in two blocks on a flat floor before a stage of 9 by 5 m, 900 mm high.':
    '240 Stühle in zwei Blöcken auf ebenem Boden vor einer Bühne von 9 × 5 m, 900 mm hoch.',
  'Wing, stage left': 'Seitenbühne rechts',
  'Wing, stage right': 'Seitenbühne links',
  'Camera at the back': 'Kamera hinten',
  'Small concert hall': 'Kleiner Konzertsaal',
  '396 seats: 308 in raked stalls and 88 in a balcony, before a platform of 12 by 7.5 m, 800 mm high.':
    '396 Plätze: 308 im ansteigenden Parkett und 88 im Rang, vor einem Podium von 12 × 7,5 m, 800 mm hoch.',
  'Platform door, stage left': 'Podiumstür rechts',
  'Platform door, stage right': 'Podiumstür links',
  Balcony: 'Rang',
  'Camera in the balcony': 'Kamera im Rang',
  Studio: 'Studio',
  '84 seats on a steep rake before a playing area of 9 by 6 m on the floor.':
    '84 Plätze auf einer steilen Tribüne vor einer Spielfläche von 9 × 6 m auf dem Boden.',
  'Get-in': 'Ladetor',
  Rake: 'Tribüne',
  'Room with seats on three sides': 'Raum mit Plätzen an drei Seiten',
  '136 seats round a platform of 7 by 6 m, 300 mm high.':
    '136 Plätze um ein Podium von 7 × 6 m, 300 mm hoch.',
  'Door behind the platform': 'Tür hinter dem Podium',
  Front: 'Vorn',
  'Side, stage right': 'Seite links',
  'Side, stage left': 'Seite rechts',
};
