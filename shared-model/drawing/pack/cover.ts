/** The cover: what concert it is, what is played, whom to call, and which sheet is where. */

import { dayOnPrint } from '../issued.ts';
import { concertOf, inSetup, programmeOf } from '../../document/document.ts';
import type { Concert } from '../../document/records.ts';
import { thingsStanding } from '../../programme/units.ts';
import { t } from '../../words/say.ts';
import { line } from '../outline.ts';
import type { Primitive } from '../primitives.ts';
import { grouped, paragraph, type Block, type TextTools } from '../sheet/blocks.ts';
import { pieceOf, titleOf } from '../sheet/page-frame.ts';
import { tableSection } from '../sheet/sections.ts';
import type { Table } from '../sheet/table.ts';
import { ASCENT, LEADING, TEXT, WEIGHT } from '../style.ts';
import { oneLine, textLine, wrapped, type Type } from '../text.ts';
import { pieceOfEntry } from './entries.ts';
import { textPages } from './pages.ts';
import type { EntryPages, Numbering, PackEntry, PackRequest } from './request.ts';

export function coverPages(request: PackRequest, entry: PackEntry): EntryPages {
  return textPages(request, entry, (width, numbering) => [
    ...titleBlocks(request, width),
    ...tableSection(programmeWords(), programmeTable(request), width, request),
    ...contactBlocks(request, width),
    ...tableSection(contentsWords(), contentsTable(request, numbering), width, request),
  ]);
}

const NAME: Type = { size: 1.6 * TEXT.title, weight: 'bold' };

/** Air over the concert's name. */
const TOP = 8;

function titleBlocks(request: PackRequest, width: number): Block[] {
  const concert = concertOf(request.document);
  const under = [concert.venue, dayOnPrint(concert.date, request.units, 'long')]
    .map(oneLine)
    .filter((words) => words !== '');
  const issue = [
    concert.revision === '' ? '' : t`Revision ${oneLine(concert.revision)}`,
    request.issued === '' ? '' : t`issued ${dayOnPrint(request.issued, request.units, 'long')}`,
    concert.author === '' ? '' : t`drawn by ${oneLine(concert.author)}`,
  ].filter((words) => words !== '');
  return [
    nameBlock(titleOf(request), width, request),
    ...[under.join(', '), capitalised(issue.join(', '))]
      .filter((words) => words !== '')
      .map((words) => paragraph(words, width, request, { type: { size: TEXT.heading, weight: 'regular' } })),
    ruleBlock(width, request),
  ];
}

function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function nameBlock(words: string, width: number, { palette, measure }: TextTools): Block {
  const lines = wrapped(words, width, NAME, measure);
  const height = NAME.size * LEADING;
  return {
    height: TOP + lines.length * height + 1,
    draw: ({ x, y }) => [
      grouped(
        'title',
        lines.map((text, index) =>
          textLine(
            text,
            { x, y: y + TOP + NAME.size * ASCENT + index * height },
            { ...NAME, colour: palette.ink },
          ),
        ),
      ),
    ],
  };
}

function ruleBlock(width: number, { palette }: TextTools): Block {
  return {
    height: 4,
    draw: ({ x, y }): Primitive[] => [
      {
        kind: 'path',
        path: line({ x, y: y + 2 }, { x: x + width, y: y + 2 }),
        stroke: { colour: palette.ink, width: WEIGHT.heavy },
      },
    ],
  };
}

const programmeWords = () => ({ title: t`Programme`, intro: t`In the order in which it is played.` });

function programmeTable({ document }: PackRequest): Table {
  const setups = programmeOf(document);
  return {
    columns: [
      { title: t`No.`, parts: 10, align: 'end', bold: true },
      { title: t`Piece`, parts: 74, bold: true },
      { title: t`Players`, parts: 18, align: 'end' },
      { title: t`Things set`, parts: 22, align: 'end' },
      { title: t`Time to set it`, parts: 28, align: 'end' },
    ],
    rows: setups.map((setup, index) => [
      String(index + 1),
      pieceOf({ document, setup: setup.id }),
      String(inSetup(document, setup.id, 'player').length),
      String(thingsStanding(document, setup.id)),
      minutes(setup.changeTime),
    ]),
  };
}

/** "4 min", "2 min 30 s"; empty: not known. */
function minutes(time: number | null): string {
  if (time === null) return '';
  const [whole, rest] = [Math.floor(time / 60), Math.round(time % 60)];
  return [whole > 0 ? `${whole} min` : '', rest > 0 || whole === 0 ? `${rest} s` : '']
    .filter((words) => words !== '')
    .join(' ');
}

function contactBlocks(request: PackRequest, width: number): Block[] {
  const { contacts } = concertOf(request.document);
  return tableSection(
    { title: t`Contacts`, intro: t`Whom to ask, as given for this concert.` },
    contactTable(contacts),
    width,
    request,
  );
}

function contactTable(contacts: Concert['contacts']): Table {
  return {
    columns: [
      { title: t`For`, parts: 46 },
      { title: t`Name`, parts: 54, bold: true },
      { title: t`Reached at`, parts: 76 },
    ],
    rows: contacts.map(({ role, name, reachedAt }) => [role, name, reachedAt]),
  };
}

const contentsWords = () => ({
  title: t`Sheets`,
  intro: t`Print at 100 %. Local codes, the venue and licensed practice come before anything in here.`,
});

/** The numbers are known once everything has been counted; until then they take as much room. */
function contentsTable({ document, entries }: PackRequest, numbering: Numbering | null): Table {
  const rows = entries.flatMap((entry) => {
    const sheet = numbering ? numbering.sheetOf(entry.name) : 0;
    return [[sheet === null ? '–' : String(sheet), entry.title, pieceOfEntry(document, entry)]];
  });
  return {
    columns: [
      { title: t`Sheet`, parts: 13, align: 'end', bold: true },
      { title: t`What`, parts: 92 },
      { title: t`Piece`, parts: 71 },
    ],
    rows,
    mayPart: true,
  };
}
