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
render(<App store={await openStore({ demo: loadDemoYard })} />, root);
