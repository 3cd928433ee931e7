/** What stands beside the plan: the scale bar, the key to signs and letters, and how to use the print. */

import { wheelchairUsers } from '../../checks/room/gait.ts';
import { inSetup, placedInSetup } from '../../document/document.ts';
import type { Units } from '../../document/measures.ts';
import { housePlaces } from '../../document/seating.ts';
import { t } from '../../words/say.ts';
import { isDownTheHouse } from '../plan/extent.ts';
import { letterKey } from '../plan/short-marks.ts';
import { SCALE_BAR_HEIGHT, scaleBar } from '../plan/scale-bar.ts';
import type { Box, Primitive } from '../primitives.ts';
import { firstNames } from './first-names.ts';
import { notesHeight, signKey, signKeyHeight, type SignsShown } from './legend.ts';
import type { PlotSheetRequest } from './request.ts';

const GAP = 1.6;

export function planKeyHeight(request: PlotSheetRequest, width: number): number {
  return SCALE_BAR_HEIGHT + GAP + signKeyHeight(width, request, signsShown(request));
}

export function planKey(request: PlotSheetRequest, scale: number, box: Box): Primitive[] {
  const { units, palette } = request;
  return [
    scaleBar({ scale, units, palette, x: box.x, y: box.y, width: box.width }),
    ...signKey({ x: box.x, y: box.y + SCALE_BAR_HEIGHT + GAP }, box.width, request, signsShown(request)),
  ];
}

function signsShown({ document, setup }: PlotSheetRequest): SignsShown {
  return {
    socket: inSetup(document, setup, 'lamp').some(({ cable }) => cable.length > 0),
    wheelchair: wheelchairUsers(document, setup).length > 0,
  };
}

/** What the notes say of the plan beside them once it is drawn. */
export interface PlanFacts {
  /** Numbers of the sheets with the table of marks and the seat map; null: there is none. */
  readonly marksSheet: number | null;
  readonly mapSheet: number | null;
  /** Some of the house is not on the plan. */
  readonly isHouseCut: boolean;
  /** Marks of what belongs to the house and is not on the plan. */
  readonly notShown: readonly string[];
  /** Marks whose figures found no room. */
  readonly withoutFigures: readonly string[];
  /** And those that have no name beside them, though they have one. */
  readonly withoutNames: readonly string[];
}

/** Room for the longest notes there can be: the plan is laid out before it is known what it has to leave out. */
export function planNotesHeight(request: PlotSheetRequest, width: number): number {
  const marks = placedInSetup(request.document, request.setup).map(() => 'PF88');
  const house = placedInSetup(request.document, request.setup).filter((record) =>
    isDownTheHouse(request.document, record),
  );
  const longest = {
    marksSheet: 88,
    mapSheet: 88,
    isHouseCut: true,
    notShown: house.map(() => 'PF88'),
    withoutFigures: marks,
    withoutNames: marks,
  };
  return notesHeight(planNotes(request, longest), width, request);
}

/** Letters of the marks, what the figures mean, where the rest is, and how to use the print. */
export function planNotes({ document, setup, units }: PlotSheetRequest, facts: PlanFacts): string[] {
  const records = placedInSetup(document, setup);
  const table = facts.marksSheet === null ? [] : [t`All positions: sheet ${facts.marksSheet}, Marks.`];
  const house = housePlaces(document).length > 0 ? houseNote(facts) : [];
  return [
    ...(records.length > 0
      ? [
          [t`Marks: ${letterKey(records)}.`, ...table],
          [figuresNote(units), ...leftOut(facts)],
        ]
      : []),
    [
      ...house,
      ...notShownNote(facts),
      t`Print at 100 % and check the bar with a ruler. Local codes, the venue and licensed practice come before this plot.`,
    ],
  ].map((sentences) => sentences.join(' '));
}

function figuresNote(units: Units): string {
  return units === 'metric'
    ? t`Under a mark: where its cross is, in millimetres from the centre line (CL) to stage left (SL) or right (SR), and upstage (US) of the front edge (EDGE).`
    : t`Under a mark: where its cross is, in feet and inches from the centre line (CL) to stage left (SL) or right (SR), and upstage (US) of the front edge (EDGE).`;
}

function leftOut({ withoutFigures, withoutNames, marksSheet }: PlanFacts): string[] {
  const [figures, names] = [firstNames(withoutFigures), firstNames(withoutNames)];
  const isToldElsewhere = marksSheet !== null;
  return [
    ...(figures === ''
      ? []
      : [
          isToldElsewhere
            ? t`No room here for the figures of ${figures} (sheet ${marksSheet}).`
            : t`No room here for the figures of ${figures}.`,
        ]),
    ...(names === ''
      ? []
      : [
          isToldElsewhere
            ? t`No room here for the names of ${names} (sheet ${marksSheet}).`
            : t`No room here for the names of ${names}.`,
        ]),
  ];
}

/** Where they are is in the table of marks. */
function notShownNote({ notShown }: PlanFacts): string[] {
  return notShown.length === 0 ? [] : [t`Down the house, not shown here: ${firstNames(notShown)}.`];
}

function houseNote({ mapSheet, isHouseCut }: PlanFacts): string[] {
  if (mapSheet === null) return isHouseCut ? [t`Not all seats are shown.`] : [];
  return [
    isHouseCut
      ? t`Seats that are not shown here: sheet ${mapSheet}, Seat map.`
      : t`What the seats see: sheet ${mapSheet}, Seat map.`,
  ];
}
