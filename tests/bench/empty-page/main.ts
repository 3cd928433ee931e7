/** A page with the window's libraries and look, and nothing of its own: a heading and an empty stage. */

import '../../../renderer/app/style/base.css';
import { ContextMenu, Dialog, DropdownMenu } from 'bits-ui';
import Konva from 'konva/lib/Core.js';
import { createRawSnippet, mount } from 'svelte';
import * as valibot from 'valibot';

const target = document.getElementById('window');
if (!target) throw new Error('the page has no place for the window');

const children = createRawSnippet(() => ({ render: () => '<h1>Empty</h1>' }));
mount(Dialog.Root, { target, props: { children } });
const container = document.createElement('div');
container.setAttribute('role', 'application');
target.append(container);
const stage = new Konva.Stage({ container, width: innerWidth, height: innerHeight });
stage.add(new Konva.Layer());

// Kept by the bundler, as the window keeps them.
Object.assign(globalThis, { kept: [ContextMenu, DropdownMenu, valibot.parse, valibot.object] });
