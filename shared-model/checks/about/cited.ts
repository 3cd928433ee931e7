/** Whom the checks go by, cited once. Titles stay in the language of the source, what is said about it does not. */

import { t } from '../../words/say.ts';

/**
 * `published`: read in the source itself. `quoted`: read as somebody else quotes it. `memory`: nobody has looked it up.
 * `practice`: a fact of the trade that nobody publishes. `own`: a choice of this tool.
 */
export type Standing = 'published' | 'quoted' | 'memory' | 'practice' | 'own';

export interface Source {
  readonly standing: Standing;
  /** In the language that is spoken when it is read. */
  readonly cited: string;
}

function sourceOf(standing: Standing, cite: () => string): Source {
  return {
    standing,
    get cited() {
      return cite();
    },
  };
}

const published = (cite: () => string): Source => sourceOf('published', cite);
const quoted = (cite: () => string): Source => sourceOf('quoted', cite);
const memory = (cite: () => string): Source => sourceOf('memory', cite);

export const PRACTICE = sourceOf('practice', () => t`common practice, no source`);
export const OWN = sourceOf('own', () => t`this tool’s own choice, no source`);

export const SURVEY = published(
  () =>
    'ANSUR II: Gordon CC, Blackwell CL, Bradtmiller B, et al., 2012 Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007, Dec 2014',
);
export const AUDITORIUM_STUDY = published(
  () => t`published consultancy study, India International Convention & Expo Centre auditorium`,
);
export const ROW_FORMULA = published(
  () =>
    t`NRICH “Arsenal Collection: Stadium Sightline” (Univ. Cambridge, id 8823) and P. Shepherd, “Sightlines” worksheet (Univ. Bath 2012)`,
);
export const MOTION_CARD = published(() => 'MTM-1 Data Card (MTM Association e.V., 2019, SI)');
export const MOTION_TABLE = quoted(() => t`MTM-1 Reach table, two independent copies that agree`);
export const MOTION_MEMORY = memory(() => t`MTM-1, from memory`);
export const DESIGN_WALK = published(() => 'TxDOT Roadway Design Manual §19.2.1.3');
export const USUAL_WALK = published(() => 'Murtagh et al., Sports Med 2020');
export const CONTROL_REACH = published(() => t`NUREG-0700 rev 3 table 11.4`);
export const TRUNK_MEMORY = memory(() => t`ISO 11226 trunk 0–20°, from memory`);
export const DISPLAY_ANGLE = published(
  () => t`NUREG-0700 rev 3 11.3.1 citing MIL-STD-1472G; written for displays`,
);
export const GAZE = published(() => t`NUREG-0700 rev 3, 11.3.1.2-2 (citing MIL-STD-1472G)`);
export const LIBRARIANS = quoted(
  () => t`MOLA Guidelines for Music Preparation, 2017 ed. p. 5, quoted verbatim in a discussion thread`,
);
export const LIBRARIANS_PAPER = quoted(() => t`MOLA guidelines 1993 ed. (document summary)`);
export const LETTERING = published(() => t`NUREG-0700 rev 2, 1.3.1-4; ISO 9241-3 as quoted`);
export const FIELD_OF_VISION = published(() => 'CIE International Lighting Vocabulary');
export const PROFILE_MEMORY = memory(() => t`the word itself, from memory`);
export const GUARDS = published(() => t`IBC 1015.2 exceptions 2–4 (CBC text)`);
export const CLEAR_WAY = published(() => 'ADA/ABA 403.5.1');
export const TURN_BACK = published(() => 'ADA/ABA 403.5.2');
export const FLOOR_SPACE = published(() => 'ADA/ABA 305.3');
export const TURNING_SPACE = memory(() => t`ADA 304.3; its T-shape was read, the circle is from memory`);
export const SMALL_RISE = published(() => t`ADA Standards 1991, 4.5.2 and figure 7(c)`);
