/** Findings of the checks on the room: edges, ways, doors, cables, elbows, wheelchairs. */

import type { Entries } from '../catalogue.ts';

export const findingsRoom: Entries = {
  'Local codes, the venue and licensed practice decide.':
    'Es entscheiden die örtlichen Vorschriften, die Spielstätte und zugelassene Fachleute.',
  '{0} and {1} run into each other': '{0} und {1} überschneiden sich',
  'They overlap by {0}.': 'Sie überschneiden sich um {0}.',
  'They overlap by {0} on the floor.': 'Sie überschneiden sich am Boden um {0}.',
  'Set them {0} apart.': 'Um {0} auseinanderrücken.',
  'There are more of these; mend the ones in the list first.':
    'Davon gibt es mehr; zuerst die aufgeführten beheben.',
  '{0} reaches over the edge of its level': '{0} ragt über die Kante des Podests',
  '{0} reaches over the edge of the platform': '{0} ragt über die Kante des Podiums',
  'The part outside is {0} deep.': 'Der Überstand ist {0} tief.',
  'Move it in by {0}.': 'Um {0} nach innen rücken.',
  'Move them in by {0}.': 'Um {0} nach innen rücken.',
  '{0} lacks elbow room': '{0} hat zu wenig Ellbogenfreiheit',
  '{0} leaves {1} on the left, counted from the middle of the body; {2} are wanted.':
    '{0} lässt links von der Körpermitte {1}; gebraucht werden {2}.',
  '{0} leaves {1} on the right, counted from the middle of the body; {2} are wanted.':
    '{0} lässt rechts von der Körpermitte {1}; gebraucht werden {2}.',
  'The wall': 'Die Wand',
  'Make {0} more room there.': 'Dort {0} mehr Platz schaffen.',
  '{0} is near an open edge': '{0} ist nah an einer offenen Kante',
  '{0} is near an open edge of {1}': '{0} ist nah an einer offenen Kante von {1}',
  '{0} to the edge, with a drop of {1}; {2}.': '{0} bis zur Kante, Fallhöhe {1}; {2}.',
  '{0} from the edge of {1}, which drops {2}; {3}.': '{0} bis zur Kante von {1}, Fallhöhe {2}; {3}.',
  'The distance is the tool’s own precaution.': 'Diesen Abstand setzt das Programm selbst, zur Vorsicht.',
  'The distance is the tool’s own precaution; over drops of more than {0} IBC 1015.2 asks for guards.':
    'Diesen Abstand setzt das Programm selbst, zur Vorsicht; bei mehr als {0} Fallhöhe verlangt IBC 1015.2 Geländer.',
  'Move it in by {0}, or mark and watch the edge.':
    'Um {0} nach innen rücken oder die Kante kennzeichnen und beaufsichtigen.',
  'Move them in by {0}, or mark and watch the edge.':
    'Um {0} nach innen rücken oder die Kante kennzeichnen und beaufsichtigen.',
  '{0} stands before {1}': '{0} steht vor einer Tür: {1}',
  '{0} are free before the door; {1} are wanted.': 'Vor der Tür sind {0} frei; gebraucht werden {1}.',
  'Keep the way through the door free.': 'Den Weg durch die Tür frei halten.',
  '{0} has no way out': '{0} hat keinen Weg zum Ausgang',
  'No way from {0} to an exit is wide enough for a person.':
    'Kein Weg von {0} zu einem Ausgang ist breit genug für eine Person.',
  'Open a way of {0}.': 'Einen Weg von {0} Breite öffnen.',
  'The way out for {0} is narrow': '{0} hat nur einen engen Weg zum Ausgang',
  '{0} at its narrowest{1}; {2}.': '{0} an der engsten Stelle{1}; {2}.',
  '{0} at its narrowest{1}; {2} are wanted.': '{0} an der engsten Stelle{1}; gebraucht werden {2}.',
  ', at {0}': ' ({0})',
  ', beside {0}': ', neben {0}',
  ', between {0} and {1}': ', zwischen {0} und {1}',
  'the edge of the platform': 'Podiumskante',
  'ADA/ABA 403.5.1 speaks of {0}, and of {1} over at most {2}.':
    'ADA/ABA 403.5.1 spricht von {0} und von {1} auf höchstens {2}.',
  'Widen it by {0} there.': 'Dort um {0} verbreitern.',
  'Open another way out, or agree on this door with the venue.':
    'Einen anderen Weg zum Ausgang öffnen oder diese Tür mit der Spielstätte absprechen.',
  'The way out for {0} goes over a step of {1}': '{0} muss auf dem Weg zum Ausgang über eine Stufe von {1}',
  'It is at {0}, and no way round it was found. Up to {1} the tool takes it for a step like any other, a figure of its own.':
    'Sie liegt an {0}; ein Weg herum wurde nicht gefunden. Bis {1} gilt sie dem Programm als gewöhnliche Stufe, nach eigener Festlegung.',
  'Set steps at {0}, or open a way round.': 'Stufen an {0} aufstellen oder einen Weg herum öffnen.',
  'The cable of {0} lies across a way out': 'Das Kabel von {0} liegt quer über einem Weg zum Ausgang',
  '{0} goes over it.': '{0} geht darüber.',
  '{0} of them go over it, {1} among them.': '{0} Spieler gehen darüber, darunter {1}.',
  'Lay it along the wall, or cover it with a ramp or mat.':
    'Kabel an der Wand entlang legen oder mit Rampe oder Matte abdecken.',
  'The platform has no way out': 'Das Podium hat keinen Ausgang',
  'No door or step of the platform is marked as a way out.':
    'Keine Tür oder Stufe des Podiums ist als Ausgang gekennzeichnet.',
  'Add the door or the steps that people leave by.':
    'Die Tür oder die Stufen hinzufügen, die als Ausgang dienen.',
  'No way out is free of steps for {0}': 'Für {0} ist kein Ausgang ohne Stufen',
  'No exit of the platform is marked as free of steps, and a wheelchair goes over none.':
    'Kein Ausgang des Podiums ist als stufenlos gekennzeichnet, und ein Rollstuhl fährt über keine Stufe.',
  'Mark the exit that has a ramp or a lift, or agree on one with the venue.':
    'Den Ausgang mit Rampe oder Aufzug kennzeichnen oder einen mit der Spielstätte absprechen.',
  '{0} cannot roll off a level': '{0} kann nicht vom Podest herunterrollen',
  '{0} cannot roll off {1}': '{0} kann nicht von {1} herunterrollen',
  'The wheelchair is {0} above the floor of the platform. Ramps between levels are not known to this plan.':
    'Der Rollstuhl steht {0} über dem Boden des Podiums. Rampen zwischen Ebenen kennt dieser Plan nicht.',
  'Set them on the floor of the platform, or lay a ramp and try it together.':
    'Auf den Boden des Podiums setzen oder eine Rampe legen und gemeinsam ausprobieren.',
  '{0} has no way out for a wheelchair': '{0} hat für den Rollstuhl keinen Weg zum Ausgang',
  'No way from {0} to an exit without steps is wide enough to get through.':
    'Kein Weg von {0} zu einem Ausgang ohne Stufen ist breit genug zum Durchfahren.',
  'Open a way of {0} without steps.': 'Einen Weg von {0} Breite ohne Stufen öffnen.',
  'The way out for {0} is narrow for a wheelchair':
    '{0} hat für den Rollstuhl nur einen engen Weg zum Ausgang',
  '{0} has little room to turn a wheelchair at the place':
    '{0} hat am Platz wenig Raum, den Rollstuhl zu wenden',
  '{0} has little room to turn a wheelchair at {1}': '{0} hat wenig Raum, den Rollstuhl zu wenden: {1}',
  '{0} has little room to turn a wheelchair where the way out turns back':
    '{0} hat in der Kehre des Wegs zum Ausgang wenig Raum, den Rollstuhl zu wenden',
  'The widest free circle there measures {0}; ADA/ABA 304.3.1 speaks of {1}.':
    'Der größte freie Kreis dort misst {0}; ADA/ABA 304.3.1 spricht von {1}.',
  'Clear {0} more there.': 'Dort {0} mehr frei machen.',
  'Wheels go over the cover on the cable of {0}': 'Räder rollen über die Abdeckung am Kabel von {0}',
  'It lies across the way of {0}, who uses a wheelchair.': 'Sie liegt auf dem Weg von {0} im Rollstuhl.',
  'It lies across the way of {0} wheelchairs, that of {1} among them.':
    'Sie liegt auf dem Weg von {0} Rollstühlen, darunter {1}.',
  'Cross it together beforehand, or lay the cable elsewhere: a ramp or mat may still stop or tip a wheelchair.':
    'Vorher gemeinsam darüberfahren oder das Kabel anders legen: Eine Rampe oder Matte kann einen Rollstuhl trotzdem aufhalten oder kippen.',
};
