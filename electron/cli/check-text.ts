/** `check` in words, for a terminal. */

import type { Finding, Severity } from '#model/checks/finding.ts';
import type { ReadingResult } from '#model/checks/reading/reading.ts';
import type { HouseFigure, ReachResult, RouteResult } from '#model/checks/report.ts';
import { coverName, coverPartOf } from '#model/checks/sightlines/cover-part.ts';
import { concertOf, setupsOf } from '#model/document/document.ts';
import { labelOf } from '#model/document/labels.ts';
import { formatLength } from '#model/document/measures.ts';
import { told, type Checked } from './check-json.ts';
import { withoutDirections } from './terminal.ts';

const CAUTION =
  'These are cautions of a planning tool. Local codes, the venue and licensed practice decide; nothing here states that they are met.';

export function checkAsText(checked: Checked): string {
  const blocks = [
    heading(checked),
    section('Seen from the house', sightLines(checked)),
    section('Reach', reachLines(checked)),
    section('Reading', readingLines(checked)),
    section('Ways out', routeLines(checked)),
    section('Findings', findingLines(checked)),
    CAUTION,
  ];
  return withoutDirections(`${blocks.filter((block) => block !== '').join('\n\n')}\n`);
}

function section(title: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : [title, ...lines.map((line) => `  ${line}`)].join('\n');
}

function heading({ document, setup }: Checked): string {
  const concert = concertOf(document);
  const others = setupsOf(document).filter((other) => other.id !== setup.id);
  const more = others.map((other) => `"${other.name || other.id}"`).join(', ');
  return [
    [concert.name, concert.venue].filter(Boolean).join(', '),
    `Setup "${setup.name || setup.id}"${more ? ` (others: ${more})` : ''}`,
  ].join('\n');
}

function sightLines(checked: Checked): string[] {
  const { document, report } = checked;
  const { seesWell } = concertOf(document).limits;
  const places = report.sight.scene.seats.length;
  if (report.sight.figures.length === 0) return [];
  if (places === 0) return ['The house has no places: add seats to see who sees whom.'];
  const labels = report.sight.figures.map(({ player }) => label(checked, player));
  const width = longest(labels);
  return [
    `Share of the ${places} places that see at least ${percent(seesWell)} of the player:`,
    ...report.sight.figures.flatMap((figure, index) => [
      `${(labels[index] ?? '').padEnd(width)}  ${percent(figure.seenWell).padStart(5)}   ${spread(checked, figure)}`,
      ...coverLine(checked, figure, width),
    ]),
  ];
}

function spread({ report }: Checked, { median, worst }: HouseFigure): string {
  const seat = report.sight.scene.seats.find(({ id }) => id === worst.seat);
  return `half of them see ${percent(median)} or more; worst ${seat?.label ?? worst.seat}: ${percent(worst.share)}`;
}

function coverLine(checked: Checked, { player, coveredBy }: HouseFigure, width: number): string[] {
  const worst = coveredBy.filter(({ loss }) => loss >= 0.005).slice(0, 3);
  if (worst.length === 0) return [];
  const words = worst.map(
    ({ record, loss }) =>
      `${coverOf(checked, player, record)} (${percent(loss)} of the player, over the house)`,
  );
  return [`${' '.repeat(width)}         covered by ${words.join(', ')}`];
}

/** Of a block of seats its heads or its rail. */
function coverOf(checked: Checked, player: string, record: string): string {
  const { document, report } = checked;
  const target = report.sight.scene.targets.find(({ id }) => id === player);
  const part = target ? coverPartOf(document, report.sight.scene, target, record) : 'self';
  return coverName(part, label(checked, record));
}

const MANNERS: Readonly<Record<ReachResult['manner'], string>> = {
  reach: 'in reach',
  lean: 'with a lean',
  step: 'with a step',
  walk: 'a walk',
  none: 'not at all',
};

/** With a stoop besides. */
const STOOPING: Readonly<Record<ReachResult['manner'], string>> = {
  ...MANNERS,
  lean: 'stooping',
  step: 'step, stoop',
  walk: 'walk, stoop',
};

const PURPOSES: Readonly<Record<ReachResult['grip']['purpose'], string>> = {
  turnCorner: 'turn a page at',
  turnRidge: 'turn over the ridge of',
  pickUp: 'take up',
};

function reachLines(checked: Checked): string[] {
  const tasks = checked.report.reach.map(
    ({ grip }) => `${label(checked, grip.player)}, ${PURPOSES[grip.purpose]} ${label(checked, grip.item)}`,
  );
  const width = longest(tasks);
  return checked.report.reach.map((result, index) =>
    `${(tasks[index] ?? '').padEnd(width)}  ${(result.stoops ? STOOPING : MANNERS)[result.manner].padEnd(11)}  ${reachFigures(checked, result)}`.trimEnd(),
  );
}

function reachFigures(
  { document }: Checked,
  { distance, armReach, seconds, secondsRange, freeTime, manner, grip }: ReachResult,
): string {
  const { units } = concertOf(document);
  const lengths = `${formatLength(distance, units)} (arm: ${formatLength(armReach, units)})`;
  if (manner === 'none') return lengths;
  const rest = freeTime === null ? '' : `; rest ${freeTime.toFixed(1)} s`;
  // A turn takes longer than that: the leaf goes over and the hand comes back, which `turns` counts.
  const what = grip.purpose === 'pickUp' ? '' : 'hand there in ';
  return `${lengths}, ${what}${seconds.toFixed(1)} s (with care ${secondsRange[1].toFixed(1)} s)${rest}`;
}

function readingLines(checked: Checked): string[] {
  const { reading } = checked.report;
  const tasks = reading.map(({ player, stand }) => `${label(checked, player)}, ${label(checked, stand)}`);
  const width = longest(tasks);
  return reading.map(
    (result, index) => `${(tasks[index] ?? '').padEnd(width)}  ${readingFigures(checked, result)}`,
  );
}

function readingFigures(
  { document }: Checked,
  { nearest, farthest, angle, spaceMinutes }: ReadingResult,
): string {
  const { units } = concertOf(document);
  const space = spaceMinutes
    ? `a staff space looks ${spaceMinutes.middle.toFixed(1)} minutes of arc tall`
    : 'staff size not given';
  return `${formatLength(nearest, units)} to ${formatLength(farthest, units)} away, ${Math.round(angle)}° off square, ${space}`;
}

function routeLines(checked: Checked): string[] {
  const labels = checked.report.routes.map(({ player }) => label(checked, player));
  const width = longest(labels);
  return checked.report.routes.map(
    (route, index) => `${(labels[index] ?? '').padEnd(width)}  ${wayOut(checked, route)}`,
  );
}

function wayOut(checked: Checked, { exit, width }: RouteResult): string {
  if (exit === null) return 'none';
  return `by ${label(checked, exit)}, ${formatLength(width, concertOf(checked.document).units)} at its narrowest`;
}

const ORDER: readonly Severity[] = ['fail', 'caution', 'note'];
const MARKS: Readonly<Record<Severity, string>> = { fail: 'FAIL', caution: 'CAUTION', note: 'NOTE' };

function findingLines(checked: Checked): string[] {
  const { findings } = checked.report;
  if (findings.length === 0) return ['The checks found nothing.'];
  const counts = ORDER.map((severity) => findings.filter((finding) => finding.severity === severity).length);
  const sorted = ORDER.flatMap((severity) => findings.filter((finding) => finding.severity === severity));
  return [
    ...sorted.flatMap((finding) => findingAsText(checked, finding)),
    `${counts[0]} failing, ${counts[1]} to look at, ${counts[2]} worth knowing.`,
  ];
}

function findingAsText(checked: Checked, finding: Finding): string[] {
  const { headline, text, advice } = told(checked, finding);
  return [
    `${MARKS[finding.severity]}  ${headline}`,
    ...[text, advice].filter(Boolean).map((line) => `      ${line}`),
  ];
}

function label({ document, setup }: Checked, id: string): string {
  return labelOf(document, setup.id, id);
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

function longest(texts: readonly string[]): number {
  return texts.reduce((most, text) => Math.max(most, text.length), 0);
}
