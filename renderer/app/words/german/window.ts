/** The frame of the window: bar, tabs, store, list, first steps, and what is said of files. */

import { counted } from '../counting.ts';
import type { Widened } from '../widened.ts';
import type { windowWords as english } from '../window.ts';
import { elements } from './counting.ts';

export const windowWords: Widened<typeof english> = {
  later: {
    coming: 'Einen Moment…',
    failed:
      'Dieser Teil des Fensters ließ sich nicht laden: noch einmal versuchen oder das Programm neu starten.',
  },
  start: {
    opening: 'Wird geöffnet…',
    failed: 'Standlines konnte nicht starten',
    retry: 'Noch einmal versuchen',
  },

  bar: {
    label: 'Konzert und Datei',
    file: 'Datei',
    new: 'Neu…',
    open: 'Öffnen…',
    recent: 'Zuletzt geöffnet',
    noRecent: 'Noch nichts geöffnet',
    forgetRecent: 'Liste leeren',
    demo: 'Demokonzert öffnen',
    save: 'Speichern',
    saveAs: 'Speichern unter…',
    print: 'Bühnenplan drucken…',
    printShort: 'Drucken',
    concert: 'Konzert und Grenzwerte…',
    edited: 'nicht gespeichert',
    readOnly: 'schreibgeschützt',
    undo: (name) => (name ? `Rückgängig: ${name}` : 'Nichts rückgängig zu machen'),
    redo: (name) => (name ? `Wiederholen: ${name}` : 'Nichts zu wiederholen'),
    commands: 'Befehl suchen',
    view: 'Ansicht',
    theme: 'Hell oder dunkel',
    themes: { system: 'Wie das System', light: 'Hell', dark: 'Dunkel' },
    language: 'Sprache',
    languages: { system: 'Wie das System', en: 'English', de: 'Deutsch' },
    singleKeys: 'Einzelne Buchstaben als Tasten',
    units: 'Einheiten',
    unitChoices: { document: 'Wie im Konzert', metric: 'Metrisch', imperial: 'Fuß und Zoll' },
    show: 'Im Plan zeigen',
    names: 'Namen',
    marks: 'Marken',
    grid: 'Raster',
    reach: 'Reichweiten',
    routes: 'Wege zum Ausgang',
    leftPanel: 'Fundus und Liste',
    rightPanel: 'Eigenschaften und Befunde',
  },

  setups: {
    label: 'Programm',
    add: 'Aufstellung hinzufügen',
    addEmpty: 'Neu, leer',
    copyThis: 'Kopie von dieser',
    rename: 'Umbenennen…',
    remove: 'Diese Aufstellung löschen',
    earlier: 'Weiter nach vorn',
    later: 'Weiter nach hinten',
    more: 'Diese Aufstellung',
    nameTitle: 'Name der Aufstellung',
    copyOf: (name) => `${name}, Kopie`,
    unnamed: (order) => `Aufstellung ${order}`,
  },

  store: {
    label: 'Fundus',
    search: 'Suchen: Cello, Pult…',
    withStand: 'Spieler kommen mit Pult',
    nothing: (search) => `Nichts gefunden zu „${search}“.`,
    found: elements,
    how: 'Auf den Plan ziehen oder anklicken und dann auf den Plan klicken. Die Eingabetaste stellt es in die Mitte.',
    placing: (name) => `Auf den Plan klicken, um hinzustellen: ${name}`,
    carrying: (name) => `Loslassen, um hinzustellen: ${name}`,
    putBack: 'legt es zurück',
    stop: 'Nichts mehr hinstellen',
    count: elements,
  },

  outline: {
    label: 'Auf dem Podium',
    empty: 'Hier steht noch nichts.',
    house: 'Podium und Saal',
    hiddenUnderlay: 'Unterlage, ausgeblendet',
    findings: (count, gravest) =>
      `${counted(count, 'Befund', 'Befunde')}, ${count === 1 ? gravest : `der schwerste: ${gravest}`}`,
    things: elements,
  },

  lost: {
    title: 'Das Programm hinter diesem Fenster antwortet nicht.',
    kept: 'Die Arbeit ist hier sicher, solange dieses Fenster offen bleibt; es versucht weiter, das Programm zu erreichen.',
    copy: 'Kopie mit dem Browser speichern',
    back: 'Das Programm antwortet wieder.',
    because: (cause) => `Das Programm hinter diesem Fenster antwortet nicht (${cause}).`,
  },

  banner: { dismiss: 'Meldung schließen' },

  hints: {
    label: 'Erste Schritte',
    lengths: { metric: '820, 2,4 m und 7\' 6"', imperial: '7\' 6", 90 und 2,4 m' },
    count: (step, steps) => `Versuch ${step} von ${steps}`,
    next: 'Weiter',
    show: 'Zeigen',
    away: 'Schließen',
    steps: (lengths) => [
      'Je voller ein Platz, desto mehr sieht er vom verdecktesten Spieler. Unter dem Plan andere wählen.',
      'Aufstellung 2b hat echte Mängel: einen der Befunde anklicken, und der Plan geht dorthin.',
      'Ein Pult ziehen: Plätze und Zahlen folgen der Hand. Escape stellt es zurück.',
      `Die Lage des Ausgewählten eintippen: ${lengths} – alles wird verstanden.`,
      'Einen Platz anklicken, um zu sehen, was ihm im Weg ist. Dann drucken: Der Bühnenplan ist genau maßstäblich.',
    ],
  },

  files: {
    savedAt: (time, name) => `Um ${time} gespeichert in ${name}`,
    savedAs: (name) => `Gespeichert: ${name}`,
    notKept: (name, message) =>
      `Die ungespeicherte Arbeit in „${name}“ lässt sich nicht nebenher sichern; bald in eine Datei speichern. (${message})`,
    changed: (name) =>
      `Ein anderes Programm hat „${name}“ geändert. Dieses Fenster zeigt noch den früheren Stand.`,
    loadChanged: 'Neuen Stand laden',
    demoName: 'Demokonzert',
    untitled: 'Ohne Titel',
    opened: (name) => `Geöffnet: ${name}`,
  },
};
