/** Puts the window on the page. */

import { mount } from 'svelte';
import App from './app/App.svelte';
import type { Starting } from './start/starting.ts';

/** Whatever keeps the plan from being seen, the window must not lie under its picture for ever. */
const LONGEST_PICTURE_MS = 5000;

export function open(starting: Starting): void {
  const target = document.getElementById('window');
  if (!target) throw new Error('the page has no place for the window');
  setTimeout(starting.leave, LONGEST_PICTURE_MS);
  mount(App, { target, props: { starting } });
}
