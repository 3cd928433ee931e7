/** The plan and what belongs to it: section, house, what is seen from a place. */

import { percent } from '../counting.ts';
import type { planWords as english } from '../plan.ts';
import type { Widened } from '../widened.ts';
import { elements, places, points } from './counting.ts';

/** The house judges better or worse by so many points. */
const changed = (change: number): string => `${points(change)} ${change > 0 ? 'mehr' : 'weniger'}`;

export const planWords: Widened<typeof english> = {
  plan: {
    label: 'Plan von Podium und Saal',
    help: (fine, coarse, brackets) =>
      `Pfeiltasten verschieben das Ausgewählte um ${fine}, mit der Umschalttaste um ${coarse}.${brackets ? ' Eckige Klammern drehen es.' : ''} In der Liste „Auf dem Podium“ steht jedes Element mit seiner Lage.`,
    summary: (setup, items, seats) =>
      `${setup === '' ? '' : `${setup}: `}${items === 0 ? 'Nichts' : elements(items)} auf dem Podium, ${seats === 0 ? 'keine Plätze' : places(seats)} im Saal.`,
    zoomIn: 'Vergrößern',
    zoomOut: 'Verkleinern',
    fit: 'Alles zeigen',
    fitStage: 'Podium zeigen',
    fitSelection: 'Auswahl zeigen',
    section: 'Schnitt durch den Saal',
    actualSize: 'Wahre Größe auf diesem Bildschirm',
    ratio: (ratio) => `1:${ratio}`,
    ratioHelp: 'Maßstab auf diesem Bildschirm, ungefähr',
    panHand: 'Ansicht verschieben',
    arrangeHand: 'Anordnen',
    faces: (name) => `Blick zu: ${name}`,
    turned: (by) => `${Math.abs(by)}° ${by < 0 ? 'im' : 'gegen den'} Uhrzeigersinn`,
    pointer: (position) => position,
  },

  section: {
    label: 'Schnitt',
    explained:
      'C: um wie viel die Sichtlinie einer Reihe über den Augen davor verläuft. Ein Kreuz: ein Kopf oder Gegenstand schneidet sie.',
    cut: 'Lage',
    centreLine: 'Auf der Mittellinie',
    through: (seat, player) => `Von Platz ${seat} zu ${player}`,
    chooseSeat: 'Von einem Platz: im Plan anklicken',
    focus: 'Sichtlinien zu',
    edge: 'Podiumskante',
    described: (focus) => `Der Saal von der Seite, mit der Sichtlinie jeder Reihe. Ziel: ${focus}`,
    noRoom: 'Für einen Schnitt durch diesen Saal ist hier zu wenig Raum.',
    close: 'Schnitt schließen',
    look: 'Ansicht des Schnitts',
    fit: 'Ganzen Schnitt zeigen',
    keys: 'Plus und Minus vergrößern und verkleinern, die Pfeiltasten verschieben, 0 zeigt alles.',
    rows: {
      label: 'C-Werte Reihe für Reihe',
      row: 'Reihe',
      away: 'Abstand',
      awayHelp: 'Von den Augen der Reihe bis zum Ziel des Blicks, waagrecht gemessen',
      clearance: (units) => `C, ${units === 'metric' ? 'mm' : 'Zoll'}`,
      overNext: 'davor',
      overNextHelp: 'C über den Augen der nächsten Reihe davor',
      overInLine: 'in Linie',
      overInLineHelp:
        'C über dem nächsten Kopf in der Blicklinie: der Wert, der zählt, wo Reihen versetzt sind',
      step: 'Stufe',
      stepHelp: 'Um wie viel diese Augen höher sind als die der nächsten Reihe davor',
      needed: 'Stufe für C',
      neededHelp: (clearance) =>
        `Die Stufe, die ein C von ${clearance} über dem Kopf in der Blicklinie ergäbe; die Reihen davor bleiben, wie sie sind`,
      sees: 'Die Reihe sieht',
      notDrawn: (name) => `${name}, nicht in diesem Schnitt: entlang der eigenen Mitte`,
    },
  },

  house: {
    label: 'Was der Saal sieht',
    worst: 'Schwächste',
    worstShort: 'Sicht je Platz',
    worstHelp: 'Jeder Platz zeigt, von wem er am wenigsten sieht',
    off: 'Plätze ohne Farbe',
    nobody: 'Hier spielt noch niemand: einen Spieler aufstellen, und der Saal sagt, was er von ihm sieht.',
    noPlaces: 'Der Saal hat noch keine Plätze, von denen aus sich urteilen ließe.',
    seenWell: (share) => `${percent(share)} der Plätze sehen gut`,
    figure: (share) => percent(share),
    ofPlaces: 'der Plätze sehen gut',
    seeWell: 'sehen gut',
    change: (points) => `${points > 0 ? '+' : '−'}${Math.abs(points)}`,
    changeWords: (change) => `${changed(change)} als zuvor`,
    median: (share) => `der mittlere Platz sieht ${percent(share)}`,
    worstSeat: (label, share) => `am wenigsten: ${label}, ${percent(share)}`,
    legend: 'Anteil des Spielers, den ein Platz sieht',
    bandCount: (words, count) => `${words}: ${places(count)}`,
    changes: (changes) =>
      changes
        .map(
          ({ player, now, change }) => `${player}: ${percent(now)} der Plätze sehen gut, ${changed(change)}`,
        )
        .join('; '),
    calculating: 'Wird ermittelt…',
    below: (limit) => `unter den verlangten ${percent(limit)}`,
  },

  seen: {
    fromPlace: (label) => `Blick von Platz ${label}`,
    byPlayer: (name) => `Was ${name} sieht`,
    enlarge: 'Bild vergrößern',
    large: 'Bild dessen, was vom Platz oder vom Spieler aus zu sehen ist',
    counted: 'Nur was in den Prozenten zählt',
    countedHelp:
      'So gezeichnet, wie die Prozente zählen: jeder Spieler als zwei aufrechte Körper und ein Kopf, große Dinge als Kästen. Nur was hier jemanden verdeckt, mindert seinen Anteil.',
    figuresHelp:
      'Mit Armen, Beinen und Stühlen gezeichnet, die in den Prozenten nicht zählen: Hier verdecken sie womöglich etwas mehr. Vom Raum ist nur der Boden bekannt.',
  },

  seat: {
    short: (label, player, share) => `${label}: ${player} ${percent(share)}`,
    title: (label) => `Von Platz ${label}`,
    close: 'Schließen',
    sees: (share) => `sieht ${percent(share)}`,
    explained: 'Wie viel von jedem Spieler von hier aus zu sehen ist und was im Weg steht',
    face: (share) => `${percent(share)} des Gesichts`,
    all: 'nichts im Weg',
    cover: (name, share) => `${name} verdeckt ${percent(share)}`,
    fetching: 'Wird ermittelt…',
  },

  reachAt: (height) => `Ringe: Reichweite in ${height} Höhe; gestrichelt: vorgebeugt`,
};
