import type { ComponentType } from 'preact';
import { lazyScreen, type ScreenProps } from './lazy-screen.tsx';

/** Which screen stands at which path. The first match counts; `:id` and `:kind` reach the screen as props. */
export const SCREENS: readonly { readonly path: string; readonly screen: ComponentType<ScreenProps> }[] = [
  { path: '/rounds', screen: lazyScreen(async () => (await import('../rounds/index.tsx')).Rounds) },
  { path: '/yards/:id?', screen: lazyScreen(async () => (await import('../yards/index.tsx')).Yards) },
  { path: '/colony/:id', screen: lazyScreen(async () => (await import('../colony/index.tsx')).ColonyPage) },
  { path: '/queen/:id', screen: lazyScreen(async () => (await import('../queen/index.tsx')).QueenPage) },
  { path: '/lines', screen: lazyScreen(async () => (await import('../lines/index.tsx')).Lines) },
  { path: '/choose', screen: lazyScreen(async () => (await import('../choose/index.tsx')).Choose) },
  { path: '/exchange', screen: lazyScreen(async () => (await import('../exchange/index.tsx')).Exchange) },
  { path: '/split/:id?', screen: lazyScreen(async () => (await import('../split/index.tsx')).SplitPage) },
  { path: '/carry/:id', screen: lazyScreen(async () => (await import('../carry/index.tsx')).Carry) },
  {
    path: '/record/:id?/:kind?',
    screen: lazyScreen(async () => (await import('../record/index.tsx')).Record),
  },
  {
    path: '/entry/:kind?',
    screen: lazyScreen(async () => (await import('../record/any/index.tsx')).RecordAny),
  },
  {
    path: '/history/:id',
    screen: lazyScreen(async () => (await import('../record/history/index.tsx')).EntryPage),
  },
  {
    path: '/winter/:id',
    screen: lazyScreen(async () => (await import('../record/winter/index.tsx')).WinterWalk),
  },
  { path: '/winters', screen: lazyScreen(async () => (await import('../winter/index.tsx')).Winters) },
  { path: '/mites', screen: lazyScreen(async () => (await import('../mites/index.tsx')).Mites) },
  { path: '/settings', screen: lazyScreen(async () => (await import('./settings/index.tsx')).SettingsPage) },
  { path: '/', screen: lazyScreen(async () => (await import('../rounds/index.tsx')).Rounds) },
];
