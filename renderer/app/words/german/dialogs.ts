/** The dialogs. */

import { counted } from '../counting.ts';
import type { dialogsWords as english } from '../dialogs.ts';
import type { Widened } from '../widened.ts';
import { places } from './counting.ts';

export const dialogsWords: Widened<typeof english> = {
  dialogs: {
    cancel: 'Abbrechen',
    close: 'Schließen',
    unsaved: {
      title: (name) => `Änderungen an „${name}“ speichern?`,
      words: 'Sonst gehen sie verloren.',
      save: 'Speichern',
      discard: 'Verwerfen',
    },
    conflict: {
      title: 'Die Datei wurde inzwischen geändert',
      copy: 'Eigene als Kopie speichern…',
      copyHelp: 'Beide Fassungen bleiben.',
      theirs: 'Fremde Fassung laden',
      theirsHelp: 'Die eigenen ungespeicherten Änderungen gehen verloren.',
      overwrite: 'Mit der eigenen überschreiben',
      overwriteHelp: 'Die Änderungen des anderen Programms gehen verloren.',
    },
    notSaved: {
      title: 'Nicht gespeichert',
      replace: 'Trotzdem speichern',
      elsewhere: 'Anderswo speichern…',
    },
    recovery: {
      title: 'Ungespeicherte Arbeit gefunden',
      words:
        'Dies war nicht gespeichert, als das Fenster geschlossen wurde. Ohne ausdrückliches Verwerfen geht nichts davon verloren.',
      at: (when) => `gesichert ${when}`,
      never: 'nie in eine Datei gespeichert',
      open: 'Öffnen',
      discard: 'Verwerfen',
      later: 'Später entscheiden',
      sure: 'Wirklich verwerfen?',
    },
    place: {
      openTitles: {
        standlines: 'Konzert öffnen',
        pdf: 'PDF öffnen',
        score: 'Partitur öffnen',
        table: 'Tabelle öffnen',
        underlay: 'Bild, PDF oder DXF öffnen',
        dxf: 'DXF öffnen',
        csv: 'Tabelle öffnen',
        zip: 'ZIP öffnen',
      },
      saveTitles: {
        standlines: 'Konzert speichern',
        pdf: 'Als PDF speichern',
        dxf: 'Als DXF speichern',
        csv: 'Als CSV speichern',
        zip: 'Als ZIP speichern',
      },
      up: 'Ordner darüber',
      folder: 'Ordner',
      name: 'Dateiname',
      open: 'Öffnen',
      save: 'Hier speichern',
      replace: 'Ersetzen',
      exists: (name) => `„${name}“ gibt es dort schon.`,
      empty: 'Hier sind keine Ordner und keine passenden Dateien.',
      noFolder: (name) => `Dort gibt es keinen Ordner „${name}“, oder er ist versteckt.`,
      loading: 'Ordner wird gelesen…',
      files: 'Ordner und Dateien',
    },
    newConcert: {
      title: 'Neues Konzert',
      words: 'Für den Anfang einen Saal wählen. Alles daran lässt sich später ändern.',
      begin: 'Beginnen',
    },
    otherHouse: {
      title: 'Anderer Saal',
      words: 'Podium, Türen und Plätze werden ausgetauscht. Was auf dem Podium steht, bleibt, wo es ist.',
      take: 'Diesen Saal nehmen',
    },
    plainHouse: {
      name: 'Aus fünf Zahlen',
      summary: (seats) => `${places(seats)} in geraden Reihen vor einem schlichten Podium.`,
      width: 'Podium, Breite',
      depth: 'Podium, Tiefe',
      height: 'Podium, Höhe',
      rows: 'Sitzreihen',
      seats: 'Plätze je Reihe',
    },
    sheets: {
      preview: 'Vorschau',
      earlier: 'Voriges Blatt',
      later: 'Nächstes Blatt',
      sheet: (number, count) => `Blatt ${number} von ${count}`,
    },
    print: {
      title: 'Bühnenplan drucken',
      paper: 'Papier',
      orientation: 'Ausrichtung',
      orientations: { auto: 'Wie es besser passt', portrait: 'Hochformat', landscape: 'Querformat' },
      scale: 'Maßstab',
      bestScale: 'Größter, der passt',
      ratio: (scale) => `1:${scale}`,
      setup: 'Aufstellung',
      save: 'Als PDF speichern…',
      saving: 'Wird geschrieben…',
      saved: (name) => `Der Bühnenplan liegt in ${name}.`,
      drawing: 'Blätter werden gezeichnet…',
      trying: 'Zu den Befunden werden noch Änderungen ausprobiert; ihre Liste folgt.',
      exact: (scale) => `Mit 100 % gedruckt ist dies genau ${scale}.`,
      failed: (message) => `Die Blätter lassen sich nicht zeichnen: ${message}`,
    },
    commands: {
      title: 'Befehl suchen',
      search: 'Was soll geschehen?',
      found: (count) => counted(count, 'Befehl', 'Befehle'),
      nothing: 'Kein Befehl passt zu diesen Worten.',
      list: 'Befehle',
    },
    setupName: { keep: 'Übernehmen' },
  },
};
