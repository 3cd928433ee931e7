/** What is said about sources; their titles stay as they are. */

import type { Entries } from '../../catalogue.ts';

export const cited: Entries = {
  'common practice, no source': 'übliche Praxis, ohne Quelle',
  'this tool’s own choice, no source': 'eigene Wahl dieses Programms, ohne Quelle',
  'published consultancy study, India International Convention & Expo Centre auditorium':
    'veröffentlichte Studie eines Planungsbüros, Auditorium des India International Convention & Expo Centre',
  'NRICH “Arsenal Collection: Stadium Sightline” (Univ. Cambridge, id 8823) and P. Shepherd, “Sightlines” worksheet (Univ. Bath 2012)':
    'NRICH „Arsenal Collection: Stadium Sightline“ (Univ. Cambridge, Nr. 8823) und P. Shepherd, Arbeitsblatt „Sightlines“ (Univ. Bath 2012)',
  'MTM-1 Reach table, two independent copies that agree':
    'MTM-1, Tabelle für das Hinlangen, zwei voneinander unabhängige Abschriften, die übereinstimmen',
  'MTM-1, from memory': 'MTM-1, aus dem Gedächtnis',
  'NUREG-0700 rev 3 table 11.4': 'NUREG-0700 rev 3, Tabelle 11.4',
  'ISO 11226 trunk 0–20°, from memory': 'ISO 11226, Rumpf 0–20°, aus dem Gedächtnis',
  'NUREG-0700 rev 3 11.3.1 citing MIL-STD-1472G; written for displays':
    'NUREG-0700 rev 3, 11.3.1, nach MIL-STD-1472G; für Anzeigen geschrieben',
  'NUREG-0700 rev 3, 11.3.1.2-2 (citing MIL-STD-1472G)': 'NUREG-0700 rev 3, 11.3.1.2-2 (nach MIL-STD-1472G)',
  'MOLA Guidelines for Music Preparation, 2017 ed. p. 5, quoted verbatim in a discussion thread':
    'MOLA Guidelines for Music Preparation, Ausgabe 2017, S. 5, wörtlich zitiert in einem Diskussionsbeitrag',
  'MOLA guidelines 1993 ed. (document summary)':
    'MOLA Guidelines, Ausgabe 1993 (Zusammenfassung des Dokuments)',
  'NUREG-0700 rev 2, 1.3.1-4; ISO 9241-3 as quoted': 'NUREG-0700 rev 2, 1.3.1-4; ISO 9241-3 nach Zitat',
  'the word itself, from memory': 'das Wort selbst, aus dem Gedächtnis',
  'IBC 1015.2 exceptions 2–4 (CBC text)': 'IBC 1015.2, Ausnahmen 2–4 (Text des CBC)',
  'ADA 304.3; its T-shape was read, the circle is from memory':
    'ADA 304.3; die T-Form ist nachgelesen, der Kreis aus dem Gedächtnis',
  'ADA Standards 1991, 4.5.2 and figure 7(c)': 'ADA Standards 1991, 4.5.2 und Bild 7(c)',
};
