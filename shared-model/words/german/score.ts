import type { Entries } from '../catalogue.ts';

export const score: Entries = {
  'the score has bars #1 to #{0}': 'die Partitur hat die Takte #1 bis #{0}',
  'no bar has that number; #1 is the first bar of the file':
    'kein Takt hat diese Zahl; #1 ist der erste Takt der Datei',
  '{0} bars have that number; write which: {1}': '{0} Takte haben diese Zahl; angeben, welcher: {1}',
  'pages go on from bar to bar, and that bar comes no later than the page before it, with bar {0}':
    'Seiten gehen von Takt zu Takt weiter, und dieser Takt kommt nicht nach dem Beginn der Seite davor, Takt {0}',
  'pages go on from bar to bar, and all bars of that number come no later than the page before it, with bar {0}':
    'Seiten gehen von Takt zu Takt weiter, und alle Takte mit dieser Zahl kommen nicht nach dem Beginn der Seite davor, Takt {0}',
  'bars are 0 to {0}': 'die Takte sind 0 bis {0}',
  'give {0} to {1} quarters a minute': '{0} bis {1} Viertel je Minute angeben',
  '{0} from bar {1}': '{0} ab Takt {1}',
  'bar {0}': 'Takt {0}',
  'write for instance 1-12, 5-20': 'zum Beispiel 1-12, 5-20 schreiben',
  'write a range as 5-20': 'einen Bereich als 5-20 schreiben',
  'the first bar stands behind the last one': 'der erste Takt steht hinter dem letzten',
  'a number above 0': 'eine Zahl über 0',
  'a number, not below 0': 'eine Zahl, nicht unter 0',
  'a number': 'eine Zahl',
  '{0} to {1} quarters a minute': '{0} bis {1} Viertel je Minute',
  '1 to {0}': '1 bis {0}',
  page: 'Seite',
  'first bar': 'erster Takt',
  'last bar': 'letzter Takt',
  tempo: 'Tempo',
  seconds: 'Sekunden',
  beats: 'Viertel',
  'free hands': 'freie Hände',
  'columns are {0}': 'Spalten sind {0}',
  'it is there twice': 'sie ist zweimal da',
  'no. {0}': 'Nr. {0}',
  'there is no such column; put a number with a comma into quotes':
    'diese Spalte gibt es nicht; eine Zahl mit Komma in Anführungszeichen setzen',
  'write a whole number from {0} to {1}': 'eine ganze Zahl von {0} bis {1} schreiben',
  'the first bar is {0}, so it has to be {1} or more': 'der erste Takt ist {0}, also mindestens {1}',
  'write the quarters in a bar, such as 3 or 4.5':
    'die Viertel eines Taktes schreiben, zum Beispiel 3 oder 4,5',
  'the row gives a tempo, too; leave one of them out':
    'die Zeile gibt auch ein Tempo an; eines davon weglassen',
  'write {0} to {1} quarters a minute, or seconds as 40 s':
    '{0} bis {1} Viertel je Minute schreiben, oder Sekunden als 40 s',
  'write the time as 75, 75.5 or 1:15': 'die Zeit als 75, 75,5 oder 1:15 schreiben',
  'write bars between {0} and {1}, such as {2}-{3}':
    'Takte zwischen {0} und {1} schreiben, zum Beispiel {2}-{3}',
  'the music says it already; leave this cell empty':
    'das geht schon aus der Musik hervor; die Zelle leer lassen',
  'the music goes on to {0}; give rows as far as that':
    'die Musik geht bis {0} weiter; Zeilen bis dorthin angeben',
  'write a whole number from 1 to {0}': 'eine ganze Zahl von 1 bis {0} schreiben',
  'the row before ends with the last bar of the music':
    'die Zeile davor endet schon mit dem letzten Takt der Musik',
  'the music begins with {0}': 'die Musik beginnt mit {0}',
  'the row before ends with {0}, so this one begins with {1}':
    'die Zeile davor endet mit {0}, diese beginnt also mit {1}',
  'write a bar from {0} to {1}': 'einen der Takte von {0} bis {1} schreiben',
  'write bars from {0} to {1} in their order': 'Takte von {0} bis {1} in ihrer Reihenfolge schreiben',
  '{0} quarters in that time make {1} a minute; {2} to {3} are possible':
    '{0} Viertel in dieser Zeit ergeben {1} je Minute; möglich sind {2} bis {3}',
  '{0} of movement {1}': '{0} im {1}. Satz',
  '{0} to {1}': '{0} bis {1}',
  'bars {0}': 'Takte {0}',
  'first time': '1. Mal',
  'second time': '2. Mal',
  'third time': '3. Mal',
  'fourth time': '4. Mal',
  'fifth time': '5. Mal',
  'sixth time': '6. Mal',
  '{0}th time': '{0}. Mal',
  'bar {0}, {1}': 'Takt {0}, {1}',
  '{0}, to {1}': '{0}, bis {1}',
  'The XML breaks off or is damaged at line {0} ({1}); export it again from the music program.':
    'Das XML bricht bei Zeile {0} ab oder ist dort beschädigt ({1}); aus dem Notenprogramm neu exportieren.',
  'Line {0} declares entities, which scores do not need and this program does not follow; export it again from the music program.':
    'Zeile {0} vereinbart Entitäten, die Partituren nicht brauchen und denen dieses Programm nicht folgt; aus dem Notenprogramm neu exportieren.',
  'Its elements lie more than {0} deep in one another: that is no score.':
    'Die Elemente liegen mehr als {0} tief ineinander: Das ist keine Partitur.',
  'It has more than {0} elements; split it into movements.':
    'Die Datei hat mehr als {0} Elemente; in Sätze aufteilen.',
  'An element has more than {0} attributes: that is no score.':
    'Ein Element hat mehr als {0} Attribute: Das ist keine Partitur.',
  'A text in it is longer than {0} characters: that is no score.':
    'Ein Text darin ist länger als {0} Zeichen: Das ist keine Partitur.',
  'More than {0} characters stand before its first element: that is no score.':
    'Vor dem ersten Element stehen mehr als {0} Zeichen: Das ist keine Partitur.',
  'It is longer than {0} characters; split it into movements.':
    'Die Datei ist länger als {0} Zeichen; in Sätze aufteilen.',
  'It is XML, but no MusicXML score: it begins with <{0}> instead of <score-partwise> or <score-timewise>.':
    'Das ist XML, aber keine MusicXML-Partitur: Es beginnt mit <{0}> statt mit <score-partwise> oder <score-timewise>.',
  'It is a list of scores (an opus); open one of the scores it names.':
    'Das ist eine Liste von Partituren (ein Opus); eine der genannten Partituren öffnen.',
  'It holds no part; export it again from the music program.':
    'Die Datei enthält keine Stimme; aus dem Notenprogramm neu exportieren.',
  'Its first part holds no bar; export it again from the music program.':
    'Die erste Stimme enthält keinen Takt; aus dem Notenprogramm neu exportieren.',
  'A length in it is too long or too finely divided to be counted exactly.':
    'Eine Länge darin ist zu groß oder zu fein geteilt, um genau gezählt zu werden.',
  'Part "{0}" has {1}, part "{2}" {3}; all parts of a score have the same, so export it again from the music program.':
    'Stimme „{0}“ hat {1}, Stimme „{2}“ {3}; alle Stimmen einer Partitur haben gleich viele, also aus dem Notenprogramm neu exportieren.',
  'Part "{0}" stands twice in bar {1}; export it again from the music program.':
    'Stimme „{0}“ steht zweimal in Takt {1}; aus dem Notenprogramm neu exportieren.',
  'Repeats and jumps come to more than {0} bars: look for repeats with a wrong number of times, or type the order.':
    'Wiederholungen und Sprünge ergeben mehr als {0} Takte: nach Wiederholungen mit falscher Anzahl suchen, oder die Reihenfolge eintippen.',
  'The table holds no rows; give page, first bar, last bar, and tempo or seconds.':
    'Die Tabelle enthält keine Zeilen; Seite, ersten Takt, letzten Takt und Tempo oder Sekunden angeben.',
  'The table has more than {0} rows.': 'Die Tabelle hat mehr als {0} Zeilen.',
  'The table has no column "{0}"; its first row names {1}.':
    'Der Tabelle fehlt die Spalte „{0}“; ihre erste Zeile nennt {1}.',
  'Row {0}, column "{1}": "{2}" cannot be used; {3}.': 'Zeile {0}, Spalte „{1}“: „{2}“ geht nicht; {3}.',
  'Row {0} plays bar {1} where "{2}" (row {3}) plays bar {4}; both have to go through the same bars in the same order.':
    'Zeile {0} spielt Takt {1}, wo „{2}“ (Zeile {3}) Takt {4} spielt; beide müssen dieselben Takte in derselben Reihenfolge durchlaufen.',
  'It plays {0}, and "{1}" {2}; both have to go through the same bars.':
    'Hier gespielt: {0}, bei „{1}“: {2}; beide müssen dieselben Takte durchlaufen.',
  'Row {0} gives bar {1} {2} beats, and "{3}" (row {4}) {5}; a bar is as long for everybody.':
    'Takt {1} hat in Zeile {0} {2} Viertel, bei „{3}“ (Zeile {4}) {5}; ein Takt ist für alle gleich lang.',
  'It lasts {0}, and "{1}" {2}; leave its tempo out to go by the other.':
    'Dauer {0}, bei „{1}“ {2}; hier das Tempo weglassen, dann gilt das andere.',
  'It has more than {0} parts; split it.': 'Die Datei hat mehr als {0} Stimmen; sie aufteilen.',
  'It has more than {0} bars; split it.': 'Die Datei hat mehr als {0} Takte; sie aufteilen.',
  'It has more than {0} jumps; split it.': 'Die Datei hat mehr als {0} Sprünge; sie aufteilen.',
  'It has more than {0} tempo marks; split it.': 'Die Datei hat mehr als {0} Tempoangaben; sie aufteilen.',
  'It has more than {0} notes between rests; split it.':
    'Die Datei hat mehr als {0} Noten zwischen Pausen; sie aufteilen.',
  'The bar "{0}" cannot be used: {1}.': 'Takt „{0}“ geht nicht: {1}.',
  'The first bar of a page "{0}" cannot be used: {1}.': 'Als erster Takt einer Seite geht „{0}“ nicht: {1}.',
  'The tempo "{0}" cannot be used: {1}.': 'Das Tempo „{0}“ geht nicht: {1}.',
  'The order "{0}" cannot be used: {1}.': 'Die Reihenfolge „{0}“ geht nicht: {1}.',
  'The range "{0}" cannot be used: {1}.': 'Der Bereich „{0}“ geht nicht: {1}.',
  'the divisions': 'die Teilung der Viertel (divisions)',
  'the duration': 'die Dauer',
  'the offset': 'der Versatz',
  'the tempo': 'das Tempo',
  'the times of a repeat': 'die Anzahl einer Wiederholung',
  'the number of an ending': 'die Nummer einer Klammer',
  '{0} is "{1}"; it has to be {2}.': '{0} ist „{1}“; verlangt: {2}.',
  'In {0}, {1} is "{2}"; it has to be {3}.': 'In {0}: {1} ist „{2}“; verlangt: {3}.',
  'part "{0}"': 'Stimme „{0}“',
  'line {0}': 'Zeile {0}',
  '{0} bar': ['{0} Takt', '{0} Takte'],
  'No tempo is marked anywhere: 120 quarters a minute are assumed. Type the tempo to have right times.':
    'Nirgends steht ein Tempo: 120 Viertel je Minute werden angenommen. Das Tempo eintippen, damit die Zeiten stimmen.',
  'No tempo is marked before {0}: 120 quarters a minute are assumed. Type the tempo to have right times.':
    'Vor {0} steht kein Tempo: 120 Viertel je Minute werden angenommen. Das Tempo eintippen, damit die Zeiten stimmen.',
  'The tempo is read from printed words in {0}: "{1}".':
    '{0}: Das Tempo ist aus gedruckten Worten gelesen: „{1}“.',
  'In {0} two parts give different tempos; that of the later part is taken.':
    '{0}: Zwei Stimmen geben verschiedene Tempi an; das der späteren Stimme gilt.',
  'In {0} one note is set equal to another; that change of tempo is not followed.':
    '{0}: Ein Notenwert ist einem anderen gleichgesetzt; dieser Tempowechsel wird nicht mitgemacht.',
  '{0} with a fermata or a change of tempo in words: they are counted in strict time.':
    '{0} mit einer Fermate oder einem Tempowechsel in Worten: im strengen Zeitmaß gezählt.',
  'This is one part by itself without a tempo mark: tempo and jumps often stand only in the score. Take the times from the score, or type them.':
    'Das ist eine einzelne Stimme ohne Tempoangabe: Tempo und Sprünge stehen oft nur in der Partitur. Die Zeiten aus der Partitur nehmen oder eintippen.',
  'Part "{0}" is not in the list of parts.': 'Stimme „{0}“ steht nicht in der Liste der Stimmen.',
  'A part does not say which one it is.': 'Eine Stimme sagt nicht, welche sie ist.',
  'Part "{0}" does not say what it counts in; quarters are assumed.':
    'Stimme „{0}“ sagt nicht, worin sie zählt; Viertel werden angenommen.',
  'Part "{0}" is shorter than the others in {1}, first in {2}; there it is silent to the end of the bar.':
    'Stimme „{0}“ ist stellenweise kürzer als die anderen ({1}, zuerst {2}); dort schweigt sie bis zum Taktende.',
  'Part "{0}" goes back beyond the beginning of {1}.': '{1}: Stimme „{0}“ geht hinter den Taktanfang zurück.',
  'Nothing says how long {0} is: it is empty and without a time signature. Four quarters are assumed.':
    '{0}: Leer und ohne Taktangabe, die Länge ist unbekannt. Vier Viertel werden angenommen.',
  'The repeat that begins in {0} does not end; it is left out.':
    '{0}: Die Wiederholung, die hier beginnt, endet nicht; sie wird weggelassen.',
  'A repeat sign stands within {0}; it is taken as standing at the end, or the beginning, of that bar.':
    '{0}: Ein Wiederholungszeichen steht mitten im Takt; es gilt als am Ende oder am Anfang des Taktes.',
  'The repeat that begins in {0} lies within another one; it is made again each time.':
    '{0}: Die Wiederholung, die hier beginnt, liegt in einer anderen; sie wird jedes Mal neu gemacht.',
  'As the score says, the repeat that ends in {0} is made after a jump, too.':
    '{0}: Die Wiederholung, die hier endet, wird nach Angabe der Partitur auch nach einem Sprung gemacht.',
  'The ending that begins in {0} has no end; it is taken to reach to its repeat sign.':
    '{0}: Die Klammer, die hier beginnt, hat kein Ende; sie gilt bis zu ihrem Wiederholungszeichen.',
  'The ending in {0} has no number; it is counted on from the one before.':
    '{0}: Die Klammer hat keine Nummer; es wird von der vorigen weitergezählt.',
  'The ending in {0} leads to no repeat, though others follow it. Check the order of the performance.':
    '{0}: Die Klammer führt zu keiner Wiederholung, obwohl weitere folgen. Die Reihenfolge der Aufführung prüfen.',
  'In {0} the words "{1}" are taken for a jump.': '{0}: Die Worte „{1}“ gelten als Sprung.',
  'The jump in {0} does not say where the music ends: it is played on to the end. Type the order if that is wrong.':
    '{0}: Der Sprung sagt nicht, wo die Musik endet: Es wird bis zum Schluss weitergespielt. Wenn das falsch ist, die Reihenfolge eintippen.',
  'After the da capo the music stops before the Trio in {0}.':
    'Nach dem Da capo endet die Musik vor dem Trio ({0}).',
  'The jump in {0} leads nowhere, so it is not made. Type the order if that is wrong.':
    '{0}: Der Sprung führt nirgendwohin und wird nicht gemacht. Wenn das falsch ist, die Reihenfolge eintippen.',
  'After the jump in {0} repeats are left out; with them the music would be {1} longer.':
    '{0}: Nach dem Sprung fallen Wiederholungen weg; mit ihnen wäre die Musik länger ({1}).',
  "The page breaks are those of the whole score; a player's part has other pages. Type them, or open the part.":
    'Die Seitenumbrüche sind die der ganzen Partitur; die Stimme eines Spielers hat andere Seiten. Sie eintippen oder die Stimme öffnen.',
  'The file holds other scores as well: {0}.': 'Die Datei enthält noch andere Partituren: {0}.',
  'The edges of notes are rounded to 1/80,640 of a quarter: the parts count in units that do not fit together.':
    'Anfang und Ende der Noten sind auf 1/80.640 eines Viertels gerundet: Die Stimmen zählen in Einheiten, die nicht zusammenpassen.',
  'the score': 'Partitur',
  'unclosed tag: {0}': 'Element nicht geschlossen: {0}',
  'unmatched closing tag: {0}': 'schließendes Element ohne Anfang: {0}',
  'unexpected close tag': 'unerwartetes schließendes Element',
  'unexpected end': 'unerwartetes Ende',
  'document must contain a root element': 'das äußerste Element fehlt',
  'documents may contain only one root': 'mehr als ein äußerstes Element',
  'text data outside of root node': 'Text außerhalb des äußersten Elements',
  'disallowed character': 'unerlaubtes Zeichen',
  'disallowed character in tag name': 'unerlaubtes Zeichen im Namen eines Elements',
  'disallowed character in attribute name': 'unerlaubtes Zeichen im Namen eines Attributs',
  'attribute without value': 'Attribut ohne Wert',
  'unquoted attribute value': 'Wert eines Attributs ohne Anführungszeichen',
  'duplicate attribute: {0}': 'doppeltes Attribut: {0}',
  'undefined entity': 'unbekannte Entität',
  'malformed character entity': 'fehlerhafte Zeichenreferenz',
  'malformed comment': 'fehlerhafter Kommentar',
  'not well-formed': 'nicht wohlgeformt',
};
