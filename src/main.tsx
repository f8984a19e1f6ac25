import { render } from 'preact';
import { registerSW } from 'virtual:pwa-register';
import { App } from '../views/app/App.tsx';
import '../views/style/tokens.css';
import '../views/style/base.css';
import { loadDemoYard } from './demo-yard.ts';
import { openStore } from './store/index.ts';

registerSW({ immediate: true });

const root = document.getElementById('app');
if (!root) throw new Error('index.html has no element with the id app.');
const store = await openStore({ demo: loadDemoYard });
if (new URLSearchParams(window.location.search).has('demo')) {
  await store.open('demo');
  // A reload after leaving the demo stays with the keeper's own records.
  window.history.replaceState(undefined, '', window.location.pathname + window.location.hash);
}
render(<App store={store} />, root);
