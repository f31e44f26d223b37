import './content-policy.ts';
import './styles/fonts.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/controls.css';
import { mount } from 'svelte';
import { connect } from './api/client.ts';
import App from './app.svelte';

const target = document.getElementById('app');
if (target !== null) mount(App, { target, props: { invoke: connect(window), page: window } });
