/** Drawings and pictures under the plan: adding them, setting them right, tracing the platform; and files for other programs. */

import { counted } from '../counting.ts';
import type { underlayWords as english } from '../underlay.ts';
import type { Widened } from '../widened.ts';

export const underlayWords: Widened<typeof english> = {
  underlay: {
    action: 'Zeichnung unter den Plan legen…',
    title: 'Eine Zeichnung unter dem Plan',
    explained:
      'Die Zeichnung des Hauses oder ein Foto davon kann unter dem Plan liegen, um danach aufzustellen und das Podium nachzuzeichnen. Gedruckt wird sie nie.',
    kinds: 'Ein Bild (PNG, JPEG), ein PDF oder ein DXF.',
    choose: 'Datei wählen…',
    other: 'Andere Datei…',
    reading: 'Wird gelesen…',
    page: (page) => `Seite ${page}`,
    whichPage: (name, count) => `${name} hat ${counted(count, 'Seite', 'Seiten')}. Welche soll es sein?`,
    unitAsked: (name) =>
      `In ${name} steht nicht, in welcher Einheit gezeichnet ist. Ist sie nicht bekannt, genügt irgendeine: Zwei Punkte rücken es danach zurecht.`,
    unit: 'Eine Einheit der Zeichnung ist',
    units: {
      '1': 'ein Millimeter',
      '10': 'ein Zentimeter',
      '1000': 'ein Meter',
      '25.4': 'ein Zoll',
      '304.8': 'ein Fuß',
    },
    extent: (width, depth) => `Die Zeichnung ist dann ${width} breit und ${depth} tief.`,
    put: 'Unter den Plan legen',
    smaller: (name, width, height) =>
      `${name} wurde auf ${width} x ${height} Pixel verkleinert: Feiner zeichnet niemand nach.`,
    leftOut: (name, things) => `Von ${name} sind nur Linien und Kurven zu sehen. Nicht gezeigt: ${things}.`,
    added: (name) => `${name} liegt unter dem Plan.`,
    damaged: (name) => `„${name}“ ist beschädigt oder nicht, was der Name sagt.`,
    locked: (name) =>
      `„${name}“ ist mit einem Kennwort gesperrt: ohne Kennwort speichern und noch einmal wählen.`,
    tooLong: (name) =>
      `„${name}“ zu lesen dauert zu lange: weglassen, was unter dem Plan nicht gebraucht wird, oder als Bild speichern.`,
    noLines: (name) =>
      `„${name}“ hat keine sichtbaren Linien, Bögen oder Kreise; es gibt nichts, was unter den Plan gelegt werden könnte.`,
    tooManyLines: (name) =>
      `„${name}“ hat mehr als 50.000 Linien: Ebenen weglassen, die unter dem Plan nicht gebraucht werden.`,
    tooFarApart: (name) =>
      `In „${name}“ liegen Linien zu weit auseinander für die Zeichnung eines Saals: entfernen, was abseits liegt.`,
    noPages: (name) => `„${name}“ hat keine Seite, die sich zeigen lässt.`,

    from: (source) => `Aus ${source}`,
    shown: 'Sichtbar',
    strength: 'Stärke',
    loose: 'Darf im Plan gezogen werden',
    looseHelp: 'Sonst bleibt sie, wo sie ist, was auch darüber gezogen wird',
    scaleTwo: 'Maßstab setzen…',
    scaleHelp: 'Zwei ihrer Punkte anklicken und sagen, wie weit sie in Wahrheit auseinanderliegen',
    origin: 'Nullpunkt setzen…',
    originHelp: 'Den Punkt anklicken, wo die Mittellinie auf die Vorderkante trifft',
    trace: 'Podium nachzeichnen…',
    width: 'Breite',
    depth: 'Tiefe',
    across: 'Ecke unten links, quer',
    upDown: 'Ecke unten links, Tiefe',
    turn: 'Gedreht',
    turnHelp: 'Grad gegen den Uhrzeigersinn',
    degrees: '°',
    percent: '%',
    strengthBad: 'Eine Stärke von 5 bis 100 angeben.',
    sizeBad: 'Eine Länge größer als null angeben.',

    firstPoint: 'Den ersten von zwei Punkten anklicken, deren Abstand bekannt ist',
    secondPoint: 'Den zweiten Punkt anklicken',
    originPoint: 'Den Punkt anklicken, der auf der Mittellinie an der Vorderkante liegt',
    tracing: (corners) =>
      corners === 0
        ? 'Die Ecken des Podiums anklicken, eine nach der anderen'
        : `${counted(corners, 'Ecke', 'Ecken')}. Die Eingabetaste oder ein Doppelklick beendet, die Rücktaste nimmt eine zurück`,
    stop: 'Abbrechen',
    caught: {
      close: 'die erste Ecke',
      corner: 'Ecke der Zeichnung',
      line: 'Linie der Zeichnung',
      square: 'rechtwinklig',
      free: '',
    },
    tooFewCorners: 'Ein Podium hat mindestens drei Ecken.',
    traced: (open, doors) =>
      `Das Podium ist nachgezeichnet. Offene Kanten: ${open || 'keine'}.${doors > 0 ? ` ${counted(doors, 'Tür kam in die nächste Kante', 'Türen kamen in die nächsten Kanten')}.` : ''} Unter „Podium und Saal“ nachprüfen.`,

    distance: 'Abstand',
    scaleTitle: 'Wie weit liegen sie auseinander?',
    scaleNow: (length) => `Wie die Zeichnung jetzt liegt: ${length}.`,
    level: 'Zeichnung so drehen, dass die zwei Punkte waagrecht liegen',
    take: 'Übernehmen',
    notALength: 'Eine Länge größer als null angeben.',
    removed: 'Entfernen',
  },

  exports: {
    action: 'Für andere Programme',
    dxf: 'Plan dieser Aufstellung als DXF…',
    marks: 'Marken dieser Aufstellung als Tabelle (CSV)…',
    inventory: 'Stückliste des Konzerts als Tabelle (CSV)…',
    fileOf: { dxf: 'Plan', marks: 'Marken', inventory: 'Stückliste' },
    saved: (name) => `Gespeichert: ${name}`,
  },
};
