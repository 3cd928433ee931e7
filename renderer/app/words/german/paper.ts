/** Printing booklets and cue cards. */

import { counted } from '../counting.ts';
import type { paperWords as english } from '../paper.ts';
import type { Widened } from '../widened.ts';

export const paperWords: Widened<typeof english> = {
  paper: {
    action: 'Hefte und Karten…',
    title: 'Hefte und Stichwortkarten',
    none: 'Es gibt keinen Seitenplan mit Papier zum Drucken: zuerst die Wendestellen planen.',
    stale: 'Das Konzert hat sich seit diesem Plan geändert. Gedruckt wird, was geplant war.',
    broken: (count) =>
      `Dieser Plan verletzt ${counted(count, 'Regel', 'Regeln')}: siehe Wendestellen. Auf dem Papier steht es auch.`,
    what: 'Was gedruckt wird',
    print: 'Drucken',
    cards: 'Stichwortkarten',
    cardsAre: (players) =>
      `für ${counted(players, 'Spieler', 'Spieler')}: was aufzulegen ist, welche Seite wo liegt, jede Wendestelle`,
    onOf: (what) => `Papier: ${what}`,
    sheets: (printed, how) =>
      how === 0
        ? `${counted(printed, 'Blatt', 'Blätter')}.`
        : `${counted(printed, 'Blatt', 'Blätter')} in wahrer Größe und ${how} mit Anleitung.`,
    pageASheet:
      'Eine Druckbahn ist größer als dieses Papier: Jede Seite kommt auf ein eigenes Blatt, die Blätter werden nebeneinandergeklebt.',
    sources: 'Seiten der Stimmen',
    blanks: 'nummerierte leere Seiten zum Überkleben',
    noPdf: 'noch kein PDF',
    found: (file) => file,
    looking: (file) => `${file}: wird gesucht…`,
    missing: (file) => `${file} liegt nicht neben dem Konzert.`,
    changed: (file) => `${file} ist nicht mehr die Datei, die gewählt wurde.`,
    show: 'Zeigen, wo es liegt…',
    showOf: (player) => `Zeigen, wo das PDF liegt: ${player}…`,
    other: (file) => `Das ist eine andere Datei als ${file}.`,
    givePdf: 'PDFs der Stimmen…',
    oneFile: 'Alles in einer Datei',
    replace: 'Dateien mit diesen Namen ersetzen',
    beside: 'Für die erste Datei wird ein Ort gewählt; die anderen kommen daneben.',
    save: 'PDF speichern…',
    saveAll: (count) => `${count} PDFs speichern…`,
    saving: (done, count) => (count === 1 ? 'Wird gespeichert…' : `Speichert ${done + 1} von ${count}…`),
    stop: 'Anhalten',
    stopped: (done, count) => `Angehalten: ${done} von ${count} gespeichert.`,
    saved: (names) => `Gespeichert: ${names.join(', ')}`,
    exists: (name) => `„${name}“ gibt es dort schon.`,
    files: (piece, what) => `${piece}, ${what}`,
  },
};
