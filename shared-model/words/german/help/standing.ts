/** The pages about where things and people stand, and about what can hurt them. */

import type { Entries } from '../../catalogue.ts';

export const standing: Entries = {
  'Things in each other’s place, or over the edge': 'Dinge am selben Fleck oder über der Kante',
  'Does everything that is drawn fit where it stands?': 'Passt alles Gezeichnete dorthin, wo es steht?',
  'Outlines on plan together with heights: a desk may hang over knees, legs of stands may stand between legs, a lamp may be clipped to a stand. Desks and the paper on them are compared as boards in space.':
    'Umrisse auf dem Plan zusammen mit den Höhen: Eine Auflage darf über Knien hängen, Füße von Pulten dürfen zwischen Beinen stehen, eine Lampe darf an ein Pult geklemmt sein. Auflagen und die Noten darauf werden als Platten im Raum verglichen.',
  'What overlaps is told with the shortest shift that parts the two. What reaches over the platform, or over the level it stands on, is told with how far it stands out.':
    'Was sich überschneidet, wird mit der kürzesten Verschiebung genannt, die beides trennt. Was über das Podium hinausragt oder über das Podest, auf dem es steht, wird mit seinem Überstand genannt.',
  'Two things take up the same room.': 'Zwei Dinge nehmen denselben Raum ein.',
  'Something reaches over the outline of the platform or of the level it stands on.':
    'Etwas ragt über den Umriss des Podiums oder des Podests hinaus, auf dem es steht.',
  'Outlines of instruments and furniture': 'Umrisse von Instrumenten und Mobiliar',
  'from the catalogue': 'aus dem Katalog',
  'The outline of the platform': 'Der Umriss des Podiums',
  'Form, size and height of a stand': 'Form, Größe und Höhe eines Pults',
  'Cables, bags, cases and whatever else nobody has drawn.':
    'Kabel, Taschen, Koffer und was sonst niemand gezeichnet hat.',
  'Whether a platform or a level bears what is set on it: loads are not computed at all.':
    'Ob ein Podium oder Podest trägt, was darauf steht: Lasten werden gar nicht berechnet.',
  'What stands over an edge can fall, and so can whoever follows it. {0}':
    'Was über eine Kante ragt, kann fallen, und wer ihm folgt, auch. {0}',
  'Elbow room': 'Ellbogenfreiheit',
  'Has each player the room beside him that his instrument wants?':
    'Hat jeder Spieler neben sich den Raum, den sein Instrument braucht?',
  'On either side of the middle of the body, as far as the arms go while playing: what stands there between the height of the waist and of the shoulders, the zones of neighbours and walls included.':
    'Auf beiden Seiten der Körpermitte, so weit die Arme beim Spielen reichen: was dort zwischen Taillen- und Schulterhöhe steht, die Zonen der Nachbarn und die Wände eingeschlossen.',
  'Wanted is half the breadth of the shoulders with what the instrument asks for beyond it, and never less than half the breadth over both elbows. A player’s own stand, instrument and table do not count against him.':
    'Gebraucht wird die halbe Schulterbreite und was das Instrument darüber hinaus verlangt, mindestens aber die halbe Breite über beide Ellbogen. Das eigene Pult, Instrument und der eigene Tisch zählen nicht gegen den Spieler.',
  'On one side there is less room than is wanted.': 'Auf einer Seite ist weniger Raum als gebraucht.',
  'Breadth of shoulders and over both elbows': 'Breite der Schultern und über beide Ellbogen',
  'from the stature': 'aus der Körpergröße',
  'What each instrument asks for beyond the shoulders':
    'Was jedes Instrument über die Schultern hinaus verlangt',
  'Arms are looked for before the body up to': 'Arme werden vor dem Körper gesucht bis',
  'Depth of a body': 'Tiefe des Körpers',
  'How tall the player is, and which instruments':
    'Wie groß der Spieler ist und welche Instrumente er spielt',
  'How somebody bows or breathes; who plays with wide gestures needs more.':
    'Wie jemand streicht oder atmet; wer mit weiten Gesten spielt, braucht mehr.',
  'Loudness: nothing here says how near a loud neighbour may be. That is for those who know hearing protection.':
    'Lautstärke: Nichts hier sagt, wie nah ein lauter Nachbar sein darf. Das ist Sache derer, die sich mit Gehörschutz auskennen.',
  'Open edges': 'Offene Kanten',
  'Does anybody play, or anything stand, near an edge that drops?':
    'Spielt jemand oder steht etwas nah an einer Kante, hinter der es hinabgeht?',
  'The distance on plan from players, chairs and the feet of stands to the nearest open edge of the platform, and to the nearest edge of the level that they stand on, where the floor beyond is lower by more than a step.':
    'Der Abstand auf dem Plan von Spielern, Stühlen und Füßen der Pulte zur nächsten offenen Kante des Podiums und zur nächsten Kante des Podests, auf dem sie stehen, wo der Boden dahinter um mehr als eine Stufe tiefer liegt.',
  'The distance is less than the one you ask for.': 'Der Abstand ist kleiner als der verlangte.',
  'Distance until you change it': 'Abstand, solange nichts anderes gesetzt ist',
  'Guards are spoken of where the drop is more than': 'Von Geländern ist die Rede bei einer Fallhöhe über',
  'Down a level people take for a step, up to': 'Abwärts gilt ein Podest als Stufe bis',
  'Distance from open edges': 'Abstand von offenen Kanten',
  'Which edges are open, and how high the platform is':
    'Welche Kanten offen sind und wie hoch das Podium ist',
  'Whether an edge is lit, marked, railed or watched, and what lies below.':
    'Ob eine Kante beleuchtet, markiert, gesichert oder beaufsichtigt ist und was darunter liegt.',
  'Building codes mostly leave the audience’s edge of a stage without a guard on purpose. That makes it no safer: the distance is a precaution of this tool, and no code’s requirement.':
    'Bauvorschriften lassen die Bühnenkante zum Publikum meist mit Absicht ohne Geländer. Das macht sie nicht sicherer: Der Abstand ist eine Vorsicht dieses Programms und keine Forderung einer Vorschrift.',
  'Falls from platforms injure people. {0}': 'Stürze von Podien verletzen Menschen. {0}',
  'Ways out: width, doors, steps': 'Ausgänge: Breite, Türen, Stufen',
  'Can everybody walk from his place to a way out of the platform?':
    'Kommt jeder von seinem Platz zu einem Ausgang des Podiums?',
  'For every player a real path round everything that stands on the floor, to a door or steps that are marked as a way out. Who can get out as wide as you ask gets the shortest such way; any other gets the widest there is, and its narrowest place is told as a tape across it would measure.':
    'Für jeden Spieler ein wirklicher Weg um alles herum, was auf dem Boden steht, zu einer Tür oder Treppe, die als Ausgang gekennzeichnet ist. Wer so breit hinauskommt wie verlangt, bekommt den kürzesten Weg dieser Breite; jeder andere den breitesten, den es gibt. Dessen engste Stelle wird so genannt, wie ein Bandmaß quer darüber sie misst.',
  'Right beside his own place a player may squeeze past. Nobody is led over the edge of a high level while there is another way, and ground before a door should be free as deep as the way is wide.':
    'Gleich neben seinem Platz darf sich ein Spieler vorbeizwängen. Niemand wird über die Kante eines hohen Podests geführt, solange es einen anderen Weg gibt, und vor einer Tür soll der Boden so tief frei sein, wie der Weg breit ist.',
  'Nothing on the platform is marked as a way out.': 'Nichts auf dem Podium ist als Ausgang gekennzeichnet.',
  'There is no way, or its narrowest place is less than you ask for.':
    'Es gibt keinen Weg, oder seine engste Stelle ist schmaler als verlangt.',
  'The only way goes over a step that is too high for one.':
    'Der einzige Weg führt über einen Absatz, der für eine Stufe zu hoch ist.',
  'Something stands close before a door.': 'Etwas steht dicht vor einer Tür.',
  'Width until you change it': 'Breite, solange nichts anderes gesetzt ist',
  'People take for a step what is not higher than': 'Als Stufe gilt, was nicht höher ist als',
  'Within this distance of his own place a player squeezes past':
    'Bis zu diesem Abstand vom eigenen Platz zwängt sich ein Spieler vorbei',
  '{0}, through at least {1}': '{0}, durch mindestens {1}',
  'Width of the ways': 'Breite der Wege',
  'Which openings are ways out': 'Welche Öffnungen Ausgänge sind',
  'What lies beyond a door, whether it is locked, which way it opens, and how many people leave by it.':
    'Was hinter einer Tür liegt, ob sie abgeschlossen ist, wohin sie aufgeht und wie viele dort hinausgehen.',
  'Smoke, darkness and haste. This is no plan of escape.':
    'Rauch, Dunkelheit und Eile. Dies ist kein Fluchtplan.',
  'The ways of the audience: rows, aisles and exits of the house are not judged.':
    'Die Wege des Publikums: Reihen, Gänge und Ausgänge des Saals werden nicht beurteilt.',
  'Ways out save lives, and only those who are responsible for the building can say what is enough. {0}':
    'Ausgänge retten Leben, und nur wer für das Gebäude verantwortlich ist, kann sagen, was genügt. {0}',
  'Clear width that a standard speaks of': 'Freie Breite, von der eine Norm spricht',
  'Narrower for a short piece': 'Schmaler auf einem kurzen Stück',
  '{0} over at most {1}, such pieces at least {2} apart':
    '{0} auf höchstens {1}, zwischen solchen Stücken mindestens {2}',
  'Cables across ways': 'Kabel quer über Wege',
  'Does a cable lie where somebody walks or rolls out?':
    'Liegt ein Kabel, wo jemand hinausgeht oder hinausrollt?',
  'The line of each lamp’s cable against the strip that everybody’s way out takes up. A cable that is covered is named only where wheels go over it.':
    'Die Linie jedes Lampenkabels gegen den Streifen, den der Weg jedes Spielers nach draußen einnimmt. Ein abgedecktes Kabel wird nur genannt, wo Räder darüberrollen.',
  'An uncovered cable lies across a way.': 'Ein nicht abgedecktes Kabel liegt quer über einem Weg.',
  'Wheels go over the cover on a cable.': 'Räder rollen über die Abdeckung eines Kabels.',
  'Right beside his place, up to here, a player’s own cable does not count':
    'Gleich neben dem eigenen Platz zählt das eigene Kabel nicht, bis',
  'Where the cable runs, and whether it is covered': 'Wo das Kabel liegt und ob es abgedeckt ist',
  'Other cables than those of lamps, and slack that lies about.':
    'Andere Kabel als die der Lampen und lose Kabelreserven.',
  'Whether a cover is fit to be walked or rolled over, and anything electrical: load, damp, earthing, heat.':
    'Ob eine Abdeckung begehbar oder befahrbar ist, und alles Elektrische: Last, Nässe, Erdung, Wärme.',
  'People trip over cables and are hurt by current. {0}':
    'Menschen stolpern über Kabel, und Strom verletzt. {0}',
  'Wheelchairs: step-free ways and room to turn': 'Rollstühle: stufenlose Wege und Platz zum Wenden',
  'Can somebody in a wheelchair get to his place and away, and turn there?':
    'Kommt jemand im Rollstuhl zu seinem Platz und wieder weg, und kann er dort wenden?',
  'For everybody who comes in a wheelchair a way without steps to a way out that is marked as step-free, as wide as you ask for and never less than the clear width below.':
    'Für alle, die im Rollstuhl kommen, ein Weg ohne Stufen zu einem Ausgang, der als stufenlos gekennzeichnet ist, so breit wie verlangt und nie schmaler als die freie Breite unten.',
  'The widest free circle over his place, over each bend in which his way turns back, and where it ends.':
    'Der größte freie Kreis über dem Platz, über jeder Kehre des Weges und an seinem Ende.',
  'No way out is marked as step-free.': 'Kein Ausgang ist als stufenlos gekennzeichnet.',
  'The place is on a level that wheels cannot leave.':
    'Der Platz ist auf einem Podest, das Räder nicht verlassen können.',
  'There is no step-free way, or it is narrower than asked.':
    'Es gibt keinen stufenlosen Weg, oder er ist schmaler als verlangt.',
  'The circle to turn in is smaller than below.': 'Der Kreis zum Wenden ist kleiner als unten angegeben.',
  'Circle to turn in': 'Kreis zum Wenden',
  'One turns back in a single bend round what is less wide than':
    'In einer einzigen Kehre umfährt man, was schmaler ist als',
  'Before a door the middle of a wheelchair comes to a stand at':
    'Vor einer Tür kommt die Mitte eines Rollstuhls zum Stehen bei',
  'Wheels get over a rise of': 'Räder kommen über eine Schwelle von',
  'Who comes in a wheelchair': 'Wer im Rollstuhl kommt',
  'Which ways out are step-free': 'Welche Ausgänge stufenlos sind',
  'Ramps and lifts on the platform, slopes, thresholds and the size of the wheelchair itself.':
    'Rampen und Aufzüge auf dem Podium, Gefälle, Schwellen und die Größe des Rollstuhls selbst.',
  'What somebody can and wants to do. Ask, and try the way together.':
    'Was jemand kann und möchte. Fragen und den Weg gemeinsam ausprobieren.',
  'Nothing here says that a place is accessible or that any rule is kept. {0}':
    'Nichts hier sagt, dass ein Platz barrierefrei ist oder dass eine Vorschrift eingehalten wird. {0}',
};
