/**
 * The window's frame as still surfaces, with the plan in it. What decides how high the plan is has the words that will
 * stand there; all else is empty.
 */

import type { FirstPicture } from '#contract/contract.ts';
import { element } from './element.ts';
import { paintPicture } from './picture.ts';
import type { StartWords } from './words.ts';

export class Frame {
  readonly #words: StartWords;
  readonly #all: HTMLElement;
  readonly #lines = element('div', '');
  readonly #steps: HTMLElement;
  readonly #plan = element('div', 'start-plan');
  readonly #legend = element('ul', 'start-legend');
  /** "Opening", for those who see nothing yet, and for those who hear the page. */
  readonly #word = element('p', 'start-word unseen');
  #hasLeft = false;

  constructor(page: HTMLElement, words: StartWords) {
    this.#words = words;
    this.#steps = firstSteps(words);
    this.#all = element('div', 'start', [
      element('div', 'start-bar'),
      this.#lines,
      element('div', 'start-columns', [
        element('div', 'start-left'),
        element('div', 'start-middle', [
          element('div', 'start-tabs'),
          this.#steps,
          this.#plan,
          element('div', 'start-foot'),
          this.#footlights(),
        ]),
        element('div', 'start-right'),
      ]),
    ]);
    this.#all.ariaHidden = 'true';
    this.#word.role = 'status';
    page.append(this.#all, this.#word);
    this.#word.textContent = words.start.opening;
  }

  show(picture: FirstPicture): void {
    if (this.#hasLeft) return;
    document.documentElement.dataset['theme'] = picture.theme;
    this.#steps.hidden = !picture.first;
    this.#lines.replaceChildren(...picture.lines.map(lineToRead));
    this.#legend.replaceChildren(
      ...picture.legend.map((words) => element('li', '', [element('i', ''), words])),
    );
    const { width, height } = this.#plan.getBoundingClientRect();
    const canvas = document.createElement('canvas');
    this.#plan.append(canvas);
    paintPicture(canvas, picture, { width, height });
    this.#all.classList.add('seen');
    this.#word.classList.add('unseen');
  }

  /** Where there is no picture, words are better than nothing. */
  sayOpening(): void {
    if (!this.#all.classList.contains('seen')) this.#word.classList.remove('unseen');
  }

  leave(): void {
    this.#hasLeft = true;
    this.#all.remove();
    this.#word.remove();
  }

  #footlights(): HTMLElement {
    const { label } = this.#words.house;
    const head = [element('span', 'heading', [label]), element('i', 'start-icon'), this.#legend];
    return element('div', 'start-house', [element('div', 'start-head', head), element('div', 'start-cells')]);
  }
}

function lineToRead(words: string): HTMLElement {
  return element('div', 'start-line', [
    element('i', ''),
    element('p', '', [words]),
    element('i', 'start-icon'),
  ]);
}

function firstSteps({ hints }: StartWords): HTMLElement {
  const steps = hints.steps(hints.lengths.metric);
  const count = element('b', '', [hints.count(1, steps.length)]);
  return element('div', 'start-steps', [
    element('p', '', [count, ` ${steps[0] ?? ''}`]),
    ...[hints.show, hints.next].map((words) => element('span', 'start-button', [words])),
    element('i', 'start-icon'),
  ]);
}
