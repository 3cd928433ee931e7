/** What the sheets of a changeover are drawn from. */

import type { Id } from '../../document/ids.ts';
import type { Changeover } from '../../programme/changeover.ts';
import type { PlotSheetRequest } from '../sheet/request.ts';

export interface ChangeoverSheetRequest extends Pick<
  PlotSheetRequest,
  'document' | 'options' | 'measure' | 'units' | 'issued' | 'palette'
> {
  /** Null: the first set-up. */
  readonly from: Id<'setup'> | null;
  /** Null: the last strike. */
  readonly to: Id<'setup'> | null;
}

/** What its drawings and lists are made of, on whatever sheet they stand. */
export interface ChangeoverDrawing extends Pick<
  ChangeoverSheetRequest,
  'document' | 'measure' | 'units' | 'palette'
> {
  readonly change: Changeover;
}
