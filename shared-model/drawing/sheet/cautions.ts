/** What a print must say about itself. The tool never states that anything complies with a rule. */

import { platformOf } from '../../document/document.ts';
import { formatLength } from '../../document/measures.ts';
import { t } from '../../words/say.ts';
import type { PlotSheetRequest } from './request.ts';

export function cautions({ document, units }: Pick<PlotSheetRequest, 'document' | 'units'>): string[] {
  const platform = platformOf(document);
  const drop = formatLength(platform.height, units);
  const edges =
    platform.openEdges.length > 0
      ? t`Edges drawn with teeth are open: the floor drops by ${drop} there. Mark or guard them, and keep people off them while the light is low.`
      : t`The floor of the platform lies ${drop} above the house. Edges that are not drawn as open were entered as guarded: check them on the spot.`;
  return [
    t`This plot helps to place people and things. It does not show that anything meets a rule. Local codes, the venue and licensed practice come first on edges, steps, loads, exits, routes, places for wheelchairs, power and cables.`,
    edges,
    t`Cover or tape every cable that crosses a way, and keep exits and routes clear. Routes shown by the tool are suggestions for walking, not escape routes.`,
    t`Print at 100 %, not fitted to the page. Before measuring on the paper, check the scale bar with a ruler: copies and screens change sizes.`,
    t`Distances run along the floor from the centre line and from the front edge to the middle of a thing: for a stand the middle of its desk, for a back-to-back pair the ridge, for a player the axis of head and shoulders. Left and right are those of a player who faces the house.`,
    t`Sight and reach are computed for bodies as entered and for seated eyes at the heights entered. People differ: let them try before the doors open.`,
  ];
}
