/** Booklets: what stands on their sheets, how they are put together, and what keeps one from being printed. */

import type { Entries } from '../catalogue.ts';

const ON_THE_SHEETS: Entries = {
  'sheet {0} of {1}': 'Blatt {0} von {1}',
  'card behind this panel': 'Karton hinter dieser Bahn',
  'fix to {0}’s desk': 'an Auflage von {0} befestigen',
  'fix to the empty desk': 'an Auflage ohne Spieler befestigen',
  ridge: 'First',
  hem: 'Saum',
  'folds inward': 'nach innen falzen',
  'folds outward': 'nach außen falzen',
  'folds both ways: score both sides': 'hin und her: beide Seiten rillen',
  'stays flat': 'bleibt flach',
  'tape {0} to {1} ({2})': '{0} an {1} kleben ({2})',
  'tape {0} to {1} (side by side)': '{0} an {1} kleben (nebeneinander)',
  'cut out along this line': 'an dieser Linie ausschneiden',
  'no PDF of this page: paste it here': 'kein PDF dieser Seite: hier aufkleben',
  '{0}: sheet {1}, outside of a cover': '{0}: Blatt {1}, Außenseite des Umschlags',
  '{0}: sheet {1}, panel {2}': '{0}: Blatt {1}, Bahn {2}',
  'Front cover: leave blank; the first page is on its back':
    'Umschlag vorn: leer lassen; die erste Seite ist auf der Rückseite',
  'Back cover: leave blank; the last page is on its other side':
    'Umschlag hinten: leer lassen; die letzte Seite ist auf der anderen Seite',
  'nobody reads here': 'hier liest niemand',
  'view {0} of {1}': 'Ansicht {0} von {1}',
  'views {0} to {1} of {2}': 'Ansichten {0} bis {1} von {2}',
  'the one opposite': 'das Gegenüber',
  '{0}: {1} turns': '{0}: {1} blättert um',
  '{0}: turn for both': '{0}: für beide umblättern',
  '{0}: turn': '{0}: umblättern',
  'at {0}': 'bei {0}',
  'in {0} ({1})': 'in {0} ({1})',
  '{0} and again {1}': '{0} und wieder {1}',
};

const STEPS: Entries = {
  '{0}: how to put it together': '{0}: Zusammenbau',
  'In this order': 'Schritt für Schritt',
  'Print on {0} at 100 % (actual size, not fitted to the page), on one side of the paper only. Check the line below with a ruler.':
    'Auf {0} drucken, mit 100 % (tatsächliche Größe, nicht an die Seite angepasst), nur einseitig. Die Linie unten mit dem Lineal nachmessen.',
  'Print on {0} at 100 % (actual size, not fitted to the page), on both sides of the paper, turned at the long edge. Check the line below with a ruler.':
    'Auf {0} drucken, mit 100 % (tatsächliche Größe, nicht an die Seite angepasst), beidseitig, an der langen Kante gewendet. Die Linie unten mit dem Lineal nachmessen.',
  'Cut every sheet out along its thin line.': 'Jedes Blatt an seiner dünnen Linie ausschneiden.',
  'Each panel is {0} sheets, in their order from left to right. Tape them side by side on the blank side, number to number.':
    'Jede Bahn besteht aus {0} Blättern, der Reihe nach von links nach rechts. Sie auf der leeren Seite nebeneinanderkleben, Zahl an Zahl.',
  'Lay the panels on a table, printed side up, each below the one before it, in the order of the sheets. Every other panel stands on its head. Where two edges meet they bear the same letter.':
    'Die Bahnen mit der bedruckten Seite nach oben auf einen Tisch legen, jede unter die vorige, in der Reihenfolge der Blätter. Jede zweite Bahn steht auf dem Kopf. Wo zwei Kanten aneinanderstoßen, tragen sie denselben Buchstaben.',
  'Hold every joint with a small piece of tape: A to A, B to B and so on, edge against edge, not overlapping, with a gap of about 1 mm at the ridges, so that many layers can go over.':
    'Jede Klebestelle mit einem kleinen Stück Klebeband halten: A an A, B an B und so weiter, Kante an Kante, nicht überlappend, an den Firsten mit etwa 1 mm Abstand, damit viele Lagen hinübergehen.',
  'Turn the whole row over and tape each joint on the blank side, from one end to the other. Then take the small pieces off the printed side.':
    'Die ganze Reihe umdrehen und jede Klebestelle auf der leeren Seite kleben, von einem Ende zum anderen. Dann die kleinen Stücke von der bedruckten Seite abnehmen.',
  'Stick a thin card on the blank side of panel {0}: from the hem to 15 mm below the ridge, and as wide as the panel. A leaf without card bends when it is lifted.':
    [
      'Dünnen Karton auf die leere Seite von Bahn {0} kleben: vom Saum bis 15 mm unter den First und so breit wie die Bahn. Ein Wendeblatt ohne Karton knickt beim Anheben ein.',
      'Dünnen Karton auf die leere Seite der Bahnen {0} kleben: vom Saum bis 15 mm unter den First und so breit wie die Bahn. Ein Wendeblatt ohne Karton knickt beim Anheben ein.',
    ],
  'Fold the strip to and fro: at a ridge printed side on printed side, at a hem blank side on blank side. All ridges come to lie at one end, all hems at the other.':
    'Den Streifen im Zickzack falten: am First bedruckte Seite auf bedruckte Seite, am Saum leere Seite auf leere Seite. Alle Firste liegen dann an einem Ende, alle Säume am anderen.',
  'Put two stands back to back so that the upper edges of their desks touch. Hang the ridges over these edges: all leaves to {0}, the single panel F to {1}.':
    'Zwei Pulte Rücken an Rücken stellen, sodass sich die Oberkanten der Auflagen berühren. Die Firste über diese Kanten hängen: alle Wendeblätter auf die {0}, die einzelne Bahn F auf die {1}.',
  'the side of {0}': 'Seite von {0}',
  'the side where nobody reads': 'Seite ohne Spieler',
  'Fix panel F to {0} and panel B to {1}, each along its lower edge, with tape or clips that come off again.':
    'Bahn F an der {0} und Bahn B an der {1} befestigen, jede entlang ihrer Unterkante, mit Klebeband oder Klammern, die sich wieder lösen lassen.',
  'the desk of {0}': 'Auflage von {0}',
  'the empty desk': 'Auflage ohne Spieler',
  'There is nothing to turn: both read from it as it hangs.':
    'Umzublättern ist nichts: Beide lesen davon, wie es hängt.',
  'To turn, {0} takes the uppermost leaf at its hem, lifts it up over the ridge and lays it down on the other side.':
    'Zum Umblättern fasst {0} das oberste Wendeblatt am Saum, hebt es über den First und legt es auf der anderen Seite ab.',
  'whoever stands at the leaves': 'die Person an den Wendeblättern',
  'It is turned for both readers at once, so neither may be reading here.':
    'Es geht für beide Spieler zugleich um, also darf dabei keiner hier lesen.',
  'To begin again, lay the leaves back one by one, the last one first.':
    'Für den nächsten Anfang die Wendeblätter einzeln zurücklegen, das letzte zuerst.',
  'Lay the leaves on each other in their order and bind them at the left edge.':
    'Die Blätter der Reihe nach aufeinanderlegen und an der linken Kante binden.',
  'Set the pages side by side in the order of the sheets, the first on the left, on {0}.':
    'Die Seiten in der Reihenfolge der Blätter nebeneinanderstellen, die erste links, auf die {0}.',
  'Lay the pages in a row from left to right, printed side up, in the order of the sheets, and tape each to the next, letter to letter; then the same on the blank side.':
    'Die Seiten mit der bedruckten Seite nach oben von links nach rechts in eine Reihe legen, in der Reihenfolge der Blätter, und jede an die nächste kleben, Buchstabe an Buchstabe; dann ebenso auf der leeren Seite.',
  'Leave a gap of about 1 mm at {0}.': 'Bei {0} etwa 1 mm Abstand lassen.',
  'Fold the row along the tapes: {0}.': 'Die Reihe entlang der Klebestellen falten: {0}.',
  'at {0} printed side on printed side': 'bei {0} bedruckte Seite auf bedruckte Seite',
  'at {0} blank side on blank side': 'bei {0} leere Seite auf leere Seite',
  'at {0} both ways': 'bei {0} hin und her',
  'not at {0}': 'bei {0} nicht',
  'Score {0} on both sides: there the row bends one way while it lies behind the last open page, and the other way once it lies behind the first.':
    '{0} auf beiden Seiten rillen: Dort biegt sich die Reihe in die eine Richtung, solange sie hinter der letzten offenen Seite liegt, und in die andere, sobald sie hinter der ersten liegt.',
  'Set it on {0}. Nothing is folded, and there is nothing to turn.':
    'Auf die {0} stellen. Nichts wird gefaltet, nichts umgeblättert.',
  'Set it on {0} with the first {1} pages open and the rest folded to and fro behind the last of them: at {2} blank side on blank side.':
    'Auf die {0} stellen: die ersten {1} Seiten offen, die übrigen im Zickzack hinter der letzten davon, bei {2} leere Seite auf leerer Seite.',
  'To turn, lay the two pages that are back to back on the right over to the left, as a leaf of a book.':
    'Umblättern: die beiden Seiten, die rechts Rücken an Rücken liegen, nach links umlegen wie ein Blatt im Buch.',
  'To turn, move the row to the left by two pages: two come out from behind on the right, and two are folded away behind the first page that is open then, the nearer joint blank side on blank side.':
    'Umblättern: die Reihe um zwei Seiten nach links schieben. Rechts kommen zwei von hinten hervor, links werden zwei hinter die nun erste offene Seite gefaltet, die nähere Klebestelle leere Seite auf leerer Seite.',
  '{0} and {1}': '{0} und {1}',
  'Two stands that carry a booklet are top-heavy: spread their feet, weigh them down or tie them together, and try every turn before there is an audience.':
    'Zwei Pulte, die ein Heft tragen, sind kopflastig: Füße weit stellen, beschweren oder aneinanderbinden und jede Wendestelle ausprobieren, bevor Publikum da ist.',
  'Try it on the stand before there is an audience: paper that overhangs a desk makes it top-heavy.':
    'Auf dem Pult ausprobieren, bevor Publikum da ist: Papier, das über die Auflage ragt, macht es kopflastig.',
  'What the venue and its crew say about stands, tape and lamps or candles near paper comes first.':
    'Vorrang hat, was das Haus und sein Personal zu Pulten, Klebeband und zu Lampen oder Kerzen neben Papier sagen.',
};

const DRAWINGS: Entries = {
  '{0} mm on the ruler, if it was printed at 100 %': '{0} mm auf dem Lineal, wenn mit 100 % gedruckt wurde',
  'Who sees what': 'Wer sieht was',
  View: 'Ansicht',
  When: 'Wann',
  'at the beginning': 'am Anfang',
  'turned (turn {0})': 'umgeblättert (Wendestelle {0})',
  'turned {0}': 'umgeblättert {0}',
  nothing: 'nichts',
  blank: 'leer',
  inward: 'nach innen',
  outward: 'nach außen',
  'both ways': 'hin und her',
  'The strip on the table, printed side up, the first sheet at the top. An arrow points to the head of each panel; hatched: card behind it.':
    'Der Streifen auf dem Tisch, bedruckte Seite oben, das erste Blatt zuoberst. Der Pfeil zeigt zum Kopf jeder Bahn; schraffiert: Karton dahinter.',
  'The pages in their order, with what joins each to the next. Inward: printed sides lie on each other; outward: blank sides do.':
    'Die Seiten der Reihe nach und was jede mit der nächsten verbindet. Nach innen: bedruckte Seiten liegen aufeinander; nach außen: leere.',
  'Both ways: scored on both sides, as it bends one way on the right and the other way on the left.':
    'Hin und her: auf beiden Seiten gerillt, denn rechts biegt es sich in die eine, links in die andere Richtung.',
  'Order of the panels: {0}.': 'Reihenfolge der Bahnen: {0}.',
  '{0}, joined by {1} ({2}) to {3}': '{0}, verbunden durch {1} ({2}) mit {3}',
  'for {0}: {1} (view {2})': 'für {0}: {1} (Ansicht {2})',
  'for nobody: {0} (view {1})': 'für niemanden: {0} (Ansicht {1})',
  'nothing printed': 'unbedruckt',
  'The concertina on its desk from above, {0} pages open: those to come lie zig-zag behind the last of them, those done with behind the first.':
    'Das Leporello auf seiner Auflage von oben, {0} Seiten offen: Die kommenden liegen im Zickzack hinter der letzten davon, die gelesenen hinter der ersten.',
  'as it stands': 'wie es steht',
  'view 1, from above': 'Ansicht 1, von oben',
  'view {0}, the last': 'Ansicht {0}, die letzte',
  'view {0}': 'Ansicht {0}',
  'as it hangs': 'wie es hängt',
  'after the first turn': 'nach dem ersten Umblättern',
  'the first leaf goes over the ridge': 'das erste Wendeblatt geht über den First',
  'The booklet over the ridge from its end, {0} views: all leaves hang on the side of {1} at first; each turn takes the uppermost over the ridge.':
    'Das Heft über dem First von der Schmalseite, {0} Ansichten: Am Anfang hängen alle Wendeblätter bei {1}; jedes Umblättern hebt das oberste über den First.',
  nobody: 'niemand',
};

const WHAT_IS_IN_THE_WAY: Entries = {
  'A page of {0} does not go on {1} ({2}) at its true size: choose a larger paper.':
    'Eine Seite von {0} passt in wahrer Größe nicht auf {1} ({2}): Größeres Papier wählen.',
  'No font has {0}: printed as a box.': 'Keine Schrift hat {0}: als Kästchen gedruckt.',
  'no page for a stand is that size ({0} to {1} mm a side)':
    'so groß ist keine Seite für ein Pult ({0} bis {1} mm je Kante)',
  'it is larger than the page size of the booklet, {0}': 'größer als das Seitenformat des Hefts, {0}',
  'Page {0} of "{1}" is {2}: {3}.': 'Seite {0} von „{1}“ misst {2}: {3}.',
  'A whole panel does not go on {0}, so every page has a sheet of its own.':
    'Eine ganze Bahn passt nicht auf {0}, also hat jede Seite ihr eigenes Blatt.',
  'Paper of the plan': 'Papier des Plans',
  'The plan puts no paper on "{0}".': 'Der Plan legt kein Papier auf „{0}“.',
  'There is no paper "{0}".': 'Papier „{0}“ gibt es nicht.',
  'The concert has no setup "{0}".': 'Das Konzert hat keine Aufstellung „{0}“.',
  'This setup has no page plan to print.': 'Diese Aufstellung hat keinen Seitenplan zum Drucken.',
  'The concert names no PDF for "{0}".': 'Das Konzert nennt kein PDF für „{0}“.',
  '"{0}" is another file than the one that was given to the part: show it again in the music of the setup.':
    '„{0}“ ist eine andere Datei als die, die der Stimme gegeben wurde: in der Musik der Aufstellung neu zeigen.',
  '"{0}" has {1} MB; a part may have {2} MB: scan it coarser, or split it.':
    '„{0}“ hat {1} MB; eine Stimme darf {2} MB haben: gröber scannen oder aufteilen.',
  '"{0}" is encrypted and has {1} MB; an encrypted part may have {2} MB: save it without encryption.':
    '„{0}“ ist verschlüsselt und hat {1} MB; eine verschlüsselte Stimme darf {2} MB haben: unverschlüsselt speichern.',
  '"{0}" is not a PDF.': '„{0}“ ist kein PDF.',
  '"{0}" is damaged or not complete: make it anew, for instance by printing it to a PDF again.':
    '„{0}“ ist beschädigt oder unvollständig: neu erzeugen, etwa noch einmal als PDF drucken.',
  '"{0}" holds more than a part can: print it to a PDF again, or split it.':
    '„{0}“ enthält mehr, als eine Stimme kann: noch einmal als PDF drucken oder aufteilen.',
  '"{0}" has no pages.': '„{0}“ hat keine Seiten.',
  '"{0}" is locked with a password: save it without one and choose it again.':
    '„{0}“ ist mit einem Passwort gesperrt: ohne Passwort speichern und neu wählen.',
  '"{0}" has notes or pen strokes laid over page {1}: they are not printed. Print the part to a PDF with them first.':
    '„{0}“ hat Notizen oder Stiftstriche über Seite {1}: Sie werden nicht gedruckt. Die Stimme vorher mit ihnen als PDF drucken.',
  '"{0}" has notes or pen strokes laid over {1} pages, first on page {2}: they are not printed. Print the part to a PDF with them first.':
    '„{0}“ hat Notizen oder Stiftstriche über {1} Seiten, zuerst auf Seite {2}: Sie werden nicht gedruckt. Die Stimme vorher mit ihnen als PDF drucken.',
};

/** A booklet's own file: what stands in quotation marks is written so in it. */
const DESCRIPTION: Entries = {
  'give the path of a PDF, or null': 'den Pfad eines PDF angeben oder null',
  'give pages such as "2-9, 11", or null': 'Seiten wie "2-9, 11" angeben oder null',
  'give "standlines-booklet"': '"standlines-booklet" angeben',
  'give 1': '1 angeben',
  'give page numbers and ranges such as "2-9, 11"': 'Seitenzahlen und Bereiche wie "2-9, 11" angeben',
  'the PDF has pages 1 to {0}': 'das PDF hat die Seiten 1 bis {0}',
  'the part has pages 1 to {0}': 'die Stimme hat die Seiten 1 bis {0}',
  'give at most {0} pages': 'höchstens {0} Seiten angeben',
  'This is not a booklet description: it does not start with "{".':
    'Das ist keine Beschreibung eines Hefts: Sie beginnt nicht mit "{".',
  'a {0} binding has one side': ['„{0}“ hat eine Seite', '„{0}“ hat zwei Seiten'],
  'loose pages have none: give 0': 'lose Seiten haben keine: 0 angeben',
  'there are {0} turns': 'Zahl der Wendestellen: {0}',
  'name the pdf, too': 'auch pdf angeben',
  'give the number of pages, or a pdf': 'die Zahl der Seiten oder ein pdf angeben',
  'The binding cannot be made: {0}.': 'Diese Bindung geht nicht: {0}.',
  '"{0}" gives {1} of them': '„{0}“ gibt {1} davon her',
  '{0} leaves have room for {1}': '{0} Wendeblätter haben Platz für {1}',
};

export const booklet: Entries = {
  ...ON_THE_SHEETS,
  ...STEPS,
  ...DRAWINGS,
  ...WHAT_IS_IN_THE_WAY,
  ...DESCRIPTION,
};
