/** What the checks found, each with what to do about it. */

import type { Finding, Severity } from '../../checks/finding.ts';
import { notTriedHere } from '../../checks/remedy-words.ts';
import { t } from '../../words/say.ts';
import { circle, polygon } from '../outline.ts';
import type { Primitive } from '../primitives.ts';
import { LEADING, TEXT, WEIGHT } from '../style.ts';
import { wrapped } from '../text.ts';
import { BODY, BODY_BOLD, grouped, linesOfText, type Block, type Spot, type TextTools } from './blocks.ts';
import type { Explanation, PlotSheetRequest } from './request.ts';

const ORDER: readonly Severity[] = ['fail', 'caution', 'note'];

const WORDS: Readonly<Record<Severity, () => string>> = {
  fail: () => t`Fails`,
  caution: () => t`Caution`,
  note: () => t`Note`,
};

/**
 * The gravest first. Of many of one kind the first ones are told in full and the others by their headlines, then by their number:
 * nobody reads fourteen sheets of the same, and `check` and the window list them all.
 */
export function findingBlocks(request: PlotSheetRequest, width: number): Block[] {
  const findings = request.report?.findings ?? [];
  return ORDER.flatMap((severity) =>
    alike(findings.filter((finding) => finding.severity === severity)).flatMap((kind) =>
      kindBlocks(request, kind, width),
    ),
  );
}

/** Told in full of each kind; one more than these is no reason to shorten. */
const TOLD_WHOLE = 3;
const MOST_HEADLINES = 12;

function alike(findings: readonly Finding[]): Finding[][] {
  const kinds = new Map<Finding['code'], Finding[]>();
  for (const finding of findings) kinds.set(finding.code, [...(kinds.get(finding.code) ?? []), finding]);
  return [...kinds.values()];
}

function kindBlocks(request: PlotSheetRequest, kind: readonly Finding[], width: number): Block[] {
  const whole = kind.length <= TOLD_WHOLE + 1 ? kind : kind.slice(0, TOLD_WHOLE);
  const others = kind.slice(whole.length);
  const blocks = whole.map((finding) =>
    findingBlock(finding.severity, onPaper(request, finding), { width, tools: request }),
  );
  const [first] = others;
  if (!first) return blocks;
  const headlines = others.slice(0, MOST_HEADLINES).map((finding) => request.explain(finding).headline);
  const more = others.length - headlines.length;
  const text = [...headlines, ...(more > 0 ? [t`and ${more} more`] : [])].join('; ');
  const words = { headline: t`${others.length} more of this kind`, text: `${text}.`, advice: '' };
  return [...blocks, findingBlock(first.severity, words, { width, tools: request })];
}

/** What the window could do is of no use on paper. */
function onPaper({ explain }: PlotSheetRequest, finding: Finding): Explanation {
  const words = explain(finding);
  return { ...words, advice: words.advice.replace(notTriedHere(), '').trim() };
}

interface FindingLook {
  readonly width: number;
  readonly tools: TextTools;
}

/** Room for sign and severity on the left. */
const MARGIN = 20;

function findingBlock(severity: Severity, words: Explanation, { width, tools }: FindingLook): Block {
  const { palette, measure } = tools;
  const inner = width - MARGIN;
  const head = wrapped(words.headline, inner, BODY_BOLD, measure);
  const body = [words.text, words.advice]
    .filter((text) => text !== '')
    .flatMap((text) => wrapped(text, inner, BODY, measure));
  const lineHeight = BODY.size * LEADING;
  return {
    height: (head.length + body.length) * lineHeight + 2,
    draw: ({ x, y }) => [
      grouped('paragraph', [
        ...severitySign(severity, { x, y }, tools),
        ...linesOfText([WORDS[severity]()], { x: x + 4.6, y }, { ...BODY, colour: palette.ink }),
        ...linesOfText(head, { x: x + MARGIN, y }, { ...BODY_BOLD, colour: palette.ink }),
        ...linesOfText(
          body,
          { x: x + MARGIN, y: y + head.length * lineHeight },
          { ...BODY, colour: palette.ink },
        ),
      ]),
    ],
  };
}

/** Told apart by shape and word, not by colour alone. */
function severitySign(severity: Severity, { x, y }: Spot, { palette }: TextTools): Primitive[] {
  const middle = { x: x + 1.8, y: y + TEXT.body * 0.56 };
  const stroke = { colour: palette.ink, width: WEIGHT.fine };
  if (severity === 'note') return [{ kind: 'path', path: circle(middle, 1), stroke }];
  const [top, foot] = [middle.y - 1.3, middle.y + 1];
  const triangle = polygon([
    { x: middle.x, y: top },
    { x: middle.x + 1.5, y: foot },
    { x: middle.x - 1.5, y: foot },
  ]);
  if (severity === 'caution')
    return [{ kind: 'path', path: triangle, stroke: { ...stroke, colour: palette.warning } }];
  return [{ kind: 'path', path: circle(middle, 1.3), fill: palette.warning }];
}
