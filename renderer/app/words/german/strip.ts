/** The time strip: a plan of page turns as it runs. */

import type { stripWords as english } from '../strip.ts';
import type { Widened } from '../widened.ts';

const HANDS = { left: 'linke Hand', right: 'rechte Hand' } as const;

export const stripWords: Widened<typeof english> = {
  strip: {
    label: 'Zeitleiste',
    lanes: 'Spieler und was sie umblättern',
    action: 'Zeitleiste dieser Aufstellung',
    close: 'Zeitleiste schließen',
    why: 'Spielt die geplanten Wendestellen mit der Musik ab: Die Auflagen im Plan zeigen, was jeder Spieler in diesem Augenblick sieht.',
    noPlan: 'Für diese Aufstellung gibt es noch keinen Plan der Wendestellen.',
    noneFound: 'Es wurde kein Plan der Wendestellen gefunden.',
    keptNotJudged:
      'Ein Seitenplan ist gespeichert, lässt sich aber mit dem Konzert, wie es jetzt ist, nicht beurteilen und darum nicht abspielen. Mehr dazu steht unter Wendestellen.',
    seeTurns: 'Wendestellen ansehen',
    stale: 'Das Konzert hat sich seit diesem Plan geändert.',

    time: 'Zeit',
    play: 'Abspielen',
    pause: 'Anhalten',
    turnBefore: 'Vorige Wendestelle',
    turnAfter: 'Nächste Wendestelle',
    speed: 'Geschwindigkeit',
    speeds: (speed) => (speed === 0.5 ? '½×' : `${speed}×`),
    wider: 'Weniger Zeit zeigen, größer',
    narrower: 'Mehr Zeit zeigen',
    all: 'Alles zeigen',
    help: 'Pfeiltasten: eine Sekunde; mit der Umschalttaste: ein Takt. Bild auf und Bild ab: die Wendestellen. Die Leertaste spielt ab. Plus und Minus: wie viel zu sehen ist.',
    at: (clock, bar) => (bar === '' ? clock : `${clock}, ${bar}`),
    of: (clock) => `von ${clock}`,
    ended: 'am Ende',

    now: 'In diesem Augenblick',
    player: 'Spieler',
    page: 'Seite',
    where: 'Wo',
    does: 'Tätigkeit',
    noPage: 'keine',
    place: (stand, slot, of) =>
      of > 1 ? `${stand}, ${PLACES[of]?.[slot] ?? `${slot + 1}. Seite von ${of}`}` : stand,
    notSeen: 'nicht zu sehen',
    lost: 'spielt ohne die Seite',
    plays: 'spielt',
    rests: 'pausiert',
    turns: (player, hand) => `${player} blättert um, ${HANDS[hand]}`,
    turning: (stand, hand) => `blättert um: ${stand}, ${HANDS[hand]}`,
    changes: (player, instrument) => `${player} wechselt zu ${instrument}`,
    changing: (instrument, walks) =>
      walks ? `geht zum Wechseln: ${instrument}` : `wechselt zu ${instrument}`,

    warnings: 'Zu beachten',
    more: (count) => `und ${count} weitere, auf der Zeitleiste markiert`,
    fine: 'Bei jedem Umblättern bleibt Zeit übrig.',
    limits: 'Aufgeführt: weniger als 1\u00a0s übrig oder weniger als die Hälfte der nötigen Zeit.',
    legend: [
      'Gefüllt: spielt von der Seite.',
      'Balken mit aufrechten Enden: pausiert.',
      'Voller Block: ein Blatt wird bewegt; die Linie darüber ist die Zeit dafür.',
      'Dreieck: wenig Zeit übrig.',
      'Raute: wechselt das Instrument.',
    ].join('\n'),
  },
};

/** In a row of so many pages, as the reader sees it. */
const PLACES: Readonly<Record<number, readonly string[]>> = {
  2: ['links', 'rechts'],
  3: ['links', 'in der Mitte', 'rechts'],
};
