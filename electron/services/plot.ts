/** The plot of a setup as PDF bytes. */

import type { PlotRequest } from '#contract/contract.ts';
import { FaultError } from './faults.ts';

export interface Plot {
  readonly bytes: Uint8Array;
  readonly pages: number;
}

/** Throws `FaultError` when the document cannot be read or has no such setup. */
export async function renderPlot(request: PlotRequest): Promise<Plot> {
  throw new FaultError('plot.missing', `Printing is not built in yet (asked for ${request.setup}).`);
}
