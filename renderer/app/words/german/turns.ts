/** The page turns of a setup. */

import { fixed } from '#model/words/numbers.ts';
import { counted, percent } from '../counting.ts';
import type { turnsWords as english } from '../turns.ts';
import type { Widened } from '../widened.ts';

const turns = (count: number): string => counted(count, 'Wendestelle', 'Wendestellen');
const stations = (count: number): string => counted(count, 'Pult', 'Pulte');
const panels = (count: number): string => counted(count, 'Druckbahn', 'Druckbahnen');
const pages = (count: number): string => counted(count, 'Seite', 'Seiten');
const leaves = (count: number): string => counted(count, 'Wendeblatt', 'Wendeblätter');

/** Less than this is the last bit of a sum, s. */
const LACKING = 1e-6;

export const turnsWords: Widened<typeof english> = {
  turns: {
    label: 'Wendestellen',
    action: 'Wendestellen dieser Aufstellung',
    close: 'Wendestellen schließen',
    why: 'Findet, welche Seite wohin kommt und wer sie in welcher Pause umblättert: mit so wenigen Wendestellen, Pulten und Druckbahnen wie möglich.',
    plan: 'Wendestellen planen',
    again: 'Neu planen',
    cancel: 'Anhalten',
    stale: 'Das Konzert hat sich seit diesem Plan geändert.',
    notYet: 'Für diese Aufstellung sind noch keine Wendestellen geplant.',
    failed: (message) => `Das Planen ist mit einem Fehler abgebrochen: ${message}`,
    missing: 'Es fehlt etwas:',
    faulty: 'Das lässt sich nicht planen:',
    begun: 'Stimmen werden gelesen…',
    stages: {
      turns: 'Gesucht: die wenigsten Wendestellen',
      width: 'Gesucht: die schmalsten Seitenreihen',
      panels: 'Gesucht: die wenigsten Druckbahnen',
      jumps: 'Gesucht: die wenigsten Blicksprünge',
    },
    progress: (stage, states) => `${stage}. ${states.toLocaleString('de')} Zustände durchgesehen`,
    planned: (count) => `Geplant: ${turns(count)}.`,
    noneNow: 'Es gibt keinen Plan der Wendestellen.',

    figures: 'Was es braucht',
    figure: {
      turns,
      stations,
      width: (count) => `höchstens ${pages(count)} nebeneinander`,
      panels,
      jumps: (count) => counted(count, 'Blicksprung', 'Blicksprünge'),
    },
    proved: 'weniger geht nicht',
    bound: (least) => `mindestens ${least}; ob weniger möglich sind, ist offen`,
    others: 'Pläne zum Vergleich',
    candidate: (cost) => `${turns(cost.turns)}, ${stations(cost.stations)}, ${panels(cost.panels)}`,
    allProved: (candidate) => `${candidate}: weniger geht nicht`,
    strict: 'Streng im Zeitmaß der Partitur gezählt: Die Wendestellen in der Probe ausprobieren.',

    list: 'Wendestellen',
    none: 'Niemand muss umblättern: Alles steht nebeneinander.',
    at: (time, bar) => (bar === null ? time : `${time}, ${bar}`),
    who: (player, hand) => `${player}, ${hand}`,
    hands: { left: 'linke Hand', right: 'rechte Hand' },
    page: (page, during) => `${during ? 'während' : 'nach'} Seite ${page}`,
    back: 'wieder zurück',
    spare: (seconds) => {
      if (!Number.isFinite(seconds)) return 'beliebig viel Zeit';
      // What is lacking, however little, does not read as nothing.
      if (seconds < -LACKING) return `${fixed(Math.max(0.1, -seconds), 1)}\u00a0s zu wenig Zeit`;
      return `${fixed(Math.max(0, seconds), 1)}\u00a0s übrig`;
    },
    serves: 'auch für das Gegenüber',
    sentence: (pieces) => pieces.join('; '),

    onStands: 'Auf den Pulten',
    kinds: {
      loose: 'lose Seiten',
      book: 'ein Buch',
      concertina: 'ein Leporello',
      ridge: 'ein Firstheft',
    },
    binding: (kind, count) => (count === 0 ? kind : `${kind}, ${leaves(count)}`),
    stack: (reader) => `am Anfang liegen alle Wendeblätter vor ${reader}`,
    nobody: 'hier liest niemand',
    rowOf: (count, turned) => {
      if (count === 0) return 'Die ganze Zeit';
      return turned === 0 ? 'Am Anfang' : `${turned}-mal umgeblättert`;
    },
    blank: 'leer',
    side: (index) => `Pultseite ${index + 1}`,

    keep: 'Plan speichern',
    letGo: 'Plan verwerfen',
    empty: 'Leeren Plan beginnen',
    keptPlan: (candidate) => `Gespeichert: ${candidate}`,
    notJudged: 'Ein Seitenplan ist gespeichert, lässt sich jetzt aber nicht beurteilen:',
    cost: 'Was der gespeicherte Plan braucht',
    asBest: 'Dieselben Zahlen wie der beste bekannte Plan.',
    comparison: {
      more: (count) => `${count} mehr als der beste bekannte Plan`,
      fewer: (count) => `${count} weniger als der beste bekannte Plan`,
    },
    notCompared: 'Ein Plan, der Regeln verletzt, wird nicht mit dem besten bekannten verglichen.',
    rules: 'Verletzte Regeln',
    keepsRules: 'Alle Regeln sind eingehalten.',
    broken: (count) => counted(count, 'Regel ist verletzt', 'Regeln sind verletzt'),
    seen: (well, limit, player) =>
      `${percent(well)} der Plätze sehen mindestens ${percent(limit)} von ${player}`,
    seenWorst: (share, seat) => `am wenigsten ${percent(share)}, Platz: ${seat}`,
    noTurns: 'Noch keine Wendestellen.',
    turnFields: {
      when: 'Wann',
      whenHint:
        'Eine Zeit wie 2:17,5 oder ein Takt, wie die Liste ihn nennt: 48 oder 48, 2. Mal; 48,5 ist in seiner Mitte.',
      who: 'Wer',
      hand: 'Hand',
      direction: 'Richtung',
      directions: { forward: 'weiter', back: 'zurück' },
      noSuchPlace: (typed) =>
        `„${typed}“ gibt es in dieser Musik nicht: eine Zeit wie 2:17 oder einen Takt angeben.`,
    },
    removeTurn: 'Wendestelle entfernen',
    addTurn: 'Wendestelle hinzufügen',
    addTurnAt: (stand) => `Wendestelle hinzufügen: ${stand}`,
    pinTurn: 'Diese Wendestelle beim neuen Planen in ihrer Pause lassen',
    pin: 'Anheften',
    pinned: 'angeheftet',
    pinPage: (place) => `Anheften: ${place}`,
    addPaper: (stand) => `Papier auflegen: ${stand}`,
    removePaper: 'Papier wegnehmen',
    removePaperOf: (stand) => `Papier wegnehmen: ${stand}`,
    bindingOf: (stand) => `Bindung: ${stand}`,
    kindNames: { loose: 'Lose Seiten', book: 'Buch', concertina: 'Leporello', ridge: 'Firstheft' },
    leaves,
    across: (count) => `${pages(count)} nebeneinander`,
    moreOf: { leaves: 'Ein Wendeblatt mehr', across: 'Eine Seite mehr nebeneinander' },
    fewerOf: { leaves: 'Ein Wendeblatt weniger', across: 'Eine Seite weniger nebeneinander' },
    stackBefore: (reader) => `Am Anfang liegen alle Wendeblätter vor ${reader}`,
    turnStack: 'Auf die andere Seite legen',
    cell: (slot, state, reader) => `${slot}. Stelle von links, ${state}, ${reader}`,
    cellHint: 'Eine Seitenzahl oder nichts für eine leere Stelle',
    notAPage: (typed) =>
      `„${typed}“ ist keine Seitenzahl: eine ab 1 angeben oder nichts für eine leere Stelle.`,

    noPlan:
      'Es gibt keinen Plan: Mit diesen Pausen, Händen und Pulten müsste jemand ohne seine Seite weiterspielen.',
    notFound: 'In den erlaubten Schritten wurde kein Plan gefunden; es kann einen geben.',
    remedies: 'Jede dieser Abhilfen allein macht einen möglich:',
    eachNeeds: 'Jeder dieser Spieler braucht eine der Abhilfen, die hier genannt sind:',
    together: (names) => names.join(' mit '),
    noOwnRemedy: 'keine einzelne Pause, kein breiteres und kein weiteres Pult gefunden, das hilft.',
    without: (where) => `${where.slice(0, 1).toUpperCase()}${where.slice(1)}.`,
    twoAtOnce: 'Zwei Änderungen zugleich genügen:',
    noRemedies:
      'Keine einzelne Pause, kein breiteres und kein weiteres Pult gefunden, das einen möglich macht.',
    remedy: {
      rest: (seconds, player, page, at) =>
        `eine Pause von ${fixed(seconds, 1)}\u00a0s für ${player} nach Seite ${page}, bei ${at}`,
      wider: (count, stand) => `Platz für ${pages(count)} nebeneinander: ${stand}`,
      station: (stand) => `ein weiteres Pult wie ${stand}`,
      twoStations: (stand) => `zwei weitere Pulte wie ${stand}`,
      both: (changes) => changes.join(', und '),
      pinnedPage: (page, stand) => `Lösen der angehefteten Seite ${page}, ${stand}`,
      pinnedTurn: (player, stand) => `Lösen der angehefteten Wendestelle von ${player}, ${stand}`,
    },
  },
};
