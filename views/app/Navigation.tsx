import type { ColonyId } from '../../src/journal/ids.ts';
import { isLiving } from '../../src/registry/queries.ts';
import styles from './Navigation.module.css';
import { routes } from './routes.ts';
import { useStore } from './store-context.ts';

const PLACES = [
  { label: 'Rounds', href: routes.rounds(), holds: ['/rounds', '/'] },
  {
    label: 'Yards',
    href: routes.yards(),
    holds: [
      '/yards',
      '/colony',
      '/split',
      '/carry',
      '/winter',
      '/winters',
      '/mites',
      '/record',
      '/entry',
      '/history',
    ],
  },
  { label: 'Lines', href: routes.lines(), holds: ['/lines', '/queen'] },
  { label: 'Choose', href: routes.choose(), holds: ['/choose'] },
  { label: 'Exchange', href: routes.exchange(), holds: ['/exchange'] },
] as const;

/** The five places and recording: a bar under the thumb on a phone, a rail at the side of a desk. */
export function Navigation({ path }: { readonly path: string }) {
  const { registry, on } = useStore();
  const colony = registry.value.colonies.get(/^\/colony\/([^/]+)/.exec(path)?.[1] as ColonyId);
  const here = colony && isLiving(colony, on.value);
  const recording = /^\/(record|entry|split|carry)/.test(path);
  return (
    <nav class={styles.nav} aria-label="Places">
      <a class={styles.name} href={routes.yards()}>
        Damline
      </a>
      <ul class={styles.places}>
        {PLACES.map(({ label, href, holds }) => (
          <li key={label}>
            <a href={href} aria-current={isHere(path, holds) ? 'page' : undefined}>
              {label}
            </a>
            {label === 'Yards' && <UnderYards path={path} />}
          </li>
        ))}
      </ul>
      {!recording && (
        <a class={styles.record} href={here ? routes.record(colony.id) : routes.recordWhere()}>
          Record
        </a>
      )}
      <a
        class={styles.settings}
        href={routes.settings()}
        aria-current={path === '/settings' ? 'page' : undefined}
      >
        Settings
      </a>
    </nav>
  );
}

/** What is told across the yards; on a phone it is reached from the yards themselves. */
function UnderYards({ path }: { readonly path: string }) {
  return (
    <ul class={styles.under}>
      <li>
        <a href={routes.mites()} aria-current={path === '/mites' ? 'page' : undefined}>
          Mites
        </a>
      </li>
      <li>
        <a href={routes.winters()} aria-current={path === '/winters' ? 'page' : undefined}>
          Winters
        </a>
      </li>
    </ul>
  );
}

function isHere(path: string, holds: readonly string[]): boolean {
  return holds.some((start) => path === start || (start !== '/' && path.startsWith(`${start}/`)));
}
