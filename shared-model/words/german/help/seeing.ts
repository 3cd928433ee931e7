/** The pages about seeing: what the house sees, row over row, each other, and the notes. */

import type { Entries } from '../../catalogue.ts';

export const seeing: Entries = {
  'What the house sees': 'Was der Saal sieht',
  'From how many places of the house is each player seen well?':
    'Von wie vielen Plätzen im Saal ist jeder Spieler gut zu sehen?',
  'Every player has a window: an upright rectangle through the middle of his body, square to the line from the eye, as wide as the shoulders, from the waist (or the lowest part of the instrument that shows) to the top of the head.':
    'Jeder Spieler hat ein Fenster: ein aufrechtes Rechteck durch die Körpermitte, quer zur Sichtlinie vom Auge her, so breit wie die Schultern, von der Taille (oder vom tiefsten sichtbaren Teil des Instruments) bis zum Scheitel.',
  'From the eye of every place, desks with their paper, other players and what they hold, pianos, tables, large instruments, levels, rails and the edge of the platform throw shadows on that window. The visible share is the part of its area that no shadow covers. Shadows are joined as shapes and measured exactly; no points are sampled.':
    'Vom Auge jedes Platzes aus werfen Auflagen mit ihren Noten, andere Spieler und was sie halten, Klaviere, Tische, Großinstrumente, Podeste, Geländer und die Kante des Podiums Schatten auf dieses Fenster. Der sichtbare Anteil ist der Teil der Fläche, auf den kein Schatten fällt. Die Schatten werden als Flächen vereinigt und genau gemessen; es gibt keine Stichproben.',
  'A place sees a player well when its share reaches your limit. The figure under the plan is the share of places that do; it also tells the middle place and the worst one.':
    'Ein Platz sieht einen Spieler gut, wenn dieser Anteil den Grenzwert erreicht. Der Wert unter dem Plan ist der Anteil der Plätze, für die das gilt; dazu kommen der mittlere und der schlechteste Platz.',
  'Fewer places see the player well than you ask for.': 'Weniger Plätze als verlangt sehen den Spieler gut.',
  'Bands of the coloured seats begin at': 'Die Stufen der farbigen Plätze beginnen bei',
  'Heights and breadths of bodies': 'Höhen und Breiten des Körpers',
  'from the stature': 'aus der Körpergröße',
  'Depth of a body, chest to back': 'Tiefe des Körpers, von der Brust zum Rücken',
  'A rail stands before the eyes of the front row by':
    'Abstand einer Brüstung vor den Augen der ersten Reihe',
  'Limits until you change them': 'Grenzwerte, solange nichts anderes gesetzt ist',
  '{0} of a player, from {1} of the places': '{0} eines Spielers, von {1} der Plätze aus',
  'How much of a player a place must see': 'Wie viel ein Platz von einem Spieler sehen muss',
  'How many of the places must': 'Wie viele der Plätze das müssen',
  'Whether heads in front count': 'Ob die Köpfe davor mitzählen',
  'Where the places are, and how high their eyes': 'Wo die Plätze sind und wie hoch die Augen dort',
  'How tall a player is, and what he sits on': 'Wie groß ein Spieler ist und worauf er sitzt',
  'Arms, legs and chairs, lamps and the thin columns of stands are left out; a body is two upright rounds and a head.':
    'Arme, Beine und Stühle, Lampen und die dünnen Säulen der Pulte bleiben weg; ein Körper besteht aus zwei aufrechten Rundkörpern und einem Kopf.',
  'Of the room only what is on the plan is known: no pillars, balconies or lighting rigs that nobody has drawn.':
    'Vom Saal ist nur bekannt, was auf dem Plan steht: keine Säulen, Ränge oder Scheinwerferzüge, die niemand gezeichnet hat.',
  'Nobody moves here: a leaning player or a turned head is not followed.':
    'Hier bewegt sich niemand: Vorgebeugte Spieler und gedrehte Köpfe werden nicht verfolgt.',
  'How much of a player is enough is a matter of taste; no standard says it of a concert.':
    'Wie viel von einem Spieler genügt, ist Geschmackssache; für Konzerte sagt das keine Norm.',
  'Row over row: the section and its C-value': 'Reihe über Reihe: der Schnitt und sein C-Wert',
  'By how much does the line of sight of a row clear the eyes in front?':
    'Wie weit geht die Sichtlinie einer Reihe über die Augen davor hinweg?',
  'C = D · (N + R) / (D + T) − R. D is how far the eye in front is from what is looked at, R how high it is above that point, T the depth of the row and N the step up to the eyes behind. C is how far above the eye in front the line of sight passes, so a head is cleared only where C is more than its height above the eye.':
    'C = D · (N + R) / (D + T) − R. D ist der Abstand des vorderen Auges vom betrachteten Punkt, R seine Höhe über diesem Punkt, T die Tiefe der Reihe und N die Stufe bis zu den Augen dahinter. C sagt, wie hoch die Sichtlinie über dem vorderen Auge verläuft. Über den Kopf hinweg geht sie also nur, wo C größer ist als dessen Höhe über dem Auge.',
  'D and R are those of the person in front. The point looked at is the floor at the edge of the platform, or the lowest point of a player’s window, as you choose in the section.':
    'D und R gelten für die Person davor. Betrachtet wird der Boden an der Kante des Podiums oder der tiefste Punkt im Fenster eines Spielers, je nach Wahl im Schnitt.',
  'Where rows are staggered, the row that counts is the nearest one with a head in line. The table also gives the step that a wanted C would need.':
    'Wo Reihen auf Lücke stehen, zählt die nächste Reihe mit einem Kopf in der Blickrichtung. Die Tabelle nennt auch die Stufe, die ein gewünschter C-Wert bräuchte.',
  'The formula': 'Die Formel',
  'as above': 'wie oben',
  'Depth and step of the rows, height of the eyes': 'Tiefe und Stufe der Reihen, Augenhöhe',
  'The bands were written for stadiums; for a hall they are a comparison and not a rule.':
    'Die Stufen der Bewertung wurden für Stadien geschrieben; für einen Saal sind sie ein Vergleich und keine Regel.',
  'All eyes of a block are equally high, and everybody sits upright.':
    'Alle Augen eines Blocks sind gleich hoch, und alle sitzen aufrecht.',
  'The formula sees one line in an upright plane. What really hides a player, from the side too, is what the seats on the plan show.':
    'Die Formel sieht eine Linie in einer senkrechten Ebene. Was einen Spieler wirklich verdeckt, auch von der Seite, zeigen die Plätze auf dem Plan.',
  'C from {0}': 'C ab {0}',
  'C below {0}': 'C unter {0}',
  'Seeing each other, and facing the house': 'Einander sehen und zum Saal blicken',
  'Can those who must see each other do so, and how far does each turn for it?':
    'Können sich alle sehen, die es müssen, und wie weit dreht sich jeder dafür?',
  'For every two players who must see each other: whether the straight line from eyes to eyes passes over or beside everything that stands there, and by how much the worst thing would have to come down.':
    'Für je zwei Spieler, die sich sehen müssen: ob die gerade Linie von Augen zu Augen über alles oder an allem vorbei geht, was dort steht, und um wie viel das Schlimmste tiefer müsste.',
  'How far each has to turn from what he reads to the other’s face: a glance, with the eyes, with the head, or with the whole body. It is not the same both ways.':
    'Wie weit sich jeder von seinen Noten zum Gesicht des anderen dreht: mit einem kurzen Blick, mit den Augen, mit dem Kopf oder mit dem ganzen Körper. Das ist nicht in beiden Richtungen gleich.',
  'For each player, the angle between where he faces and straight at the house.':
    'Für jeden Spieler der Winkel zwischen seiner Blickrichtung und der Richtung gerade zum Saal.',
  'Something stands in the line between their eyes.':
    'Etwas steht in der Linie zwischen den Augen der beiden.',
  'One of the two has to turn the body (over {0}°).': 'Einer von beiden muss den Körper drehen (über {0}°).',
  'The player faces away from the house by more than a profile ({0}°).':
    'Der Spieler ist weiter vom Saal abgewandt als im Profil ({0}°).',
  'A glance, with the eyes, with the head: up to': 'Kurzer Blick, mit den Augen, mit dem Kopf: bis',
  'Noticed at the edge of the view without turning, up to':
    'Ohne Drehung am Rand des Gesichtsfelds bemerkt, bis',
  '{0}° to one side': '{0}° zu einer Seite',
  Profile: 'Profil',
  'Height of eyes': 'Höhe der Augen',
  'Who must see whom: until you say otherwise, everybody everybody':
    'Wer wen sehen muss: solange nichts anderes gesetzt ist, alle alle',
  'How high the desks are': 'Wie hoch die Auflagen sind',
  'How far the lid is open': 'Wie weit der Deckel offen ist',
  'Whether a cue can be read in a face from there, and in that light, is not known.':
    'Ob ein Einsatz aus dieser Entfernung und in diesem Licht am Gesicht abzulesen ist, ist nicht bekannt.',
  'Players keep still: nobody leans out to look past a stand.':
    'Spieler bleiben still: Niemand beugt sich zur Seite, um an einem Pult vorbeizusehen.',
  'How two take their cues is theirs to say. Take the tick away where they may do without seeing each other.':
    'Wie sich zwei verständigen, ist ihre Sache. Wo sie ohne Blickkontakt auskommen, das Häkchen wegnehmen.',
  'Reading: angle, distance, width of the row, size of the staves':
    'Lesen: Winkel, Entfernung, Breite der Seitenreihe, Höhe der Notenzeilen',
  'Can the player read every page from where he sits or stands?':
    'Kann der Spieler von seinem Sitz oder Standort aus jede Seite lesen?',
  'From the eyes to each page as it lies on the desk: the distance to the nearest and the farthest line, and the angle between the line of sight and the upright on the page, at its middle and at the line that is worst off.':
    'Von den Augen zu jeder Seite, wie sie auf der Auflage liegt: die Entfernung zur nächsten und zur fernsten Zeile und der Winkel zwischen der Sichtlinie und der Senkrechten auf der Seite, in ihrer Mitte und an der ungünstigsten Zeile.',
  'How high a space of the staves looks, in minutes of arc, with the tilt of the page reckoned in; and how far eyes and head turn from the middle of a row of pages to its end.':
    'Wie hoch ein Zwischenraum der Notenzeilen erscheint, in Bogenminuten, die Neigung der Seite eingerechnet; und wie weit sich Augen und Kopf von der Mitte einer Seitenreihe zu ihrem Ende drehen.',
  'The printed size of the staves, if it is known, is compared with what orchestra librarians ask for. Where anyone may play, the small and the tall end are both looked at and the worse one is told.':
    'Die gedruckte Höhe der Notenzeilen wird, falls bekannt, mit dem verglichen, was Orchesterbibliothekare verlangen. Bei beliebigem Spieler werden das kleine und das große Ende betrachtet, und das Ungünstigere wird genannt.',
  'The page is seen on edge or from behind ({0}° or more).':
    'Die Seite wird genau von der Kante oder von hinten gesehen (ab {0}°).',
  'The middle of the page is seen at more than {0}°.':
    'Die Mitte der Seite wird unter mehr als {0}° gesehen.',
  'Only outer lines are seen at more than {0}°.': 'Nur äußere Zeilen werden unter mehr als {0}° gesehen.',
  'The row is so wide that the body turns (over {0}° to one side).':
    'Die Seitenreihe ist so breit, dass sich der Körper dreht (über {0}° zu einer Seite).',
  'The head turns (over {0}°).': 'Der Kopf dreht sich (über {0}°).',
  'Staves are lower than {0}.': 'Die Notenzeilen sind niedriger als {0}.',
  'Two read from staves lower than {0}.': 'Zwei lesen aus Notenzeilen, die niedriger sind als {0}.',
  'Staves are higher than {0}, which librarians avoid.':
    'Die Notenzeilen sind höher als {0}, was Bibliothekare vermeiden.',
  'A space of the staves looks lower than {0} minutes of arc.':
    'Ein Zwischenraum der Notenzeilen erscheint niedriger als {0} Bogenminuten.',
  'Steepest angle of a page': 'Steilster Winkel einer Seite',
  'Staves: least, most readable, to be avoided above':
    'Notenzeilen: mindestens, am besten lesbar, zu vermeiden über',
  'Margin between the edge of a page and its lines': 'Rand zwischen der Seitenkante und den Notenzeilen',
  'Least height of lettering': 'Geringste Höhe von Schrift',
  '{0} minutes of arc': '{0} Bogenminuten',
  'Least height of one of the {0} spaces of a staff, taken from that of lettering':
    'Geringste Höhe eines der {0} Zwischenräume einer Notenzeile, abgeleitet aus der Höhe von Schrift',
  'Height and tilt of the desk, pages side by side, size of the staves':
    'Höhe und Neigung der Auflage, Seiten nebeneinander, Höhe der Notenzeilen',
  'How high the eyes are': 'Wie hoch die Augen sind',
  'The staff size of a part, from its PDF': 'Die Höhe der Notenzeilen einer Stimme, aus ihrem PDF',
  'No published source gives a least angle for a music staff: the number is shown, and only its caution is this tool’s own.':
    'Keine veröffentlichte Quelle nennt einen Grenzwinkel für Notenzeilen: Die Zahl wird gezeigt, nur der Hinweis dazu ist die eigene Wahl dieses Programms.',
  'Light, print, glasses and eyesight are not known. Whoever reads there decides.':
    'Licht, Druck, Brille und Sehkraft sind nicht bekannt. Es entscheidet, wer dort liest.',
  'Eyes are taken on the axis of the head, some centimetres behind where they are, so pages look a little farther away than they are.':
    'Die Augen werden auf der Achse des Kopfes angenommen, einige Zentimeter hinter ihrem Ort. Die Seiten scheinen also etwas weiter weg, als sie sind.',
};
