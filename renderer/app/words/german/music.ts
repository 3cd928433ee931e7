/** The music of a setup, and where its rests are used. */

import { atMost, fixed } from '#model/words/numbers.ts';
import { counted } from '../counting.ts';
import type { musicWords as english } from '../music.ts';
import type { Widened } from '../widened.ts';

export const musicWords: Widened<typeof english> = {
  music: {
    short: 'Musik',
    action: 'Musik dieser Aufstellung…',
    title: (setup) => `Musik von „${setup}“`,
    why: 'Mit einer Partitur werden Umblättern und Instrumentenwechsel nach den Pausen beurteilt, die wirklich in den Stimmen stehen. Auch Wendestellen lassen sich dann planen.',
    how: 'MusicXML öffnen (.musicxml, .xml oder .mxl): Die meisten Notenprogramme exportieren es. Die Musik bleibt im Konzert; die Datei selbst wird danach nicht mehr gebraucht.',
    open: 'Partitur öffnen…',
    replace: 'Andere Partitur…',
    remove: 'Musik entfernen',
    done: 'Fertig',
    refusedLeft:
      'Eine Eingabe wurde nicht angenommen und ginge verloren: berichtigen, oder das Fenster schließen und auf sie verzichten.',
    reading: 'Partitur wird gelesen…',
    given: (name) => `Die Musik ist aus ${name} gelesen.`,
    dropped: (what) => `Von der Musik zuvor nicht behalten: ${what.join('; ')}.`,
    removed: 'Diese Aufstellung hat jetzt keine Musik.',

    untitled: 'Ohne Titel',
    file: 'Gelesen aus',
    bars: 'Takte',
    barCount: (written, played) =>
      played === written ? `${written}` : `${written} in der Partitur, ${played} gespielt`,
    length: 'Dauer, wie gespielt',
    lengths: (performed, written) =>
      performed === written ? performed : `${performed}, jeder Takt einmal ${written}`,
    tempo: 'Tempo',
    tempos: {
      sound: 'wie vorgeschrieben',
      metronome: 'wie vorgeschrieben',
      words: 'aus Worten gelesen',
      typed: 'eingegeben',
    },
    tempoAt: (bar, tempo, source) => `${bar}: ${atMost(tempo, 1)} (${source})`,
    tempoAssumed: (tempo) => `${tempo} (angenommen)`,
    more: (count) => `und ${count} weitere`,
    typedTempo: 'Anderes Tempo',
    typedTempoHint: 'Viertel je Minute; gilt von diesem Takt bis zum Ende.',
    quarters: 'Viertel je Minute',
    fromBar: 'Ab Takt',
    fromStart: 'Anfang',
    setTempo: 'Tempo setzen',
    tempoWanted: 'eine Zahl angeben, zum Beispiel 96',
    order: 'Reihenfolge beim Spielen',
    orderHint:
      'Takte in der Reihenfolge, in der sie gespielt werden: 1-12, 5-20. #14 ist der 14. Takt der Datei, für Zahlen, die mehrmals vorkommen.',
    hashes: '#14 ist der 14. Takt der Datei: Manche Zahlen kommen mehrmals vor oder sind keine.',
    remarks: (count) => counted(count, 'Anmerkung zur Partitur', 'Anmerkungen zur Partitur'),

    parts: 'Stimmen',
    part: (index) => `Stimme ${index + 1}`,
    playedBy: 'Gespielt von',
    nobody: 'Niemand hier',
    pages: 'Seiten beginnen mit Takt',
    pagesHint: 'Der erste Takt jeder Seite, die der Spieler vor sich hat: 1, 38, 77.',
    pagesExample: '1, 38, 77',
    pagesNotKnown:
      'Seiten nicht bekannt: Die Partitur nennt nur ihre eigenen. Den ersten Takt jeder Seite der Stimme eingeben.',
    pageCount: (count) => counted(count, 'Seite', 'Seiten'),
    rests: 'Längste Pausen',
    rest: (seconds, at, bars) => `${seconds} bei ${at}, ${bars}`,
    noRests: 'keine',
    takesUp: (instrument, bar) => `${bar}: Wechsel zu ${instrument}`,
    seconds: (seconds) => `${fixed(seconds, 1)}\u00a0s`,

    choice: {
      title: 'Mehrere Partituren in einer Datei',
      words: (name) => `„${name}“ enthält mehr als eine Partitur. Welche ist gemeint?`,
      take: 'Diese nehmen',
      holds: (parts) =>
        parts.length > 4
          ? `${parts.slice(0, 3).join(', ')} und ${parts.length - 3} weitere`
          : parts.join(', '),
    },

    fromPart: (rest) =>
      `Aus der Stimme: Die kürzeste Pause dafür ist ${rest}. Was hier eingegeben ist, gilt dann nicht.`,
    giveMusic: 'Pause aus der Stimme nehmen…',
  },
};
