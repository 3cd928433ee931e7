/** Puts the window on the page. */

import './app/style/base.css';
import { mount } from 'svelte';
import App from './app/App.svelte';
import { connect } from './host.ts';

const target = document.getElementById('window');
if (!target) throw new Error('the page has no place for the window');

mount(App, { target, props: { connection: connect() } });
