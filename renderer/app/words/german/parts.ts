/** Parts without a score, typed as tables, and parts as PDFs. */

import { atMost, fixed } from '#model/words/numbers.ts';
import { counted } from '../counting.ts';
import type { partsWords as english } from '../parts.ts';
import type { Widened } from '../widened.ts';

const millimetres = (length: number): string => `${atMost(length, 2)}\u00a0mm`;

const pages = (count: number): string => counted(count, 'Seite', 'Seiten');

export const partsWords: Widened<typeof english> = {
  tables: {
    title: (setup) => `Tabellen von „${setup}“`,
    open: 'Tabellen eingeben…',
    edit: 'Tabellen…',
    why: 'Ohne Partitur: eine Tabelle je Spieler, eine Zeile je Seite, so wie sie gelesen wird. Was noch einmal gespielt wird, steht noch einmal da.',
    paste:
      'Aus einer Tabellenkalkulation kopierte Zeilen lassen sich in jede Zelle einfügen; eine erste Zeile mit den Namen der Spalten darf dabei sein.',
    piece: 'Titel des Stücks',
    part: 'Stimme',
    playedBy: 'Gespielt von',
    nobody: 'Niemand hier',
    add: 'Weiterer Spieler',
    removeTable: (name) => `Diese Tabelle entfernen: ${name}`,
    removeShort: 'Tabelle entfernen',
    fromFile: 'Aus einer CSV-Datei…',
    columns: {
      page: 'Seite',
      'first bar': 'Erster Takt',
      'last bar': 'Letzter Takt',
      tempo: 'Tempo oder Sekunden',
      beats: 'Viertel',
      'free hands': 'Freie Hände',
    },
    hints: {
      page: 'Nummer der Seite',
      'first bar': 'Der erste Takt darauf',
      'last bar': 'Der letzte Takt darauf',
      tempo: 'Viertel je Minute oder die Dauer der Seite: 40 s, 1:20. Leer: wie zuvor',
      beats: 'Viertel in einem Takt; 4, wenn keine Tabelle es sagt',
      'free hands': 'Takte, in denen der Spieler nicht spielt: 12-14, 20; alle für die ganze Seite',
    },
    cell: (column, row) => `${column}, Zeile ${row}`,
    table: (name) => `Tabelle: ${name}`,
    unnamed: (index) => `Stimme ${index + 1}`,
    wrong: (name, problem) => `${name}: ${problem}`,
    fits: (bars, length) => `${counted(bars, 'Takt', 'Takte')}, ${length}. Die Tabellen passen zusammen.`,
    take: 'Übernehmen',
    taken: 'Die Musik ist aus den Tabellen übernommen.',
    source: 'eingegebene Tabellen',

    further: 'Stimme als Tabelle hinzufügen…',
    partRow: 'Seiten und Pausen',
    partShort: 'Tabelle…',
    partOf: (name) => `Tabelle: ${name}…`,
    furtherTitle: 'Eine Stimme, die in der Partitur fehlt',
    furtherWhy:
      'Die Seiten der Stimme und die Takte, in denen nicht gespielt wird. Die Zeilen gehen durch alle Takte, wie die Partitur sie druckt, jeden einmal: Wiederholungen, Tempo und Taktlänge kommen aus der Partitur.',
    partTitle: (name) => `Tabelle: ${name}`,
    partWhy:
      'Tritt an die Stelle der Seiten und Pausen dieser Stimme und keiner anderen. Die Zeilen gehen durch alle Takte, wie die Partitur sie druckt, jeden einmal. Wo die freien Takte bleiben, bleiben auch die Pausen der Partitur.',
    partFits: (count) => `${pages(count)}. Die Tabelle passt zur Partitur.`,
    partTaken: (name) => `Aus der Tabelle übernommen: ${name}.`,
    removePart: (name) => `Diese Stimme entfernen: ${name}`,
    removePartShort: 'Stimme entfernen',
    partRemoved: (name) => `Nicht mehr unter den Stimmen: ${name}.`,
  },

  pdf: {
    title: (part) => `PDF der Stimme: ${part}`,
    none: 'Noch kein PDF dieser Stimme.',
    choose: 'PDF wählen…',
    look: 'PDF…',
    printed: 'Gedruckte Stimme',
    other: 'Anderes PDF…',
    forget: 'PDF entfernen',
    why: 'Die Stimme, wie sie gedruckt ist: für Hefte und um die Größe der Notenzeilen zu kennen. Das Konzert behält den Namen der Datei, nicht die Datei.',
    pages: (count, width, height) => `${pages(count)}, ${Math.round(width)} x ${Math.round(height)}\u00a0mm`,
    found: 'Es liegt neben dem Konzert oder wurde gezeigt.',
    missing: (file) =>
      `„${file}“ liegt nicht neben der Datei des Konzerts. Dorthin legen, oder zeigen, wo das PDF liegt.`,
    changed: (file) =>
      `„${file}“ ist da, aber nicht mehr die Datei, die gewählt wurde: Der Inhalt hat sich geändert.`,
    takeChanged: 'So nehmen, wie es jetzt ist',
    find: 'Zeigen, wo es liegt…',
    reading: 'PDF wird gelesen…',
    given: (file) => `Die Stimme ist gedruckt in ${file}.`,
    forgotten: 'Diese Stimme hat jetzt kein PDF.',
    otherFile: (file) => `Das ist nicht „${file}“, wie es gewählt wurde: Der Inhalt ist ein anderer.`,
    map: 'Seiten der Stimme',
    mapHint:
      'Die Seiten des PDF in der Reihenfolge der Stimme: 2-6, 8. Ein Strich steht für eine Seite, die das PDF nicht hat.',
    mapBad: (count) => `Seiten von 1 bis ${count} angeben, etwa 2-6, 8; einen Strich für keine.`,
    tooFew: (count, mapped) => `Die Stimme hat ${pages(count)}; aus dem PDF kommen davon ${mapped}.`,
    tooMany: (count, given, left) =>
      `Aus dem PDF kommen ${pages(given)}, die Stimme hat ${count}: PDF-${left} übrig.`,
    leftOut: (left, all) => {
      if (left.length === 1) return `Seite ${all} bleibt`;
      return left.length === 2 ? `Seiten ${left.join(' und ')} bleiben` : `Seiten ${all} bleiben`;
    },
    staffBad: (least, most) =>
      `Die Höhe einer Notenzeile in Millimetern angeben, von ${least} bis ${most}; nichts, wenn sie nicht bekannt ist.`,
    isPage: (page) => `Seite ${page} der Stimme`,
    isPages: (shown) => `Seiten ${shown.join(', ')} der Stimme`,
    unused: 'nicht verwendet',
    behind: (count) => `übrig: Die Stimme hat ${pages(count)}`,
    pdfPage: (page) => `PDF-Seite ${page}`,
    use: (page) => `PDF-Seite ${page} verwenden`,
    begin: 'Hier beginnen',
    beginAt: (page) => `Hier beginnen: PDF-Seite ${page}`,
    measure: 'Messen',
    measureOn: (page) => `Messen: PDF-Seite ${page}`,
    noPicture: 'Diese Seite lässt sich nicht zeigen.',
    staff: 'Notenzeile, gedruckte Höhe',
    staffHint: 'Von der untersten bis zur obersten Linie einer Notenzeile, Millimeter. Leer: nicht bekannt.',
    millimetres: 'mm',
    fromPart: (size) => `Aus der gedruckten Stimme: ${millimetres(size)}. Was hier eingegeben ist, geht vor.`,
  },

  ruler: {
    title: (page) => `Lineal auf PDF-Seite ${page}`,
    how: 'Eine Marke auf die unterste, die andere auf die oberste Linie einer Notenzeile legen: ziehen, oder mit den Pfeiltasten verschieben (0,1\u00a0mm; mit der Umschalttaste 2\u00a0mm).',
    bottom: 'Unterste Linie',
    top: 'Oberste Linie',
    at: (x, y) => `${fixed(x, 1)} mm von links, ${fixed(y, 1)} mm von oben`,
    reading: (height) => `Notenzeile ${millimetres(height)}, Zwischenraum ${millimetres(height / 4)}`,
    tooSmall: 'Die Marken auf die beiden äußeren Linien einer Notenzeile legen.',
    larger: 'Größer',
    smaller: 'Kleiner',
    zoom: (share) => `${share}\u00a0%`,
    take: 'Diese Höhe verwenden',
    back: 'Zurück zu den Seiten',
  },

  jumps: {
    switch: 'Wiederholungen nach D.C. und D.S. spielen',
    hint: 'In der Regel fallen sie weg.',
    lengths: (without, made) => `${without} ohne, ${made} mit ihnen`,
  },
};
