/** What the demo concert calls its people, places and things, in German; titles and names of people stay. */

export const DEMO_IN_GERMAN: Readonly<Record<string, string>> = {
  'Bass clarinet': 'Bassklarinette',
  'Chair store': 'Stuhllager',
  Clarinet: 'Klarinette',
  'Clarinet and viola change sides; the marimba stays. Two lamps: the light is low.':
    'Klarinette und Viola tauschen die Seiten; die Marimba bleibt. Zwei Lampen: Das Licht ist schwach.',
  'Clarinet and viola face each other over one back-to-back pair.':
    'Klarinette und Viola sitzen einander gegenüber, zwischen sich zwei Pulte Rücken an Rücken.',
  'Clarinet in A': 'Klarinette in A',
  'Clarinet in B flat': 'Klarinette in B',
  'First try: three players, marimba and small percussion. Has faults to find.':
    'Erster Versuch: drei Spieler, Marimba und Kleinpercussion. Hat Mängel, die zu finden sind.',
  'Front stalls': 'Vorderes Parkett',
  'Green room': 'Künstlerzimmer',
  'Light and power': 'Licht und Strom',
  'Marimba and shakers': 'Marimba und Shaker',
  'Percussion room': 'Schlagwerkraum',
  Pilaster: 'Wandpfeiler',
  'Rear stalls': 'Hinteres Parkett',
  'Recording camera': 'Aufnahmekamera',
  'Seating and changes to this pack': 'Sitzordnung und Änderungen an dieser Mappe',
  'Shaker table': 'Shaker-Tisch',
  'Stage manager': 'Inspizienz',
  'Steps to the house': 'Treppe zum Saal',
  'The same piece, set again so that the house sees all three.':
    'Dasselbe Stück, neu gestellt, damit der Saal alle drei sieht.',
  'Wheelchair place left': 'Rollstuhlplatz links',
  'Wheelchair place right': 'Rollstuhlplatz rechts',
};
