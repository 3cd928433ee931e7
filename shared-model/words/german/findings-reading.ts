/** Findings of the checks on reaching and reading. */

import type { Entries } from '../catalogue.ts';

export const findingsReading: Entries = {
  '{0} has to take a step {1}': '{0} muss einen Schritt machen, {1}',
  '{0} has to take a step and stoop {1}': '{0} muss einen Schritt machen und sich bücken, {1}',
  '{0} has to walk {1}': '{0} muss gehen, {1}',
  '{0} has to walk and stoop {1}': '{0} muss gehen und sich bücken, {1}',
  '{0} cannot get there {1}': '{0} kommt nicht hin, {1}',
  'to take up {0}': 'um {0} aufzunehmen',
  'to turn the page on {0}': 'um auf {0} umzublättern',
  '{0} has too little time {1}': '{0} hat zu wenig Zeit, {1}',
  '{0} may have too little time {1}': '{0} hat vielleicht zu wenig Zeit, {1}',
  '{0} has no hand free {1}': '{0} hat keine Hand frei, {1}',
  'What they hold in a rest takes both hands.': 'Was in einer Pause gehalten wird, braucht beide Hände.',
  'Give them a place to put it down first, or let somebody else do it.':
    'Vorher einen Ort zum Ablegen schaffen oder es jemand anderem überlassen.',
  'the rest is {0}': 'die Pause dauert {0}',
  'the shortest rest for it in the part is {0}{1}': 'die kürzeste Pause dafür in der Stimme dauert {0}{1}',
  'the part has a place without any rest for it{0}':
    'in der Stimme gibt es eine Stelle ohne jede Pause dafür{0}',
  ', {0} into the music': ', {0} nach Beginn',
  ', at bar {0} ({1} into the music)': ', bei Takt {0} ({1} nach Beginn)',
  'It is {0} from the shoulder, {1} above the floor; without a step they reach {2} there.':
    'Abstand von der Schulter {0}, Höhe über dem Boden {1}; ohne Schritt reicht der Arm dort {2} weit.',
  'It is {0} from the shoulder, {1} above the floor; without a step they reach {2} there (arms of this stature differ by {3}, one standard deviation).':
    'Abstand von der Schulter {0}, Höhe über dem Boden {1}; ohne Schritt reicht der Arm dort {2} weit (Armlängen bei dieser Körpergröße streuen um {3}, eine Standardabweichung).',
  'It takes {0}; up to {1} with an allowance for care; {2}.':
    'Es dauert {0}; mit einem Zuschlag für Sorgfalt bis zu {1}; {2}.',
  'It takes {0}; up to {1} at a slow walk and with an allowance for care; {2}.':
    'Es dauert {0}; bei langsamem Gang und mit einem Zuschlag für Sorgfalt bis zu {1}; {2}.',
  '{0} by the published tables': '{0} nach den veröffentlichten Tabellen',
  '{0} for stooping and rising (from memory)': '{0} für Bücken und Aufrichten (aus dem Gedächtnis)',
  '{0} for getting up and sitting down (from memory)': '{0} für Aufstehen und Hinsetzen (aus dem Gedächtnis)',
  '{0} for setting off there and back (common practice)':
    '{0} für das Losgehen hin und zurück (übliche Praxis)',
  'It fits the rest.': 'Es passt in die Pause.',
  'Even so there is no rest for it.': 'Eine Pause dafür gibt es auch dann nicht.',
  'It fits at the usual pace; try it at the rehearsal.':
    'Bei üblichem Tempo passt es; in der Probe ausprobieren.',
  '{0} with {1}': '{0} mit {1}',
  'Bring {0} nearer by {1}, straight towards the spot of {2}.':
    '{0} um {1} näher rücken, gerade auf die Stelle von {2} zu.',
  'Bring {0} nearer to a shoulder of {1}.': '{0} näher an eine Schulter von {1} bringen.',
  'Bring {0} to a height they reach.': '{0} in eine erreichbare Höhe bringen.',
  'Bring {0} nearer, raise {1}, so that nobody has to stoop for it, or find a longer rest.':
    '{0} näher rücken, dazu {1} höher stellen, damit sich niemand bücken muss, oder eine längere Pause suchen.',
  'Bring {0} nearer or higher, so that nobody has to stoop for it, or find a longer rest.':
    '{0} näher rücken oder höher stellen, damit sich niemand bücken muss, oder eine längere Pause suchen.',
  'Bring {0} nearer, or find a longer rest.': '{0} näher rücken oder eine längere Pause suchen.',
  'Raise {0}, so that nobody has to stoop for it, or find a longer rest: at its height it takes {1} however near it is.':
    '{0} höher stellen, damit sich niemand bücken muss, oder eine längere Pause suchen: In dieser Höhe dauert es auch aus nächster Nähe {1}.',
  'Find a longer rest, or let somebody else do it.':
    'Eine längere Pause suchen oder es jemand anderem überlassen.',
  'Find a longer rest, or let somebody else do it: however near it is, it takes {0}.':
    'Eine längere Pause suchen oder es jemand anderem überlassen: Auch aus nächster Nähe dauert es {0}.',
  'Change at an earlier rest, or give the passage to somebody else: there is no rest there.':
    'In einer früheren Pause wechseln oder die Stelle jemand anderem geben: Dort gibt es keine Pause.',
  'Give the turn to somebody else, print the page again, or set one more stand: there is no rest there.':
    'Jemand anderen umblättern lassen, die Seite noch einmal drucken oder ein Pult mehr aufstellen: Dort gibt es keine Pause.',
  '{0} reads {1} from far away': '{0} ist zum Lesen weit weg von {1}',
  'From {0} to {1} away a staff space looks {2} minutes of arc tall.':
    'Aus {0} bis {1} Entfernung erscheint ein Zwischenraum der Notenzeile {2} Bogenminuten hoch.',
  'From {0} to {1} away even a space of the staves that librarians find most readable (MOLA guidelines, 2017) looks {2} minutes of arc tall.':
    'Aus {0} bis {1} Entfernung erscheint selbst ein Zwischenraum der Notenzeilen, die Orchesterbibliothekare am besten lesbar finden (MOLA guidelines, 2017), {2} Bogenminuten hoch.',
  'Under {0} is a caution of this tool’s own: so small are the details of letters of {1} minutes, the least of ISO 9241-3. For staves no standard sets a limit.':
    'Die Grenze von {0} setzt das Programm selbst, zur Vorsicht: So klein sind Einzelheiten von Buchstaben mit {1} Bogenminuten, dem Mindestmaß nach ISO 9241-3. Für Notenzeilen setzt keine Norm eine Grenze.',
  'Bring the pages to within about {0} of the eyes.': 'Seiten bis auf etwa {0} an die Augen heranrücken.',
  '{0} sees {1} on edge or from behind': '{0} sieht die Seiten auf {1} von der Kante oder von hinten',
  'From there the line of sight meets the page {0} off square, and from {1}° on nothing can be read.':
    'Von dort weicht die Sichtlinie um {0} von der Senkrechten zum Blatt ab; ab {1}° ist nichts mehr zu lesen.',
  '{0} reads {1} at a steep angle': '{0} sieht die Seiten auf {1} sehr schräg',
  'The line of sight meets the page {0} off square at the outer lines. Displays are kept within {1}° (NUREG-0700, after MIL-STD-1472G).':
    'Die Sichtlinie weicht an den äußeren Zeilen um {0} von der Senkrechten zum Blatt ab. Für Anzeigen gelten höchstens {1}° (NUREG-0700, nach MIL-STD-1472G).',
  'The line of sight meets the page {0} off square at the middle of a page. Displays are kept within {1}° (NUREG-0700, after MIL-STD-1472G).':
    'Die Sichtlinie weicht in der Mitte der Seite um {0} von der Senkrechten zum Blatt ab. Für Anzeigen gelten höchstens {1}° (NUREG-0700, nach MIL-STD-1472G).',
  'Tilt the desk to {0}, for {1}.': 'Auflage auf {0} neigen, das ergibt {1}.',
  'Turn the stand to face {0}, for {1}.': 'Pult so drehen, dass es {0} zeigt; das ergibt {1}.',
  'Bring the row nearer to its reader’s middle, or use fewer pages side by side.':
    'Reihe näher vor die Mitte des Lesers rücken oder weniger Seiten nebeneinander legen.',
  'Change the desk’s height or its place: no tilt of it clears this, nor does turning a single stand.':
    'Höhe oder Ort der Auflage ändern: Weder eine andere Neigung noch Drehen eines einzelnen Pults hilft.',
  '{0} turns the head across the pages on {1}': '{0} dreht den Kopf über die Seiten auf {1}',
  '{0} turns the body across the pages on {1}': '{0} dreht den Körper über die Seiten auf {1}',
  'The row ends {0} to the side of its middle. Eyes alone turn {1}°, with the head {2}° (NUREG-0700, after MIL-STD-1472G).':
    'Die Reihe endet {0} seitlich ihrer Mitte. Die Augen allein drehen sich um {1}°, mit dem Kopf um {2}° (NUREG-0700, nach MIL-STD-1472G).',
  'Move the stand farther away.': 'Pult weiter weg stellen.',
  'Move the stand farther away, or put one page on it, for {0}.':
    'Pult weiter weg stellen oder nur eine Seite auflegen, das ergibt {0}.',
  'Move the stand farther away, or put {0} pages on it, for {1}.':
    'Pult weiter weg stellen oder nur {0} Seiten auflegen, das ergibt {1}.',
  '{0} reads staves of {1} on {2}': '{0} liest Notenzeilen von {1} auf {2}',
  'From up to {0} away a space of these staves looks {1} minutes of arc tall at the least.':
    'Aus bis zu {0} Entfernung erscheint ein Zwischenraum dieser Notenzeilen mindestens {1} Bogenminuten hoch.',
  'Orchestra librarians take no staves under {0}; {1} reads best (MOLA guidelines, 2017).':
    'Orchesterbibliothekare nehmen keine Notenzeilen unter {0}; am besten lesbar sind {1} (MOLA guidelines, 2017).',
  'Staves under {0} may do at a stand of one’s own, less so where two read; {1} reads best (MOLA guidelines, 2017).':
    'Notenzeilen unter {0} mögen an einem eigenen Pult genügen, weniger, wo zwei lesen; am besten lesbar sind {1} (MOLA guidelines, 2017).',
  'Orchestra librarians avoid staves over {0} (MOLA guidelines, 2017).':
    'Orchesterbibliothekare meiden Notenzeilen über {0} (MOLA guidelines, 2017).',
  'Print them at {0} %, for {1}.': 'Mit {0} % drucken, das ergibt {1}.',
};
