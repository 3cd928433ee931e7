/** Whom the checks go by, cited once. */

import { COMMON_PRACTICE } from '../../catalogue/sources.ts';

/**
 * `published`: read in the source itself. `quoted`: read as somebody else quotes it. `memory`: nobody has looked it up.
 * `practice`: a fact of the trade that nobody publishes. `own`: a choice of this tool.
 */
export type Standing = 'published' | 'quoted' | 'memory' | 'practice' | 'own';

export interface Source {
  readonly standing: Standing;
  readonly cited: string;
}

const published = (cited: string): Source => ({ standing: 'published', cited });
const quoted = (cited: string): Source => ({ standing: 'quoted', cited });
const memory = (cited: string): Source => ({ standing: 'memory', cited });

export const PRACTICE: Source = { standing: 'practice', cited: COMMON_PRACTICE };
export const OWN: Source = { standing: 'own', cited: 'this tool’s own choice, no source' };

export const SURVEY = published(
  'ANSUR II: Gordon CC, Blackwell CL, Bradtmiller B, et al., 2012 Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007, Dec 2014',
);
export const AUDITORIUM_STUDY = published(
  'published consultancy study, India International Convention & Expo Centre auditorium',
);
export const ROW_FORMULA = published(
  'NRICH “Arsenal Collection: Stadium Sightline” (Univ. Cambridge, id 8823) and P. Shepherd, “Sightlines” worksheet (Univ. Bath 2012)',
);
export const MOTION_CARD = published('MTM-1 Data Card (MTM Association e.V., 2019, SI)');
export const MOTION_TABLE = quoted('MTM-1 Reach table, two independent copies that agree');
export const MOTION_MEMORY = memory('MTM-1, from memory');
export const DESIGN_WALK = published('TxDOT Roadway Design Manual §19.2.1.3');
export const USUAL_WALK = published('Murtagh et al., Sports Med 2020');
export const CONTROL_REACH = published('NUREG-0700 rev 3 table 11.4');
export const TRUNK_MEMORY = memory('ISO 11226 trunk 0–20°, from memory');
export const DISPLAY_ANGLE = published('NUREG-0700 rev 3 11.3.1 citing MIL-STD-1472G; written for displays');
export const GAZE = published('NUREG-0700 rev 3, 11.3.1.2-2 (citing MIL-STD-1472G)');
export const LIBRARIANS = quoted(
  'MOLA Guidelines for Music Preparation, 2017 ed. p. 5, quoted verbatim in a discussion thread',
);
export const LIBRARIANS_PAPER = quoted('MOLA guidelines 1993 ed. (document summary)');
export const LETTERING = published('NUREG-0700 rev 2, 1.3.1-4; ISO 9241-3 as quoted');
export const FIELD_OF_VISION = published('CIE International Lighting Vocabulary');
export const PROFILE_MEMORY = memory('the word itself, from memory');
export const GUARDS = published('IBC 1015.2 exceptions 2–4 (CBC text)');
export const CLEAR_WAY = published('ADA/ABA 403.5.1');
export const TURN_BACK = published('ADA/ABA 403.5.2');
export const FLOOR_SPACE = published('ADA/ABA 305.3');
export const TURNING_SPACE = memory('ADA 304.3; its T-shape was read, the circle is from memory');
export const SMALL_RISE = published('ADA Standards 1991, 4.5.2 and figure 7(c)');
