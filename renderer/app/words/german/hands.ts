/** Groups, locks and what is hidden. */

import type { handsWords as english } from '../hands.ts';
import type { Widened } from '../widened.ts';

export const handsWords: Widened<typeof english> = {
  hands: {
    group: 'Gruppieren',
    ungroup: 'Gruppe lösen',
    lock: 'Sperren',
    unlock: 'Entsperren',
    hide: 'Ausblenden',
    show: 'Einblenden',
    locked: 'gesperrt',
    hidden: 'ausgeblendet',
    inGroup: (name) => `in ${name}`,
    groupName: 'Name der Gruppe',
    hiddenCount: (count) =>
      count === 1
        ? '1 Element ist ausgeblendet; Prüfungen zählen es mit'
        : `${count} Elemente sind ausgeblendet; Prüfungen zählen sie mit`,
    showAll: 'Alles einblenden',
    inside: (name) => `In der Gruppe: ${name}`,
    leave: 'Verlassen',
    lineUp: 'Ausrichten und verteilen',
    menuOf: 'Was sich damit tun lässt',
    clickToFace: 'Anklicken, wohin es blicken soll: jemand, etwas oder ein Punkt',
    toolKeys: 'Ohne Maus: Pfeiltasten (Umschalt: weiter, Strg: fein), dann Leertaste',
    pasteByKey: 'Der Browser gibt die Zwischenablage nur auf Tastendruck heraus: Strg+V drücken.',
  },
};
