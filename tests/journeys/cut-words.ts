/** Whether everything that is written can be read. */

import type { Page } from '@playwright/test';

/** Words that their box cuts off, without a way to scroll to them or words on hover and focus that have them whole. */
export function cutWords(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    // What is there only to be read out.
    const isUnseen = (element: Element): boolean => getComputedStyle(element).clipPath === 'inset(50%)';
    const hides = (element: Element): boolean => /hidden|clip/.test(getComputedStyle(element).overflow);
    const isCut = (element: Element): boolean =>
      element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 1;
    const isToldWhole = (element: Element): boolean =>
      getComputedStyle(element).textOverflow === 'ellipsis' && element.closest('[data-why]') !== null;
    const hasText = (element: Element): boolean =>
      [...element.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim() !== '',
      );
    return [...document.querySelectorAll('body *:not(.unseen)')]
      .filter((element) => element.checkVisibility() && hasText(element))
      .filter((element) => element.clientWidth > 0 && hides(element) && isCut(element))
      .filter((element) => !isUnseen(element) && !isToldWhole(element))
      .map((element) => `${element.outerHTML.slice(0, 90)}: ${element.textContent}`);
  });
}
