/**
 * The first script of the page, small enough to be there at once: it asks the shell for the plan of the concert that will
 * be open, shows it where the plan will be, and only then brings the window, which takes its place. What it shows is a
 * picture: nobody has it read out, and it takes no pointer.
 */

import '../app/style/base.css';
import './start.css';
import type { FirstPicture, PictureAsked } from '#contract/contract.ts';
import { askAtFirst } from '../files/first-questions.ts';
import { rememberedFile } from '../files/window-memory.ts';
import { fontOf } from '../canvas/painter.ts';
import { connect } from '../host.ts';
import { Frame } from './frame.ts';
import { roomIn } from './room.ts';
import { inLanguage } from './words.ts';

/** Longer nobody waits for a picture: the window comes without. */
const LONGEST_WAIT_MS = 600;

async function start(): Promise<void> {
  const { words, fetchWindow } = inLanguage(document.documentElement.lang);
  const connection = connect(window, words.lost.because);
  const before = rememberedFile();
  const asked = isNarrow() ? NO_PICTURE : connection.call('plan.first', { ...surroundings(), before });
  const answers = asked.then(() => askAtFirst(connection));
  await wholePage();
  const frame = new Frame(document.body, words);
  // Whatever is wrong with a picture, the window comes.
  const shown = Promise.all([asked, lettersThere()])
    .then(([answer]) => (answer.ok && answer.value ? seen(frame, answer.value) : undefined))
    .catch(reportError);
  await Promise.race([shown, after(LONGEST_WAIT_MS)]);
  frame.sayOpening();
  const { open } = await fetchWindow();
  open({ connection, answers, before, leave: () => frame.leave() });
}

/** The script runs as soon as it is there, whether the page has been read to its end by then or not. */
function wholePage(): Promise<unknown> | undefined {
  if (document.readyState !== 'loading') return undefined;
  return new Promise((read) => document.addEventListener('DOMContentLoaded', read, { once: true }));
}

/** There the window is a page that scrolls, and its plan is somewhere else. */
const isNarrow = (): boolean => matchMedia('(max-width: 840px)').matches;

const NO_PICTURE = Promise.resolve({ ok: true, value: null } as const);

function surroundings(): PictureAsked {
  const room = roomIn({ width: innerWidth, height: innerHeight });
  const dark = matchMedia('(prefers-color-scheme: dark)').matches;
  return { ...room, dark, locale: navigator.language };
}

/** All that the window needs at once, rather than one after the other; not before, for it would keep the picture waiting. */
function fetchWindowFiles(): void {
  const files = document.getElementById('window-files');
  if (files instanceof HTMLTemplateElement) document.head.append(files.content);
}

/** The look of the page, then its letters: the plan is set in two of them, what stands round it in the third. */
async function lettersThere(): Promise<void> {
  const looks = [...document.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]')];
  await Promise.all(looks.map(lookThere));
  const faces = [fontOf('regular', 16), fontOf('bold', 16), fontOf('regular', 16).replace('400', '600')];
  await Promise.allSettled(faces.map((font) => document.fonts.load(font)));
}

function lookThere(look: HTMLLinkElement): Promise<unknown> | undefined {
  if (look.sheet) return undefined;
  return new Promise((there) => {
    for (const event of ['load', 'error']) look.addEventListener(event, there, { once: true });
  });
}

/** Resolves when it is on the screen, so that nothing heavy keeps it from there. */
function seen(frame: Frame, picture: FirstPicture): Promise<void> {
  frame.show(picture);
  fetchWindowFiles();
  return new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
}

function after(milliseconds: number): Promise<void> {
  return new Promise((done) => setTimeout(done, milliseconds));
}

void start();
