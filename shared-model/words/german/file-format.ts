import type { Entries } from '../catalogue.ts';

export const fileFormat: Entries = {
  ': {0} is not allowed; {1}': ': {0} ist nicht erlaubt; {1}',
  ' is missing; {0}': ' fehlt; {0}',
  ' is not a known field; {0}': ' ist kein bekanntes Feld; {0}',
  nothing: 'nichts',
  'not a number': 'keine Zahl',
  'a number too large to hold': 'eine zu große Zahl',
  'a list of {0}': 'eine Liste mit {0} Einträgen',
  'an object': 'ein Objekt',
  'There is no setup; add a record of kind "setup".':
    'Es gibt keine Aufstellung; einen Datensatz der Art "setup" ergänzen.',
  'There are {0} records; at most {1} are possible: make two concerts of it.':
    'Es gibt {0} Datensätze; höchstens {1} sind möglich: auf zwei Konzerte verteilen.',
  'There are {0} setups; at most {1} are possible: make two concerts of it.':
    'Es gibt {0} Aufstellungen; höchstens {1} sind möglich: auf zwei Konzerte verteilen.',
  'There are {0} places; at most {1} are possible: leave out parts of the house.':
    'Es gibt {0} Plätze; höchstens {1} sind möglich: Teile des Saals weglassen.',
  'There are {0} rows of seats; at most {1} are possible: leave out parts of the house.':
    'Es gibt {0} Platzreihen; höchstens {1} sind möglich: Teile des Saals weglassen.',
  'There are {0} corners of outlines and cables; at most {1} are possible: draw them with fewer.':
    'Umrisse und Kabel haben {0} Ecken; höchstens {1} sind möglich: mit weniger Ecken zeichnen.',
  'Setup {0} has {1} players; at most {2} are possible in one: take some out, or make two setups of it.':
    'Aufstellung {0} hat {1} Spieler; höchstens {2} sind in einer möglich: einige herausnehmen oder auf zwei Aufstellungen verteilen.',
  'Setup {0} has {1} players before {2} places, which makes {3} lines of sight; at most {4} are possible: leave out players, or parts of the house.':
    'Aufstellung {0} hat {1} Spieler vor {2} Plätzen, das ergibt {3} Sichtlinien; höchstens {4} sind möglich: Spieler oder Teile des Saals weglassen.',
  'There is no concert; add one record of kind "concert".':
    'Es gibt kein Konzert; einen Datensatz der Art "concert" ergänzen.',
  'There is no platform; add one record of kind "platform".':
    'Es gibt kein Podium; einen Datensatz der Art "platform" ergänzen.',
  'There are {0} records of kind "{1}"; there has to be exactly one.':
    'Es gibt {0} Datensätze der Art "{1}"; es muss genau einer sein.',
  ' or ': ' oder ',
  'there is no record of that id; name one of kind {0}':
    'kein Datensatz hat diese Id; einen der Art {0} nennen',
  'that is a record of kind {0}; name one of kind {1}':
    'das ist ein Datensatz der Art {0}; einen der Art {1} nennen',
  'it is there only in setup {0}; both must be in the same setup, or what is named must stay for the whole concert':
    'es ist nur in der Aufstellung {0} da; beides muss in derselben Aufstellung sein, oder das Genannte muss das ganze Konzert über bleiben',
  'name a setup that is in the programme itself, and not this one':
    'eine andere Aufstellung nennen, die selbst im Programm steht',
  'the platform has {0} edges, from 0 to {1}': 'das Podium hat {0} Kanten, von 0 bis {1}',
  ': the door reaches {0} mm along edge {1}, which is {2} mm long; make offset and width fit':
    ': die Tür reicht {0} mm weit an der Kante {1} entlang, die {2} mm lang ist; Versatz und Breite anpassen',
  'a setup has one {0} at most; leave one out':
    'je Aufstellung ist nur einmal möglich: {0}; das Überzählige weglassen',
  'a thing is in one group at most, and once; leave it out here':
    'jedes Element ist höchstens in einer Gruppe, und nur einmal; hier weglassen',
  'a group and all that is in it are there in the same setup, or all for the whole concert':
    'eine Gruppe und alles darin gehören zu derselben Aufstellung oder bleiben das ganze Konzert über',
  'The file is larger than {0} MB.': 'Die Datei ist größer als {0} MB.',
  'This is not a Standlines file: it holds binary data.':
    'Das ist keine Standlines-Datei: sie enthält Binärdaten.',
  'The file is empty.': 'Die Datei ist leer.',
  'This is not a Standlines file: it does not start with "{".':
    'Das ist keine Standlines-Datei: sie beginnt nicht mit "{".',
  'Line {0}, column {1}: {2}.': 'Zeile {0}, Spalte {1}: {2}.',
  'This is not a Standlines file: "format" is missing.': 'Das ist keine Standlines-Datei: "format" fehlt.',
  'This is not a Standlines file: "format" is {0} and not "{1}".':
    'Das ist keine Standlines-Datei: "format" ist {0} und nicht "{1}".',
  'give {0}, the version that this program writes': '{0} angeben, die Version, die dieses Programm schreibt',
  'The file was made by a newer Standlines (file version {0}, this program reads up to {1}); please update. The file is not touched.':
    'Die Datei stammt von einem neueren Standlines (Dateiversion {0}, dieses Programm liest bis {1}); bitte aktualisieren. Die Datei bleibt unverändert.',
  'give a length from {0} to {1} mm': 'eine Länge von {0} bis {1} mm angeben',
  'give an angle from {0} to {1} degrees': 'einen Winkel von {0} bis {1} Grad angeben',
  'give a share from 0 to 1, for instance 0.9 for 90 %':
    'einen Anteil von 0 bis 1 angeben, etwa 0.9 für 90 %',
  'give a time from 0 to {0} seconds, or null when it is not known':
    'eine Zeit von 0 bis {0} Sekunden angeben, oder null, wenn sie nicht bekannt ist',
  'give a whole number from {0} to {1}': 'eine ganze Zahl von {0} bis {1} angeben',
  'give a length from {0} to {1}': 'eine Länge von {0} bis {1} angeben',
  'give a length from about {0} to about {1}': 'eine Länge von etwa {0} bis etwa {1} angeben',
  'give a share from {0} to {1}': 'einen Anteil von {0} bis {1} angeben',
  'give a time from 0 to {0} seconds, or nothing when it is not known':
    'eine Zeit von 0 bis {0} Sekunden angeben, oder nichts, wenn sie nicht bekannt ist',
  ': there is no edge {0}; the platform has {1}': ': es gibt keine Kante {0}; das Podium hat {1}',
  ': the door would reach {0} along edge {1}, which is {2} long; make it narrower, or begin it nearer to the first corner':
    ': die Tür würde {0} weit an Kante {1} entlangreichen, die nur {2} lang ist; schmaler machen oder näher an der ersten Ecke beginnen lassen',
  ': “{0}” is there only in setup “{1}”; both must be in the same setup, or it must stay for the whole concert':
    ': „{0}“ ist nur in der Aufstellung „{1}“ da; beides muss in derselben Aufstellung sein, oder es muss das ganze Konzert über bleiben',
  ': there are numbers for {0} rows, and the block has {1}; give one number for each row, or one for all':
    ': angegeben sind Zahlen für {0} Reihen, der Block hat {1}; für jede Reihe eine Zahl angeben oder eine für alle',
  ': who sits in a wheelchair comes in it, too; choose another seat first':
    ': wer im Rollstuhl sitzt, kommt auch darin; erst einen anderen Sitz wählen',
  'give true or false': 'true oder false angeben',
  'give one of {0}': 'eines davon angeben: {0}',
  'give one line of text of at most {0} characters': 'eine Zeile Text mit höchstens {0} Zeichen angeben',
  'give text of at most {0} characters without control characters':
    'Text mit höchstens {0} Zeichen und ohne Steuerzeichen angeben',
  'give an id of 1 to 64 letters, digits, "-" or "_", starting with a letter':
    'eine Id aus 1 bis 64 Buchstaben, Ziffern, "-" oder "_" angeben, die mit einem Buchstaben beginnt',
  'give the id of a catalogue model: 1 to 64 letters, digits, ".", "-" or "_"':
    'die Id eines Modells im Katalog angeben: 1 bis 64 Buchstaben, Ziffern, ".", "-" oder "_"',
  'give a list with {0} to {1} entries': 'eine Liste mit {0} bis {1} Einträgen angeben',
  'give an object with the fields {0}': 'ein Objekt mit diesen Feldern angeben: {0}',
  'the fields here are {0}': 'die Felder sind hier {0}',
  'give a value': 'einen Wert angeben',
  ' (there is {0}, which is not a known field)': ' (es gibt {0}, das kein bekanntes Feld ist)',
  'there is more text after the end of the document; remove it':
    'nach dem Ende des Dokuments folgt weiterer Text; ihn entfernen',
  'expected ":" after the key': 'nach dem Schlüssel fehlt ":"',
  'expected "," or "{0}"': '"," oder "{0}" erwartet',
  'expected a key in double quotes': 'ein Schlüssel in doppelten Anführungszeichen erwartet',
  'the key {0} is not allowed; remove it': 'der Schlüssel {0} ist nicht erlaubt; ihn entfernen',
  'the key {0} stands twice in one object': 'der Schlüssel {0} steht zweimal in einem Objekt',
  'there are too many fields in one object': 'ein Objekt hat zu viele Felder',
  'there is more here than a Standlines file can hold':
    'das ist mehr, als eine Standlines-Datei enthalten kann',
  'it is nested deeper than {0} levels': 'es ist tiefer als {0} Ebenen verschachtelt',
  '{0} is not a number that a file can hold; give a finite number':
    '{0} ist keine Zahl, die in einer Datei stehen kann; eine endliche Zahl angeben',
  'expected a value, found {0}': 'ein Wert erwartet, gefunden: {0}',
  'a text in quotes runs over a line end or control character':
    'ein Text in Anführungszeichen läuft über ein Zeilenende oder Steuerzeichen',
  'unknown escape in a text': 'unbekannte Escape-Folge in einem Text',
  'the file ends in the middle; it is damaged or was not saved completely':
    'die Datei bricht mittendrin ab; sie ist beschädigt oder wurde nicht vollständig gespeichert',
  'there is a comma too many before "{0}"': 'vor "{0}" steht ein Komma zu viel',
  'The file is of version {0} and could not be brought up to date.':
    'Die Datei hat die Version {0} und ließ sich nicht auf den neuen Stand bringen.',
  'The file was of version {0} and has been brought up to version {1}.':
    'Die Datei hatte die Version {0} und wurde auf die Version {1} gebracht.',
  'name each stand once': 'jedes Pult nur einmal nennen',
  'name a stand that the plan has paper on': 'ein Pult nennen, auf dem nach dem Plan Papier liegt',
  'give the turns in the order of their places': 'die Wendestellen in der Reihenfolge ihrer Stellen angeben',
  'loose pages have no leaves; give 0': 'lose Seiten haben keine Blätter; 0 angeben',
  ' has {0} entries; give {1}, one for each side':
    ': Zahl der Einträge {0}; nötig {1}, einer für jede Pultseite',
  ' has {0} entries; give {1}, one for each state':
    ': Zahl der Einträge {0}; nötig {1}, einer für jeden Stand der Blätter',
  ' has {0} entries; give {1}, one for each page across':
    ': Zahl der Einträge {0}; nötig {1}, einer für jede Seite nebeneinander',
  'give a place that is not before "from"': 'eine Stelle angeben, die nicht vor "from" liegt',
  'the paper on {0} does not have it': 'das Papier auf {0} hat das nicht',
  'a view there has {0} pages': 'Seiten einer Ansicht dort: {0}',
  'give a list of records': 'eine Liste von Datensätzen angeben',
  ': "{0}" is already the id of record {1}; give each record its own':
    ': "{0}" ist schon die Id von Datensatz {1}; jedem Datensatz eine eigene geben',
  'record {0}': 'Datensatz {0}',
  'The catalogue does not have what {0} more of the records name.':
    'Weitere Datensätze, deren Modell der Katalog nicht hat: {0}.',
  '{0} {1}: the catalogue has no model {2}; it is taken for a usual one.':
    '{0} {1}: Das Modell {2} fehlt im Katalog; ein übliches wird angenommen.',
  'give a day that the calendar has': 'einen Tag angeben, den der Kalender hat',
  'name two different players': 'zwei verschiedene Spieler nennen',
  'name each pair once': 'jedes Paar nur einmal nennen',
  ' crosses or touches itself, repeats a corner or has no area; give its corners in order, each once':
    ' kreuzt oder berührt sich selbst, wiederholt eine Ecke oder hat keine Fläche; die Ecken der Reihe nach angeben, jede einmal',
  'the outline has {0} edges, from 0 to {1}': 'der Umriss hat {0} Kanten, von 0 bis {1}',
  'name each edge once': 'jede Kante nur einmal nennen',
  ' names {0} rows but "rows" is {1}; give one number for each row':
    ': Zahl der genannten Reihen {0}, aber "rows" ist {1}; für jede Reihe eine Zahl angeben',
  'an aisle lies between seats, and the longest row has {0}':
    'ein Gang liegt zwischen Plätzen, und die längste Reihe hat {0}',
  'give each aisle its own place': 'jedem Gang eine eigene Stelle geben',
  'the rows would run into themselves; give a larger radius':
    'die Reihen würden in sich selbst laufen; einen größeren Radius angeben',
  ' has {0} but the form is "{1}"; give {2}': ': {0} angegeben, aber die Form ist "{1}"; {2} angeben',
  'who sits in a wheelchair uses it; give "wheelchair"':
    'wer in einem Rollstuhl sitzt, benutzt ihn auch; "wheelchair" angeben',
  ' has a single number at its end; give x and y of each point':
    ' hat am Ende eine einzelne Zahl; von jedem Punkt x und y angeben',
  ' has one corner; give at least the two ends, or none for no cable':
    ' hat nur eine Ecke; mindestens die beiden Enden angeben, oder nichts, wenn es kein Kabel gibt',
  'give an object with an id, a kind and the fields of that kind':
    'ein Objekt mit einer Id, einer Art und den Feldern dieser Art angeben',
  'a player plays one part': 'ein Spieler spielt eine Stimme',
  ' has {0} entries but there are {1} parts; give one for each, or null':
    ': Zahl der Einträge {0}, Zahl der Stimmen {1}; für jede einen angeben, oder null',
  'the PDF has pages 1 to {0}; give one of them, or null':
    'das PDF hat die Seiten 1 bis {0}; eine davon angeben, oder null',
  'give two of the bars 0 to {0}, the earlier one first':
    'zwei der Takte 0 bis {0} angeben, den früheren zuerst',
  ': more than {0} bars are played; leave out repeats':
    ': mehr als {0} Takte werden gespielt; Wiederholungen weglassen',
  'give tempos in order, each within its bar': 'Tempi der Reihe nach angeben, jedes innerhalb seines Taktes',
  'give first bars in order; the first is 0': 'erste Takte der Reihe nach angeben; der erste ist 0',
  'give the bar, and from and to within it, in the order of the music':
    'den Takt und darin Anfang und Ende angeben, in der Reihenfolge der Musik',
  'give pages in the order of their first bars; the first begins with bar 0':
    'Seiten in der Reihenfolge ihrer ersten Takte angeben; die erste beginnt mit Takt 0',
  'there are {0} bars': 'Zahl der Takte: {0}',
  'give "{0}"': '"{0}" angeben',
  'give a place from 0 to {0} bars as performed': 'eine Stelle von 0 bis {0} gespielten Takten angeben',
  'give "page" or "turn"': '"page" oder "turn" angeben',
  'give 0 or 1': '0 oder 1 angeben',
  'give a percentile from 1 to 99': 'ein Perzentil von 1 bis 99 angeben',
  'give {"by": "anyone"}, {"by": "percentile", "percentile": 50} or {"by": "stature", "stature": 1700}':
    '{"by": "anyone"}, {"by": "percentile", "percentile": 50} oder {"by": "stature", "stature": 1700} angeben',
  'give a tempo from {0} to {1} quarters per minute': 'ein Tempo von {0} bis {1} Vierteln je Minute angeben',
  'give the code of a remark': 'den Code einer Bemerkung angeben',
  'give the name of a PDF without a folder, at most 200 characters with its ".pdf"':
    'den Namen eines PDFs ohne Ordner angeben, höchstens 200 Zeichen mit ".pdf"',
  'give 64 hexadecimal digits in small letters': '64 hexadezimale Ziffern in Kleinbuchstaben angeben',
  'give the id of a catalogue model: up to 64 letters, digits, ".", "-" or "_", or ""':
    'die Id eines Modells im Katalog angeben: bis zu 64 Buchstaben, Ziffern, ".", "-" oder "_", oder ""',
  'give "picture" or "lines"': '"picture" oder "lines" angeben',
  'give the bytes of a picture in base64': 'die Bytes eines Bildes in base64 angeben',
  'the picture is too large; make it smaller': 'das Bild ist zu groß; es verkleinern',
  'give a length from 0 to {0}': 'eine Länge von 0 bis {0} angeben',
  'give a number from 0.000001 to 1000000': 'eine Zahl von 0.000001 bis 1000000 angeben',
  'give {"type": "picture", ...} or {"type": "lines", ...}':
    '{"type": "picture", ...} oder {"type": "lines", ...} angeben',
  'give a date as YYYY-MM-DD, for instance 2027-03-14, or nothing':
    'ein Datum als JJJJ-MM-TT angeben, etwa 2027-03-14, oder nichts',
  'give a whole number from 0 to 1000, or a list of such numbers, one a row':
    'eine ganze Zahl von 0 bis 1000 angeben, oder eine Liste solcher Zahlen, eine je Reihe',
  'give one or two letters, or a number of up to three digits':
    'einen oder zwei Buchstaben oder eine Zahl mit bis zu drei Ziffern angeben',
};
