/** The pages about what players do: reaching, turning pages, and changes that were tried. */

import type { Entries } from '../../catalogue.ts';

export const playing: Entries = {
  'Reaching: turning a page, taking an instrument up': 'Greifen: Seite umblättern, Instrument aufnehmen',
  'Can a free hand get to it from where the player is, and in the rest there is?':
    'Kommt eine freie Hand von dort hin, wo der Spieler ist, und reicht die Pause?',
  'For every page that is turned and every instrument that waits, the distance in space from the nearer free shoulder to the point that a hand must get to: the lower outer corner of the page, over a back-to-back pair also the middle of its upper edge, or the instrument on its stand or table.':
    'Für jede Seite, die umgeblättert wird, und jedes Instrument, das bereitsteht: der räumliche Abstand von der näheren freien Schulter zu dem Punkt, an den eine Hand muss. Das ist die untere äußere Ecke der Seite, bei Rücken an Rücken stehenden Auflagen auch die Mitte ihrer Oberkante, oder das Instrument auf seinem Ständer oder Tisch.',
  'The least effort that gets there counts: the arm alone, the arm with a lean, one step, a walk. The arm is a sphere about the shoulder joint; its length comes from the stature, or is measured. Who sits does not step: he gets up and walks.':
    'Es zählt der geringste Aufwand, der zum Ziel führt: der Arm allein, der Arm mit Vorbeugen, ein Schritt, ein Gang. Der Arm ist eine Kugel um das Schultergelenk; seine Länge folgt aus der Körpergröße oder ist gemessen. Wer sitzt, macht keinen Schritt: Er steht auf und geht.',
  'Times are added up from tables of motions: reaching, turning the body, stepping, getting up, walking there and back. They are compared with the rest in the part, or with the rest that was typed.':
    'Zeiten werden aus Bewegungstabellen addiert: Hinlangen, Drehen des Körpers, Schritt, Aufstehen, Hin- und Rückweg. Sie werden mit der Pause in der Stimme verglichen oder mit der eingetippten.',
  'A page turn needs a walk, or a hand gets to that height in no way.':
    'Eine Wendestelle verlangt einen Gang, oder keine Hand kommt in diese Höhe.',
  'A page turn needs a step; or an instrument needs a walk that does not fit the rest, or the rest is not known.':
    'Eine Wendestelle verlangt einen Schritt; oder ein Instrument verlangt einen Gang, der nicht in die Pause passt, oder die Pause ist nicht bekannt.',
  'An instrument needs a walk, and that fits the rest.':
    'Ein Instrument verlangt einen Gang, und der passt in die Pause.',
  'It takes longer than the rest, as it usually goes.': 'Es dauert bei üblichem Tempo länger als die Pause.',
  'It takes longer than the rest when it goes slowly.': 'Es dauert bei langsamem Tempo länger als die Pause.',
  'What the player holds leaves no hand free for it.': 'Was der Spieler hält, lässt keine Hand dafür frei.',
  'How tall the player is, or how long the arm was measured':
    'Wie groß der Spieler ist oder wie lang der Arm gemessen wurde',
  'Whether pages are turned there, and the rest to turn in': 'Ob dort umgeblättert wird, und die Pause dafür',
  'Where an instrument waits, and the rest to take it up':
    'Wo ein Instrument bereitsteht, und die Pause für den Wechsel',
  'Rests of a part, from a score or a table': 'Pausen einer Stimme, aus einer Partitur oder einer Tabelle',
  'Who turns what, when a page plan is kept': 'Wer was umblättert, wenn ein Seitenplan behalten wird',
  'Ways are straight lines here: what stands in between is not gone round.':
    'Wege sind hier gerade Linien: Was dazwischen steht, wird nicht umgangen.',
  'Whether a page comes away well, whether it is dark, or how much somebody is at ease is not known. Try it.':
    'Ob sich eine Seite gut löst, ob es dunkel ist und wie wohl sich jemand fühlt, ist nicht bekannt. Ausprobieren.',
  'The tables are of trained people at work, and the survey is of soldiers from 17 to 58 years: others may reach less far and take longer.':
    'Die Tabellen gelten für geübte Menschen bei der Arbeit, die Erhebung für Soldatinnen und Soldaten von 17 bis 58 Jahren: Andere reichen vielleicht weniger weit und brauchen länger.',
  'Arms of people of one stature differ by (standard deviation)':
    'Armlängen bei gleicher Körpergröße streuen um (Standardabweichung)',
  '“Anyone” reaches from the small to the tall end': '„Beliebig“ reicht vom kleinen bis zum großen Ende',
  '{0}th to {1}th percentile': '{0}. bis {1}. Perzentil',
  'A shoulder pushed forward adds': 'Eine vorgeschobene Schulter bringt',
  'The trunk leans by up to': 'Der Rumpf neigt sich um bis zu',
  'One step brings the shoulder nearer by': 'Ein Schritt bringt die Schulter näher um',
  'Stooping, shoulders come down to': 'Beim Bücken kommen die Schultern hinab bis auf',
  'Nobody walks up closer than': 'Niemand geht näher heran als',
  'While playing, hands are before the body by': 'Beim Spielen sind die Hände vor dem Körper um',
  'Time of a reach': 'Zeit für ein Hinlangen',
  'by its length; beyond the table {0} s for every {1}':
    'nach der Länge; über die Tabelle hinaus {0} s je {1}',
  'Turning the body': 'Drehen des Körpers',
  'A sidestep of {0}': 'Seitschritt von {0}',
  'Bending down and rising': 'Bücken und Aufrichten',
  'Getting up and sitting down': 'Aufstehen und Hinsetzen',
  'Walking, as it usually goes': 'Gehen, wie üblich',
  'Walking, from slow to brisk': 'Gehen, von langsam bis zügig',
  '{0} to {1} m/s': '{0} bis {1} m/s',
  'Getting going': 'Losgehen',
  '{0} to {1} s': '{0} bis {1} s',
  'A quiet, careful motion takes at most this much longer':
    'Eine leise, sorgfältige Bewegung dauert höchstens so viel länger',
  '{0} times': '{0}-fach',
  'Page turns along the music': 'Wendestellen im Verlauf der Musik',
  'Who turns what, when, so that every page is in view while it is read?':
    'Wer blättert wann was um, damit jede Seite zu sehen ist, solange sie gelesen wird?',
  'The music is unfolded as it is played, repeats and jumps included. A page must be in view while it is read and a look-ahead before; a turn needs a player with a free hand, who can reach that leaf and rests for as long as it takes.':
    'Die Musik wird aufgerollt, wie sie gespielt wird, mit Wiederholungen und Sprüngen. Eine Seite muss zu sehen sein, solange sie gelesen wird, und um einen Vorausblick früher; umblättern kann nur ein Spieler mit freier Hand, der das Blatt erreicht und so lange Pause hat, wie es dauert.',
  'Of all plans that keep these rules the one with the fewest turns is looked for; among those the fewest stands, then the narrowest row, then the fewest printed panels, then the fewest jumps of the eye. What is called proved was searched through; where the search ended early, the panel says how far it got.':
    'Unter allen Plänen, die diese Regeln einhalten, wird der mit den wenigsten Wendestellen gesucht; unter diesen der mit den wenigsten Pulten, dann der schmalsten Reihe, dann den wenigsten Druckbahnen, dann den wenigsten Blicksprüngen. Was bewiesen heißt, wurde ganz durchsucht; wo die Suche früher endete, steht dabei, wie weit sie kam.',
  'How long a turn takes comes from the page about reaching. A plan that you make yourself is judged by the same rules, and the panel names each one that it breaks.':
    'Wie lange ein Umblättern dauert, steht auf der Seite über das Greifen. Ein selbst gemachter Plan wird nach denselben Regeln beurteilt, und jede, gegen die er verstößt, wird genannt.',
  'The page plan that is kept breaks any of these rules. One finding is made of the whole plan: it counts them and tells the gravest.':
    'Der behaltene Seitenplan verstößt gegen eine dieser Regeln. Aus dem ganzen Plan wird ein einziger Befund: Er zählt die Verstöße und nennt den schwersten.',
  'Look-ahead': 'Vorausblick',
  'the bar before, or {0} s where there is none': 'der Takt davor, oder {0} s, wo es keinen gibt',
  'The score or the tables, the tempo, who plays which part':
    'Die Partitur oder die Tabellen, das Tempo, wer welche Stimme spielt',
  'Turns and pages that shall stay as they are': 'Wendestellen und Seiten, die bleiben sollen, wie sie sind',
  'How many pages a desk holds, and who reads there':
    'Wie viele Seiten auf eine Auflage passen und wer dort liest',
  'How a tempo breathes on the night: times are those of the score, or as you typed them.':
    'Wie ein Tempo am Abend atmet: Die Zeiten sind die der Partitur oder die eingetippten.',
  'Paper that sticks, draughts and nerves. Try every turn in a rehearsal.':
    'Papier, das klebt, Zugluft und Nerven. Jede Wendestelle in einer Probe ausprobieren.',
  'A plan that is kept is judged only where the setup has music, and its players have parts with pages.':
    'Ein behaltener Plan wird nur dort beurteilt, wo die Aufstellung Musik hat und ihre Spieler Stimmen mit Seiten haben.',
  'Changes that were tried': 'Ausprobierte Änderungen',
  'What does the button “Try it” rest on?': 'Worauf stützt sich der Knopf „Ausprobieren“?',
  'Against most findings the tool looks for the least lowering, move or turn, carries it out on a copy by the same command as you would, and asks the same check again. Only what then finds nothing is offered.':
    'Gegen die meisten Befunde sucht das Programm das geringste Tieferstellen, Verschieben oder Drehen, führt es an einer Kopie mit demselben Befehl aus wie von Hand und fragt dieselbe Prüfung noch einmal. Angeboten wird nur, wonach sie nichts mehr findet.',
  'A change is not offered when it makes something else come or grow worse: a finding as grave as this one, any nearness to an open edge, a page seen too steeply, a back to the house, or another player seen less well.':
    'Eine Änderung wird nicht angeboten, wenn durch sie etwas anderes entsteht oder schlimmer wird: ein ebenso schwerer Befund, jede Nähe zu einer offenen Kante, eine zu steil gesehene Seite, ein Rücken zum Saal oder ein anderer Spieler, der schlechter zu sehen ist.',
  '“Try it” is one step: undo takes it back.':
    '„Ausprobieren“ ist ein einziger Schritt: Rückgängig nimmt ihn zurück.',
  'What counts as least, and in which order': 'Was als das Geringste zählt, und in welcher Folge',
  'the smaller change first': 'die kleinere Änderung zuerst',
  'Whether the players like it. A change is a suggestion from figures alone.':
    'Ob es den Spielern gefällt. Eine Änderung ist ein Vorschlag aus Zahlen allein.',
  'The amount is rounded to what a person sets, {0}° or {1}, where that helps as well.':
    'Das Maß wird auf das gerundet, was man von Hand einstellt, {0}° oder {1}, wo das ebenfalls hilft.',
  'Where no such change helps, desks laid flatter and two changes together are tried: of some dozens of round changes to the four things that matter most the ten that bring most, each with each. Two together are told as such.':
    'Wo keine solche Änderung hilft, werden flachere Auflagen und zwei Änderungen zusammen versucht: von einigen Dutzend runden Änderungen an den vier wichtigsten Dingen die zehn, die am meisten bringen, jede mit jeder. Zwei zusammen sind als solche genannt.',
  'For whoever suffers from several findings it is looked which of the changes found clears most of them; the list says what it leaves.':
    'Für alle, die mehrere Befunde haben, wird gesucht, welche der gefundenen Änderungen die meisten davon behebt; die Liste sagt, was übrig bleibt.',
  'Three or more changes at once, and pairs beyond those that are tried.':
    'Drei oder mehr Änderungen zugleich, und Paare über die versuchten hinaus.',
  'Advice that begins with “Try:” nobody has tried.':
    'Vorschläge, die mit „Versuch:“ beginnen, hat niemand ausprobiert.',
};
