import type { Entries } from '../catalogue.ts';

export const pack: Entries = {
  // What there is in a pack
  'Cover and programme': 'Deckblatt und Programm',
  'Rehearsal floor': 'Probenblatt',
  'Page plan': 'Seitenplan',
  'Booklet of {0}': 'Heft: {0}',
  'Figures and findings': 'Zahlen und Befunde',
  'Inventory and power': 'Stückliste und Strom',
  'the setup': 'die Aufstellung',
  'The pack of this concert has no sheet "{0}": no plan of page turns is kept. Plan the turns first: in the window open the page turns, plan them and keep the plan. Cue cards alone come from the verb turns with --cards.':
    'Die Druckmappe dieses Konzerts hat kein Blatt „{0}“: Es ist kein Seitenplan gespeichert. Zuerst die Wendestellen planen: im Fenster die Wendestellen öffnen, planen und den Plan speichern. Stichwortkarten allein macht das Wort turns mit --cards.',
  'The pack of this concert has no sheet "{0}". It can have {1}.':
    'Die Druckmappe dieses Konzerts hat kein Blatt „{0}“. Haben kann sie {1}.',
  '{0}: the plan of the changeover fits on this paper at no standard scale; its lists are printed.':
    '{0}: Der Plan des Umbaus passt in keinem Normmaßstab auf dieses Papier; gedruckt sind die Listen.',
  '{0}: the house has no rows, or fits on this paper at no standard scale from the side, so there is no section.':
    '{0}: Der Saal hat keine Reihen oder passt von der Seite in keinem Normmaßstab auf dieses Papier, daher gibt es keinen Schnitt.',
  '{0}: the house fits on this paper at no standard scale, so there is no seat map.':
    '{0}: Der Saal passt in keinem Normmaßstab auf dieses Papier, daher gibt es keine Sichtkarte.',
  '{0}: the rehearsal floor fits on this paper at no standard scale; the table of its marks is printed.':
    '{0}: Das Probenblatt passt in keinem Normmaßstab auf dieses Papier; gedruckt ist die Tabelle seiner Marken.',
  '{0}: its pages go on no paper that is offered.': '{0}: Die Seiten passen auf kein angebotenes Papier.',
  '{0}: no room on the plan for the labels {1}; they are in the table of marks.':
    '{0}: Auf dem Plan ist kein Platz für die Beschriftungen {1}; sie stehen in der Markentabelle.',
  '{0}: there is no place {1} any more.': '{0}: Den Platz {1} gibt es nicht mehr.',

  // Cover
  'Revision {0}': 'Fassung {0}',
  'issued {0}': 'ausgegeben {0}',
  'drawn by {0}': 'gezeichnet von {0}',
  Programme: 'Programm',
  'In the order in which it is played.': 'In der Reihenfolge, in der gespielt wird.',
  Players: 'Spieler',
  'Things set': 'Aufgestellt',
  'Time to set it': 'Zeit zum Umbau',
  Contacts: 'Ansprechpersonen',
  'Whom to ask, as given for this concert.': 'Wer zu fragen ist, wie für dieses Konzert angegeben.',
  Name: 'Name',
  'Reached at': 'Erreichbar unter',
  Sheets: 'Blätter',
  'Print at 100 %. Local codes, the venue and licensed practice come before anything in here.':
    'Mit 100 % drucken. Örtliche Vorschriften, das Haus und zugelassene Fachleute gehen allem vor, was hier steht.',

  // Marks by tape
  'Marks by two tapes': 'Marken mit zwei Bandmaßen',
  '{0} along the floor, for setting without a square: hook a tape at each of the two points that a row names and bring them together on the platform’s side of the line between these points. Check: from a third point. {1} The points themselves are exact. {2}':
    '{0} am Boden, zum Aufstellen ohne Winkel: an jedem der zwei Punkte, die eine Zeile nennt, ein Bandmaß einhängen und beide auf der Podiumsseite der Linie zwischen diesen Punkten zusammenführen. Kontrolle: von einem dritten Punkt. {1} Die Punkte selbst sind genau. {2}',
  'First tape': 'Erstes Band',
  'Second tape': 'Zweites Band',
  Check: 'Kontrolle',
  Side: 'Seite',
  'beyond {0}-{1}': 'jenseits {0}-{1}',
  mark: 'Marke',
  'The platform from above, the house at the bottom, with the points {0}; not to scale':
    'Das Podium von oben, der Saal unten, mit den Punkten {0}; ohne Maßstab',
  'Distances are rounded to whole millimetres, which moves no mark by more than {0} mm.':
    'Die Maße sind auf ganze Millimeter gerundet; das verschiebt keine Marke um mehr als {0} mm.',
  'Distances are rounded to the nearest 1/16 in, which moves no mark by more than {0}/16 in.':
    'Die Maße sind auf 1/16 in gerundet; das verschiebt keine Marke um mehr als {0}/16 in.',

  // Rehearsal floor
  'front edge': 'Vorderkante',
  'From E': 'Von E',
  'From F': 'Von F',
  Next: 'Nachbarn',
  'Rehearsal floor at 1:{0}, the house at the bottom, stage left on the right. {1}':
    'Probenblatt 1:{0}, der Saal unten; links und rechts sind vom Saal aus gesehen. {1}',
  'Tape a straight line {0} long on the floor. Facing the house, its right-hand end is E and its left-hand end is F. Under each mark: millimetres from E and from F.':
    'Eine gerade Linie von {0} auf den Boden kleben. Vom Saal aus gesehen ist E ihr linkes und F ihr rechtes Ende. Unter jeder Marke: Millimeter von E und von F.',
  'Tape a straight line {0} long on the floor. Facing the house, its right-hand end is E and its left-hand end is F. Under each mark: feet and inches from E and from F.':
    'Eine gerade Linie von {0} auf den Boden kleben. Vom Saal aus gesehen ist E ihr linkes und F ihr rechtes Ende. Unter jeder Marke: Fuß und Zoll von E und von F.',
  'The line runs {0} towards the house from where the platform’s front edge would be, its middle on the centre line.':
    'Die Linie läuft {0} vor der gedachten Vorderkante des Podiums (zum Saal hin), ihre Mitte auf der Mittellinie.',
  'The line runs {0} upstage of where the platform’s front edge would be, its middle on the centre line.':
    'Die Linie läuft {0} hinter der gedachten Vorderkante des Podiums, ihre Mitte auf der Mittellinie.',
  'The line runs along where the platform’s front edge would be, its middle on the centre line.':
    'Die Linie läuft auf der gedachten Vorderkante des Podiums, ihre Mitte auf der Mittellinie.',
  'Floors and rooms differ: keep ways out clear, and tape down nothing that anybody could trip over.':
    'Böden und Räume sind verschieden: Wege nach draußen frei halten und nichts ankleben, worüber jemand stolpern könnte.',
  '{0}. {1} E and F are the ends of the taped line; everything lies on the upstage side of it. Next: how far it is to the marks beside it, to try what was taped.':
    '{0}. {1} E und F sind die Enden der geklebten Linie; alles liegt auf ihrer hinteren Seite. Nachbarn: wie weit es zu den Marken daneben ist, zur Kontrolle des Geklebten.',

  // Inventory
  'How many of each thing every piece needs, and how many have to be there at once; what the venue has, what is borrowed, and what is missing, where stock was entered.':
    'Wie viel jedes Stück von allem braucht und wie viel zugleich da sein muss; was das Haus hat, was geliehen ist und was fehlt, soweit ein Bestand eingegeben ist.',
  'At once': 'Zugleich',
  Venue: 'Haus',
  Instruments: 'Instrumente',
  'Players bring them unless agreed otherwise.':
    'Die Spieler bringen sie mit, wenn nichts anderes vereinbart ist.',
  Power: 'Strom',
  '{0}. {1} Ratings, circuits and cables are the venue’s: have them looked at by whoever answers for them.':
    '{0}. {1} Leistungen, Stromkreise und Kabel sind Sache des Hauses: von den Verantwortlichen ansehen lassen.',
  'No lamp is set in any piece, so no power is asked for on the platform.':
    'In keinem Stück ist eine Lampe gestellt; auf dem Podium wird kein Strom verlangt.',
  'Sockets used at once: {0}.': 'Zugleich belegte Steckdosen: {0}.',
  Lamp: 'Lampe',
  'Stands at': 'Steht bei',
  Cable: 'Kabel',
  Covered: 'Abgedeckt',
  'Socket at': 'Steckdose',
  none: 'keines',
  yes: 'ja',
  no: 'nein',
  'by battery, or not said': 'Batterie oder nicht angegeben',

  // Page plan
  Turns: 'Wendestellen',
  'Counted in strict time from the score: try every turn in rehearsal. To spare: what is left of the time in which the hand is free.':
    'In strengem Zeitmaß aus der Partitur gezählt: jede Wendestelle in der Probe ausprobieren. Übrig: was von der Zeit bleibt, in der die Hand frei ist.',
  Time: 'Zeit',
  Bar: 'Takt',
  Who: 'Wer',
  Where: 'Wo',
  'To spare': 'Übrig',
  any: 'beliebig',
  '{0}, back': '{0}, zurück',
  'Pages on {0}': 'Seiten: {0}',
  '{0}. Pages from the reader’s left to his right; a dash is an empty place.':
    '{0}. Seiten von links nach rechts, wie sie gelesen werden; ein Strich ist ein leerer Platz.',
  '{0} leaf': ['{0} Blatt', '{0} Blätter'],
  'Leaves turned': 'Geblättert',

  // Printing
  'There is nothing to print: choose a sheet.': 'Es gibt nichts zu drucken: ein Blatt wählen.',
  'The pack was stopped before it was whole.': 'Die Druckmappe wurde angehalten, bevor sie fertig war.',
  'That pack is no longer there: make it again.': 'Diese Druckmappe ist nicht mehr da: neu erstellen.',
  'The pack is not whole yet.': 'Die Druckmappe ist noch nicht fertig.',
  'The pack could not be drawn ({0}).': 'Die Druckmappe ließ sich nicht zeichnen ({0}).',
  'A picture can have {0} to {1} dots per inch, not {2}.':
    'Ein Bild kann {0} bis {1} Punkte je Zoll haben, nicht {2}.',
  'At {0} dots per inch a sheet of {1} x {2} mm is too large a picture: take at most {3}.':
    'Mit {0} Punkten je Zoll ist ein Blatt von {1} x {2} mm als Bild zu groß: höchstens {3} nehmen.',

  // Views from a seat
  'What is seen': 'Was zu sehen ist',
  'Held {0} from the eye, this looks as large as from the seat. Bodies are drawn as the sight check has them where anyone may play: as the tallest who may.':
    'Mit {0} Abstand vom Auge gehalten wirkt dies so groß wie vom Platz aus. Körper sind gezeichnet, wie die Sichtprüfung sie annimmt, wenn offen ist, wer spielt: als die Größten, die es sein könnten.',
  'Seen from here': 'Von hier gesehen',
  'Seen well in the house': 'Im Saal gut gesehen',
};
