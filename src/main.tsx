import { registerSW } from 'virtual:pwa-register';
import { render } from 'preact';
import { App } from '../views/app/App.tsx';
import '../views/style/tokens.css';
import '../views/style/base.css';
import { openStore } from './store/store.ts';

registerSW({ immediate: true });

const root = document.getElementById('app');
if (!root) throw new Error('index.html has no element with the id app.');
render(<App store={await openStore({})} />, root);
