import type { Entries } from '../catalogue.ts';

export const shell: Entries = {
  'There is no call named "{0}".': 'Einen Aufruf „{0}“ gibt es nicht.',
  'A fault inside the program stopped "{0}". Your work is not changed.':
    'Ein Fehler im Programm hat „{0}“ angehalten. Die Arbeit ist nicht verändert.',
  'The arguments of "{0}" are not of its form (at {1}).':
    'Die Angaben zu „{0}“ haben nicht die richtige Form (bei {1}).',
  'The arguments of "{0}" are not of its form.': 'Die Angaben zu „{0}“ haben nicht die richtige Form.',
  'A call is {"args": [...]}.': 'Ein Aufruf ist {"args": [...]}.',
  'That is too large.': 'Das ist zu groß.',
  'This server answers only to its own address.': 'Dieser Server antwortet nur unter seiner eigenen Adresse.',
  'This server answers only to its own pages.': 'Dieser Server antwortet nur seinen eigenen Seiten.',
  'Calls are made with POST.': 'Aufrufe geschehen mit POST.',
  'The address of this page lacks the right token. Start the program again and use the address it gives.':
    'In der Adresse dieser Seite fehlt der richtige Schlüssel. Das Programm neu starten und die Adresse benutzen, die es nennt.',
  'Calls are made with JSON.': 'Aufrufe geschehen mit JSON.',
  'Files are read with GET.': 'Dateien werden mit GET gelesen.',
  'There is no such file.': 'Diese Datei gibt es nicht.',
  'This window runs in {0}, because the loopback shell was asked for. Everything else is the same.':
    'Dieses Fenster läuft in {0}, weil es so verlangt wurde. Alles andere ist gleich.',
  "This window runs in {0}, because Electron's sandbox does not work for root. Everything else is the same.":
    'Dieses Fenster läuft in {0}, weil Electron als root nicht abgeschirmt laufen kann. Alles andere ist gleich.',
  "This window runs in {0}, because Electron's runtime is not on this machine and could not be fetched. Everything else is the same.":
    'Dieses Fenster läuft in {0}, weil Electron auf diesem Rechner fehlt und nicht geladen werden konnte. Alles andere ist gleich.',
  'This window runs in {0}, because Electron did not run on this machine. Everything else is the same.':
    'Dieses Fenster läuft in {0}, weil Electron auf diesem Rechner nicht lief. Alles andere ist gleich.',
  'This call does not come from a window of the program.':
    'Dieser Aufruf kommt nicht aus einem Fenster des Programms.',
  'Standlines concert': 'Standlines-Konzert',
  Table: 'Tabelle',
  'Picture, PDF or DXF': 'Bild, PDF oder DXF',
  'DXF drawing': 'DXF-Zeichnung',
  'CSV table': 'CSV-Tabelle',
  'Files in a ZIP': 'Dateien in einem ZIP',
  'This concert has changes that are not saved.':
    'Dieses Konzert hat Änderungen, die nicht gespeichert sind.',
  'If you leave now they are kept aside and offered to you at the next start.':
    'Beim Verlassen werden sie beiseitegelegt und beim nächsten Start angeboten.',
  Stay: 'Bleiben',
  Leave: 'Verlassen',
  'The window has stopped working.': 'Das Fenster reagiert nicht mehr.',
  'Your last changes have been kept aside and will be offered to you.':
    'Die letzten Änderungen sind beiseitegelegt und werden angeboten.',
  'Open again': 'Neu öffnen',
  Quit: 'Beenden',
  Edit: 'Bearbeiten',
  Window: 'Fenster',
  'About Standlines': 'Über Standlines',
  Services: 'Dienste',
  'Hide Standlines': 'Standlines ausblenden',
  'Hide Others': 'Andere ausblenden',
  'Show All': 'Alle einblenden',
  'Quit Standlines': 'Standlines beenden',
  Undo: 'Rückgängig',
  Redo: 'Wiederholen',
  Cut: 'Ausschneiden',
  Copy: 'Kopieren',
  Paste: 'Einsetzen',
  'Paste and Match Style': 'Einsetzen und Stil anpassen',
  Delete: 'Löschen',
  'Select All': 'Alles auswählen',
  Minimize: 'Im Dock ablegen',
  Zoom: 'Zoomen',
  'Bring All to Front': 'Alle nach vorne bringen',
  'The concert has no setup "{0}".': 'Das Konzert hat keine Aufstellung „{0}“.',
  'No permission for "{0}" in {1}. Have it given to you, or choose another place.':
    'Keine Berechtigung für „{0}“ in {1}. Eine Berechtigung einholen oder einen anderen Ort wählen.',
  '"{0}" is not there (looked in {1}).': '„{0}“ ist nicht da (gesucht in {1}).',
  '"{0}" is not there: {1} is not a folder.': '„{0}“ ist nicht da: {1} ist kein Ordner.',
  '{0} is read-only, so "{1}" cannot be written there. Choose another place.':
    '{0} ist schreibgeschützt, „{1}“ kann dort nicht gespeichert werden. Einen anderen Ort wählen.',
  'The disk is full: "{0}" could not be written in {1}. Free some space or choose another place.':
    'Der Datenträger ist voll: „{0}“ konnte in {1} nicht gespeichert werden. Platz schaffen oder einen anderen Ort wählen.',
  'Your share of the disk is used up: "{0}" could not be written in {1}.':
    'Der eigene Anteil am Datenträger ist verbraucht: „{0}“ konnte in {1} nicht gespeichert werden.',
  '"{0}" is a folder, not a file.': '„{0}“ ist ein Ordner, keine Datei.',
  '"{0}" is a link that leads round in a circle.': '„{0}“ ist eine Verknüpfung, die im Kreis führt.',
  'The name "{0}..." is too long. Choose a shorter one.':
    'Der Name „{0}...“ ist zu lang. Einen kürzeren wählen.',
  'That is not a file name: it holds a character that names cannot have.':
    'Das ist kein Dateiname: Er enthält ein Zeichen, das in Namen nicht stehen kann.',
  '"{0}" is in use by another program. Close it there and try again.':
    '„{0}“ ist in einem anderen Programm geöffnet. Dort schließen und noch einmal versuchen.',
  'The disk reported an error at "{0}" in {1}. Save a copy elsewhere and have the disk looked at.':
    'Der Datenträger meldet einen Fehler bei „{0}“ in {1}. Eine Kopie anderswo speichern und den Datenträger prüfen lassen.',
  'The system answered {0} for "{1}" in {2}.': 'Das System antwortete {0} bei „{1}“ in {2}.',
  '"{0}" cannot be a file name: {1}.': '„{0}“ kann kein Dateiname sein: {1}.',
  'it is empty': 'er ist leer',
  'it holds a character that file names cannot have':
    'er enthält ein Zeichen, das in Dateinamen nicht stehen kann',
  'it holds half a character': 'er enthält ein halbes Zeichen',
  'the system keeps that name for a device': 'das System behält diesen Namen einem Gerät vor',
  'it ends with a dot or a space': 'er endet mit einem Punkt oder Leerzeichen',
  'it is too long': 'er ist zu lang',
  'Give the file a name that ends in ".{0}".': 'Der Datei einen Namen geben, der auf „.{0}“ endet.',
  'This shell has no dialogs of the system: browse the folders instead.':
    'Hier gibt es keine Dialoge des Systems: stattdessen in den Ordnern blättern.',
  'That file is no longer known here. Open it again.':
    'Diese Datei ist hier nicht mehr bekannt. Sie neu öffnen.',
  '"{0}" is not an ordinary file.': '„{0}“ ist keine gewöhnliche Datei.',
  '"{0}" is not a Standlines file: it is not text in UTF-8.':
    '„{0}“ ist keine Standlines-Datei: kein Text in UTF-8.',
  '"{0}" has {1} MB; a Standlines file has at most {2} MB.':
    '„{0}“ hat {1} MB; eine Standlines-Datei hat höchstens {2} MB.',
  '"{0}" has {1} MB; a table has at most {2} MB.': '„{0}“ hat {1} MB; eine Tabelle hat höchstens {2} MB.',
  '"{0}" has {1} MB; a part has at most {2} MB.': '„{0}“ hat {1} MB; eine Stimme hat höchstens {2} MB.',
  '"{0}" has {1} MB; a score has at most {2} MB.': '„{0}“ hat {1} MB; eine Partitur hat höchstens {2} MB.',
  '"{0}" has {1} MB; a file for an underlay has at most {2} MB.':
    '„{0}“ hat {1} MB; eine Datei für eine Unterlage hat höchstens {2} MB.',
  '"{0}" cannot be kept in a concert: give the file a plain name that ends in ".pdf", of at most 200 characters.':
    '„{0}“ kann nicht im Konzert stehen: der Datei einen einfachen Namen geben, der auf „.pdf“ endet, mit höchstens 200 Zeichen.',
  'Page {0} of "{1}" is {2}: no page for a stand is that size ({3} to {4} mm a side).':
    'Seite {0} von „{1}“ misst {2}: So groß ist keine Seite für ein Pult ({3} bis {4} mm je Kante).',
  '"{0}" is cropped on page {1}: what lies outside is neither shown nor printed.':
    '„{0}“ ist auf Seite {1} beschnitten: Was außerhalb liegt, wird weder gezeigt noch gedruckt.',
  '"{0}" is cropped on {1} pages, the first of them page {2}: what lies outside is neither shown nor printed.':
    '„{0}“ ist auf {1} Seiten beschnitten, zuerst auf Seite {2}: Was außerhalb liegt, wird weder gezeigt noch gedruckt.',
  '"{0}" has page {1} turned in the file: taken as they are looked at.':
    'In „{0}“ ist Seite {1} gedreht gespeichert: Sie gilt so, wie sie angezeigt wird.',
  '"{0}" has {1} pages, the first of them page {2} turned in the file: taken as they are looked at.':
    'In „{0}“ sind {1} Seiten gedreht gespeichert, zuerst Seite {2}: Sie gelten so, wie sie angezeigt werden.',
  '"{0}" has pages of different sizes: page 1 is {1}, page {2} is {3}.':
    '„{0}“ hat Seiten verschiedener Größe: Seite 1 misst {1}, Seite {2} misst {3}.',
  'That unsaved work is no longer there, or it is damaged.':
    'Diese nicht gespeicherte Arbeit ist nicht mehr da oder beschädigt.',
  '"{0}" is not an ordinary file. Choose another name.':
    '„{0}“ ist keine gewöhnliche Datei. Einen anderen Namen wählen.',
  'There is no folder {0}.': 'Der Ordner {0} ist nicht da.',
  '"{0}" is marked read-only. Replace it all the same, or save under another name.':
    '„{0}“ ist schreibgeschützt. Trotzdem ersetzen oder unter anderem Namen speichern.',
  'The drive that held "{0}" is no longer at {1}. Put it back, or save elsewhere.':
    'Das Laufwerk mit „{0}“ ist nicht mehr unter {1}. Es wieder anschließen oder anderswo speichern.',
  '"{0}" has been moved or deleted since it was opened. Save it again?':
    '„{0}“ wurde seit dem Öffnen verschoben oder gelöscht. Noch einmal speichern?',
  'There is already a "{0}" in {1}. Replace it?': '„{0}“ gibt es in {1} schon. Ersetzen?',
  'Another program has changed "{0}" since it was opened. Keep yours, load theirs, or save a copy.':
    'Ein anderes Programm hat „{0}“ seit dem Öffnen geändert. Den eigenen Stand behalten, den fremden laden oder eine Kopie speichern.',
  'Saved, but the version before it could not be kept in {0}.':
    'Gespeichert, aber der vorige Stand konnte in {0} nicht aufgehoben werden.',
  'Saved, but the disk reported an error in {0}. Keep a copy elsewhere.':
    'Gespeichert, aber der Datenträger meldet einen Fehler in {0}. Anderswo eine Kopie aufheben.',
  '"{0}" is empty.': '„{0}“ ist leer.',
  '"{0}" is no MusicXML: it is neither XML nor a compressed score (.mxl). Export MusicXML from the music program.':
    '„{0}“ ist kein MusicXML: weder XML noch eine gepackte Partitur (.mxl). Aus dem Notenprogramm MusicXML exportieren.',
  '"{0}" is one score; there is none to choose by "{1}".':
    '„{0}“ ist eine einzige Partitur; mit „{1}“ ist nichts zu wählen.',
  '"{0}" names "{1}" as its score, but does not hold it.':
    '„{0}“ nennt „{1}“ als Partitur, enthält sie aber nicht.',
  '"{0}" is refused: its score is a compressed file again.':
    '„{0}“ wird abgelehnt: Die Partitur darin ist wieder eine gepackte Datei.',
  '"{0}" is a compressed file without {1}, so it is no compressed score (.mxl).':
    '„{0}“ ist eine gepackte Datei ohne {1}, also keine gepackte Partitur (.mxl).',
  '"{0}" does not say which of its files is the score.':
    '„{0}“ sagt nicht, welche der Dateien darin die Partitur ist.',
  '"{0}" is refused: its score "{1}" leads out of the file.':
    '„{0}“ wird abgelehnt: Die Partitur „{1}“ führt aus der Datei hinaus.',
  '"{0}" holds no score "{1}"; it holds {2}.': '„{0}“ enthält keine Partitur „{1}“; darin sind {2}.',
  '"{0}" is not text in {1}, as it says or as XML has it; save it again from the music program.':
    '„{0}“ ist kein Text in {1}, wie angegeben oder bei XML üblich; aus dem Notenprogramm neu speichern.',
  '"{0}" is in the encoding {1}; save it as UTF-8 from the music program.':
    '„{0}“ hat die Kodierung {1}; aus dem Notenprogramm als UTF-8 speichern.',
  '"{0}": {1}': '„{0}“: {1}',
  'it is cut short': 'sie ist abgeschnitten',
  'it holds {0} files, and a score has at most {1}':
    'sie enthält {0} Dateien, und eine Partitur hat höchstens {1}',
  'it holds "{0}" twice': 'sie enthält „{0}“ zweimal',
  '"{0}" is not as long as it says': '„{0}“ ist nicht so lang wie angegeben',
  'the check sum of "{0}" is wrong': 'die Prüfsumme von „{0}“ ist falsch',
  'its content cannot be unpacked': 'der Inhalt lässt sich nicht entpacken',
  'its content is cut short': 'der Inhalt ist abgeschnitten',
  'its directory is broken': 'das Verzeichnis darin ist beschädigt',
  'it is protected by a password; take that off first':
    'sie ist durch ein Passwort geschützt; es zuerst entfernen',
  '"{0}" is packed in an unusual way': '„{0}“ ist auf ungewöhnliche Weise gepackt',
  '"{0}" in it leads out of the file': '„{0}“ darin führt aus der Datei hinaus',
  '"{0}" swells to more than {1} times its size': '„{0}“ wächst auf mehr als das {1}-Fache',
  'unpacked it has more than {0} MB': 'entpackt hat sie mehr als {0} MB',
  '"{0}" is not a whole compressed score: {1}. Fetch or export it again.':
    '„{0}“ ist keine vollständige gepackte Partitur: {1}. Neu holen oder exportieren.',
  '"{0}" is refused: {1}.': '„{0}“ wird abgelehnt: {1}.',
  '"{0}" is larger than any table of a part: choose another file.':
    '„{0}“ ist größer als jede Tabelle einer Stimme: eine andere Datei wählen.',
  '"{0}" is no table: save it as CSV from the spreadsheet.':
    '„{0}“ ist keine Tabelle: aus der Tabellenkalkulation als CSV speichern.',
  '"{0}" is no picture (PNG or JPEG), no PDF and no DXF, so it cannot go under the plan.':
    '„{0}“ ist weder Bild (PNG oder JPEG) noch PDF noch DXF und kann nicht unter den Plan.',
  '"{0}" is a picture without a size: it is damaged.': '„{0}“ ist ein Bild ohne Größe: Es ist beschädigt.',
  '"{0}" has {1} x {2} pixels; up to {3} million can be read: scan it coarser.':
    '„{0}“ hat {1} x {2} Pixel; bis zu {3} Millionen können gelesen werden: gröber scannen.',
  '"{0}" holds more than can be read: print the page to a PDF of its own, or save it as a picture.':
    '„{0}“ enthält mehr, als gelesen werden kann: die Seite in ein eigenes PDF drucken oder als Bild speichern.',
  '"{0}" is a binary DXF, which cannot be read: save it as DXF in text (ASCII) form.':
    '„{0}“ ist ein binäres DXF, das nicht gelesen werden kann: als DXF in Textform (ASCII) speichern.',
  '"{0}" is a DWG, which cannot be read: ask for a DXF or a PDF of it.':
    '„{0}“ ist ein DWG, das nicht gelesen werden kann: um ein DXF oder PDF davon bitten.',
  '"{0}" has {1} MB; up to {2} MB can be read: leave out what is not needed under the plan.':
    '„{0}“ hat {1} MB; bis zu {2} MB können gelesen werden: weglassen, was unter dem Plan nicht gebraucht wird.',
  'Not saved, because it could not be opened again: {0}. The file on disk is unchanged.':
    'Nicht gespeichert, weil es sich nicht wieder öffnen ließe: {0}. Die Datei auf dem Datenträger ist unverändert.',
};
