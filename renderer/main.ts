/** Puts the window on the page. */

import './app/style/base.css';
import { mount } from 'svelte';
import App from './app/App.svelte';
import { fontOf } from './canvas/painter.ts';
import { connect } from './host.ts';

// The plan waits for its letters: they come while the concert is asked for and read.
for (const face of ['regular', 'bold'] as const) void document.fonts.load(fontOf(face, 16));

const target = document.getElementById('window');
if (!target) throw new Error('the page has no place for the window');

mount(App, { target, props: { connection: connect() } });
