/** Findings of the checks on seeing, facing and page plans; what is tried against findings of all kinds. */

import type { Entries } from '../catalogue.ts';

export const findings: Entries = {
  'Try: {0}': 'Versuch: {0}',
  'There are {0} more of this kind, not listed; mend the ones in the list first.':
    'Weitere dieser Art, die nicht aufgeführt sind: {0}; zuerst die aufgeführten beheben.',
  'you asked for {0}': 'verlangt sind {0}',
  '{0} is kept here': 'hier gelten {0}',
  '{0} is wanted here': 'hier gelten {0}',
  '{0} and {1}': '{0} und {1}',
  '{0} and {1} more': '{0} und {1} weitere',
  '{0} of {1} places do not see {2} well': 'Von {0} der {1} Plätze aus ist {2} nicht gut zu sehen',
  '{0} of the places see {1} well; {2}.': 'Von {0} der Plätze aus ist {1} gut zu sehen; {2}.',
  '{0} sees least, {1}.': 'Am wenigsten sieht {0}: {1}.',
  'Those that do not are{0}; {1} sees least, {2}.':
    'Ohne gute Sicht sind Plätze{0}; am wenigsten sieht {1}: {2}.',
  ' in several blocks ({0})': ' in mehreren Blöcken ({0})',
  ' in row {0}': ' in Reihe {0}',
  ' in rows {0} to {1}': ' in den Reihen {0} bis {1}',
  'one place': '1 Platz',
  '{0} places': '{0} Plätze',
  'heads in {0}': 'Köpfe in {0}',
  'the rail of {0}': 'das Geländer von {0}',
  '{0} hide most: {1}.': '{0} verdecken am meisten: {1}.',
  '{0} hides most: {1}.': '{0} verdeckt am meisten: {1}.',
  '{0} on average': 'im Mittel {0}',
  '{0}, from {1}{2}, {3} on average over the house': '{0}, für {1}{2}, im Mittel über den Saal {3}',
  'the lower third': 'das untere Drittel',
  'the middle': 'die Mitte',
  'the upper third': 'das obere Drittel',
  'the lower two thirds': 'die unteren zwei Drittel',
  'the upper two thirds': 'die oberen zwei Drittel',
  'nearly everything': 'fast alles',
  'some of {0}': 'Teile von {0}',
  'Lower the desk, lay it flatter, or move it to the side of {0}.':
    'Auflage tiefer stellen, flacher neigen oder seitlich von {0} aufstellen.',
  'Set the two apart sideways.': 'Beide seitlich auseinanderrücken.',
  'Set the two apart sideways, or raise {0} on a riser.':
    'Beide seitlich auseinanderrücken oder {0} auf ein Podest setzen.',
  'Move {0} to the side or forward.': '{0} zur Seite oder nach vorn setzen.',
  'Move {0} to the side or forward, or raise them on a riser.':
    '{0} zur Seite, nach vorn oder auf ein Podest setzen.',
  poor: 'schlecht',
  'between the heads in front': 'zwischen den Köpfen davor',
  'well, with the head tilted back': 'gut, Kopf im Nacken',
  optimal: 'optimal',
  'even over hats': 'sogar über Hüte hinweg',
  'an article for architects after FIFA, as quoted':
    'ein Artikel für Architekten nach der FIFA, nach einem Zitat',
  'P. Shepherd, "Sightlines", University of Bath, 2012, for stadiums':
    'P. Shepherd, „Sightlines“, University of Bath, 2012, für Stadien',
  '{0} and {1} cannot see each other’s eyes': '{0} und {1} haben keinen Blickkontakt',
  '{0} stands in the line between their eyes and reaches {1} above it.':
    '{0} steht in der Linie zwischen den Augen und ragt {1} über sie hinaus.',
  '{0} stand in the line between their eyes; {1} reaches {2} above it.':
    '{0} stehen in der Linie zwischen den Augen; {1} ragt {2} über sie hinaus.',
  'Then look at the others in the line.': 'Danach die anderen in der Linie ansehen.',
  'Close the lid of {0}.': 'Deckel schließen ({0}).',
  'Put the lid of {0} on half stick.': 'Deckel halb öffnen, auf die kurze Stütze ({0}).',
  'Lower {0} by {1}.': '{0} um {1} tiefer stellen.',
  'Tilt the desk of {0} flatter, or move it out of the line: its model does not go {1} lower.':
    'Auflage von {0} flacher neigen oder aus der Linie rücken: {1} tiefer geht dieses Modell nicht.',
  'Move one of the three sideways.': 'Einen der drei zur Seite setzen.',
  'Move one of the two sideways.': 'Einen der beiden zur Seite setzen.',
  'Move one of the two sideways, or {0} out of the line.':
    'Einen der beiden zur Seite setzen oder {0} aus der Linie rücken.',
  'Move {0} out of the line.': '{0} aus der Linie rücken.',
  '{0} turns the whole body to look at {1}': '{0} dreht den ganzen Körper, um {1} anzusehen',
  '{0}, and: {1}': '{0}, dazu: {1}',
  'Lay {0} {1}° flatter': '{0} um {1}° flacher legen',
  '{0} hides {1} players from too many places': '{0} verdeckt {1} Spieler vor zu vielen Plätzen',
  '{0} is in the way of {1} pairs who must see each other':
    '{0} ist {1} Paaren im Weg, die einander sehen müssen',
  '{0} turns the whole body to look at {1} others': '{0} dreht den ganzen Körper, um {1} andere anzusehen',
  'The ways out of {0} players are narrow at {1}': 'Die Wege hinaus sind für {0} Spieler eng: {1}',
  'The ways out of {0} players go over the edge of {1}':
    'Die Wege hinaus führen für {0} Spieler über eine Kante: {1}',
  '{0} is {1} to the left of straight ahead.': '{0} ist {1} links vom Blick geradeaus.',
  '{0} is {1} to the right of straight ahead.': '{0} ist {1} rechts vom Blick geradeaus.',
  '{0} is {1} to the left of the page on {2}.': '{0} ist {1} links vom Blick auf die Seite ({2}).',
  '{0} is {1} to the right of the page on {2}.': '{0} ist {1} rechts vom Blick auf die Seite ({2}).',
  'Eyes alone turn {0}°, with the head {1}° (NUREG-0700, after MIL-STD-1472G).':
    'Die Augen allein drehen sich um {0}°, mit dem Kopf um {1}° (NUREG-0700, nach MIL-STD-1472G).',
  'That is still at the edge of the field of view, {0}° to either side.':
    'Das liegt noch am Rand des Gesichtsfelds, {0}° nach jeder Seite.',
  'That is outside the field of view, {0}° to either side.':
    'Das liegt außerhalb des Gesichtsfelds, {0}° nach jeder Seite.',
  'From {0} to {1} it is {2}{3}.': 'Von {0} zu {1} sind es {2}{3}.',
  ', a turn of the eyes': ', eine Drehung der Augen',
  ', a turn of the head': ', eine Drehung des Kopfes',
  ', a turn of the whole body too': ', auch eine Drehung des ganzen Körpers',
  'Set {0} or those whom they must see elsewhere: no way of facing suits all of them.':
    '{0} oder die anzusehenden Spieler umsetzen: keine Blickrichtung passt zu allen.',
  'Set {0} or those whom they must see elsewhere: no place of the page suits all of them.':
    '{0} oder die anzusehenden Spieler umsetzen: keine Lage der Seite passt zu allen.',
  'Set {0} or {1} elsewhere: turned round far enough for all whom they must see, {2} would have the back to the house.':
    '{0} oder {1} umsetzen: Weit genug für den Blick zu allen gedreht, hätte {2} den Rücken zum Saal.',
  '{0} and the page': '{0} und die Seite',
  'Turn {0} {1} to the left, which leaves a turn of the head for all whom they must see.':
    '{0} um {1} nach links drehen (vom Spieler aus); dann genügt für den Blick zu allen eine Drehung des Kopfes.',
  'Turn {0} {1} to the right, which leaves a turn of the head for all whom they must see.':
    '{0} um {1} nach rechts drehen (vom Spieler aus); dann genügt für den Blick zu allen eine Drehung des Kopfes.',
  '{0} faces away from the house': '{0} ist vom Saal abgewandt',
  '{0} from straight at the house; a profile is {1}°.':
    'Der Winkel zur Richtung gerade zum Saal beträgt {0}; ein Profil sind {1}°.',
  'Turn them back by {0}, to a profile.': 'Um {0} zurückdrehen, bis zum Profil.',
  'Leave it if it is meant so.': 'So lassen, wenn es so gemeint ist.',
  'The page plan that is kept breaks a rule': 'Der gespeicherte Seitenplan verletzt eine Regel',
  'The page plan that is kept breaks {0} rules': 'Der gespeicherte Seitenplan verletzt {0} Regeln',
  'The page turns list the other.': 'Die andere verletzte Regel steht bei den Wendestellen.',
  'The page turns list the other {0}.': 'Die anderen {0} verletzten Regeln stehen bei den Wendestellen.',
  'Change the turns or the pages by hand, or plan the page turns again.':
    'Wendestellen oder Seiten von Hand ändern oder die Wendestellen neu planen.',
  'None of the changes tried clears this without making something else worse.':
    'Keine der ausprobierten Änderungen hilft, ohne anderes zu verschlechtern.',
  'Against this nothing was tried here; the window tries changes, one finding at a time.':
    'Hiergegen wurde nichts ausprobiert; das Fenster probiert Änderungen aus, Befund für Befund.',
  '{0} (tried).': '{0} (ausprobiert).',
  'Lower {0} by {1}': '{0} um {1} tiefer stellen',
  'Raise {0} by {1}': '{0} um {1} höher stellen',
  'Move {0} by {1}': '{0} um {1} verschieben',
  '{0} towards {1}': '{0} nach {1}',
  '{0} upstage': '{0} nach hinten',
  '{0} downstage': '{0} nach vorn',
  'stage left': 'rechts (vom Saal)',
  'stage right': 'links (vom Saal)',
  'Turn {0} by {1}': '{0} um {1} drehen',
  '{0}° towards {1}': '{0}° nach {1}',
  'Turn {0} by {1}, and swing {2} round to match': '{0} um {1} drehen und {2} entsprechend mitdrehen',
  'Cover the cable of {0} with a ramp or mat': 'Kabel mit Rampe oder Matte abdecken ({0})',
  'There is no such cable any more.': 'Dieses Kabel gibt es nicht mehr.',
  'There is no "{0}" any more.': '„{0}“ gibt es nicht mehr.',
  '{0} has no desk to lower.': 'Keine Auflage zum Tieferstellen: {0}.',
  'cover the cable of {0}': 'Kabel abdecken: {0}',
  'lower {0}': 'Tiefer stellen: {0}',
  'lay {0} flatter': 'Flacher legen: {0}',
  '{0}, {1}': '{0}, {1}',
};
