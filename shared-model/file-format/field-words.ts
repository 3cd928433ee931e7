/** Fields as people are told of them whose change was refused. */

import { language } from '../words/catalogue.ts';
import { t } from '../words/say.ts';

/** In English the path itself: "lip", "sides[0].pageWidth". In another language the word for its field, if it has one. */
export function fieldWords(path: string): string {
  if (language() === 'en') return path;
  const name =
    path
      .replace(/(?:\[\d+\])+$/, '')
      .split('.')
      .at(-1) ?? '';
  return Object.hasOwn(WORDS, name) ? (WORDS[name]?.() ?? path) : path;
}

/** What is typed into the window. */
const WORDS: Readonly<Record<string, () => string>> = {
  name: () => t`name`,
  venue: () => t`venue`,
  date: () => t`date`,
  revision: () => t`revision`,
  author: () => t`author`,
  role: () => t`role`,
  reachedAt: () => t`reachedAt`,
  notes: () => t`notes`,
  order: () => t`order`,
  changeTime: () => t`changeTime`,
  seesWell: () => t`seesWell`,
  houseShare: () => t`houseShare`,
  edgeDistance: () => t`edgeDistance`,
  routeWidth: () => t`routeWidth`,
  x: () => t`x`,
  y: () => t`y`,
  facing: () => t`facing`,
  width: () => t`width`,
  depth: () => t`depth`,
  height: () => t`height`,
  outline: () => t`outline`,
  openEdges: () => t`openEdges`,
  offset: () => t`offset`,
  floor: () => t`floor`,
  rows: () => t`rows`,
  seatsPerRow: () => t`seatsPerRow`,
  seatPitch: () => t`seatPitch`,
  rowDepth: () => t`rowDepth`,
  curveRadius: () => t`curveRadius`,
  aisles: () => t`aisles`,
  afterSeat: () => t`afterSeat`,
  frontRail: () => t`frontRail`,
  firstRow: () => t`firstRow`,
  eyeHeight: () => t`eyeHeight`,
  shoulderHeight: () => t`shoulderHeight`,
  armLength: () => t`armLength`,
  stature: () => t`stature`,
  percentile: () => t`percentile`,
  shoes: () => t`shoes`,
  mobility: () => t`mobility`,
  deskWidth: () => t`deskWidth`,
  deskHeight: () => t`deskHeight`,
  lip: () => t`lip`,
  tilt: () => t`tilt`,
  pagesAcross: () => t`pagesAcross`,
  pageWidth: () => t`pageWidth`,
  pageHeight: () => t`pageHeight`,
  staffSize: () => t`staffSize`,
  freeTime: () => t`freeTime`,
  cable: () => t`cable`,
  owned: () => t`owned`,
  borrowed: () => t`borrowed`,
  scale: () => t`scale`,
  opacity: () => t`opacity`,
};
