import { registerSW } from 'virtual:pwa-register';
import { render } from 'preact';
import { App } from '../views/app/App.tsx';
import '../views/style/tokens.css';
import '../views/style/base.css';
import { loadDemoYard } from './demo-yard.ts';
import { recordsOpenLast, rememberRecords } from './records-open-last.ts';
import { openStore } from './store/index.ts';

registerSW({ immediate: true });

const root = document.getElementById('app');
if (!root) throw new Error('index.html has no element with the id app.');
const demoAsked = new URLSearchParams(window.location.search).has('demo');
const store = await openStore({ demo: loadDemoYard, records: demoAsked ? 'demo' : recordsOpenLast() });
store.records.subscribe(rememberRecords);
if (demoAsked) {
  // A reload after leaving the demo stays with the keeper's own records.
  window.history.replaceState(undefined, '', window.location.pathname + window.location.hash);
}
render(<App store={store} />, root);
