import './content-policy.ts';
import './styles/fonts.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/controls.css';
import { mount } from 'svelte';
import { connect } from './api/client.ts';
import App from './app.svelte';

const target = document.getElementById('app');

function open(target: HTMLElement): void {
  mount(App, { target, props: { invoke: connect(window), page: window } });
}

// Charts measure and draw their words once: the font has to be there before the first of them.
if (target !== null) void document.fonts.load("12px 'Source Sans 3'").finally(() => open(target));
