/** The sight check of a setup from document to figures. */

import { concertOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { SightReport } from '../report.ts';
import { buildScene } from '../scene/build-scene.ts';
import { houseFigures } from './house-figures.ts';
import { visibleShares } from './visible-shares.ts';

export function sightReport(document: Document, setup: Id<'setup'>): SightReport {
  const scene = buildScene(document, setup);
  const visible = visibleShares(scene);
  const { seesWell } = concertOf(document).limits;
  return { scene, visible, figures: houseFigures(scene, visible, seesWell) };
}
