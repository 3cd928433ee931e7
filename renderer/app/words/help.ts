/** The help: pages about the checks, and the first things to try. */

import type { SettingForm } from '#model/checks/about/check-page.ts';
import type { Standing } from '#model/checks/about/cited.ts';
import { counted } from './counting.ts';
import { helpPagesWords } from './help-pages.ts';

const forms: Readonly<Record<SettingForm, string>> = {
  player: 'in the properties of the player',
  instrument: 'in the properties of the player, under Instruments',
  stand: 'in the properties of the stand',
  piano: 'in the properties of the piano',
  lamp: 'in the properties of the lamp',
  platform: 'in the properties of the platform',
  door: 'in the properties of the platform, under its doors',
  seats: 'in the properties of the block of seats',
  music: 'in the music of the setup',
  turns: 'in the page turns under the plan',
  stock: 'in the programme',
};

const standings: Readonly<Record<Standing, string>> = {
  published: 'published',
  quoted: 'as quoted',
  memory: 'from memory, not looked up',
  practice: '',
  own: '',
};

export const helpWords = {
  help: {
    title: 'How it is judged',
    action: 'Help: how it is judged',
    page: (title: string) => `Help: ${title}`,
    fromFinding: 'How this is judged',
    search: 'Search the help: edge, staff, wheelchair…',
    pages: 'Pages',
    found: (count: number) => counted(count, 'page', 'pages'),
    nothing: 'No page has all of these words.',
    back: 'Back',
    computes: 'What is computed',
    verdicts: 'When it speaks up',
    figures: 'Figures, and whose they are',
    figure: 'Figure',
    value: 'Value',
    source: 'Source',
    settings: 'What you can set',
    now: (value: string) => `now ${value}`,
    change: 'Change in “Concert and limits”',
    unknown: 'What it does not know',
    caution: 'Caution',
    related: 'See also',
    on: 'yes',
    off: 'no',
    forms,
    standings,
    hints: 'Show the first things to try',
    more: helpPagesWords,
  },
} as const;
