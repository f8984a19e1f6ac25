import { useEffect, useRef } from 'preact/hooks';
import { Route, Router, Switch, useLocation } from 'wouter-preact';
import type { Store } from '../../src/store/contract.ts';
import styles from './App.module.css';
import { BrokenScreen } from './BrokenScreen.tsx';
import { DayLine } from './DayLine.tsx';
import { FirstRun } from './FirstRun.tsx';
import { hashHook } from './location.ts';
import { Navigation } from './Navigation.tsx';
import { NotFound } from './NotFound.tsx';
import { Problems } from './Problems.tsx';
import { SCREENS } from './screens.tsx';
import { StoreContext } from './store-context.ts';
import { UndoStrip } from './UndoStrip.tsx';
import { useDock } from './use-dock.ts';
import { useTheme } from './use-theme.ts';
import { useUndoKeys } from './use-undo-keys.ts';

/** The whole app around one store. */
export function App({ store }: { readonly store: Store }) {
  return (
    <StoreContext.Provider value={store}>
      <Router hook={hashHook}>
        <Shell store={store} />
      </Router>
    </StoreContext.Provider>
  );
}

function Shell({ store }: { readonly store: Store }) {
  const [path] = useLocation();
  const main = useFocusOnNewScreen(path);
  const dock = useDock();
  useTheme(store.settings.value.theme);
  useUndoKeys(store);
  const { yards, queens } = store.registry.value;
  // A pedigree from another keeper brings queens before there is a yard.
  const empty = store.records.value === 'own' && yards.size === 0 && queens.size === 0;
  // Exchange and the settings open without records too: a file may be what brings the first ones.
  const first = empty && !path.startsWith('/exchange') && path !== '/settings';
  const recording = /^\/record\/[^/]/.test(path);
  return (
    <div class={`${styles.shell} ${first ? styles.bare : ''} ${recording ? styles.recording : ''}`}>
      <button type="button" class={styles.skip} onClick={() => main.current?.focus()}>
        To the content
      </button>
      <div class={styles.dock} ref={dock}>
        <UndoStrip />
        {!first && <Navigation path={path} />}
      </div>
      <div class={styles.page}>
        {!first && <DayLine />}
        <Problems />
        <main id="main" class={styles.main} ref={main} tabIndex={-1}>
          <BrokenScreen at={path}>{first ? <FirstRun /> : <Screens />}</BrokenScreen>
        </main>
      </div>
    </div>
  );
}

function Screens() {
  return (
    <Switch>
      {SCREENS.map(({ path, screen: Screen }) => (
        <Route key={path} path={path}>
          {(params) => <Screen key={path} {...params} />}
        </Route>
      ))}
      <Route>
        <NotFound />
      </Route>
    </Switch>
  );
}

/** A new screen starts at its top, and a screen reader starts reading there. */
function useFocusOnNewScreen(path: string) {
  const main = useRef<HTMLElement>(null);
  const before = useRef(path);
  useEffect(() => {
    if (before.current === path) return;
    before.current = path;
    window.scrollTo(0, 0);
    main.current?.focus({ preventScroll: true });
  }, [path]);
  return main;
}
