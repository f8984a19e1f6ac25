import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Colony } from '../../src/registry/state.ts';
import { type RecordKind, routes } from '../app/routes.ts';
import styles from './KindStrip.module.css';

const KINDS: readonly { readonly kind: RecordKind; readonly label: string }[] = [
  { kind: 'inspection', label: 'Inspection' },
  { kind: 'mites', label: 'Mites' },
  { kind: 'queen', label: 'Queen' },
  { kind: 'treatment', label: 'Treatment' },
  { kind: 'feeding', label: 'Feeding' },
  { kind: 'winter', label: 'Winter' },
  { kind: 'harvest', label: 'Harvest' },
  { kind: 'hygienic', label: 'Hygiene' },
  { kind: 'note', label: 'Note' },
  { kind: 'other', label: 'Other' },
];

/** What can be recorded at this hive, side by side; it slides under the thumb. */
export function KindStrip({ colony, kind }: { readonly colony: Colony; readonly kind: RecordKind }) {
  const strip = useRef<HTMLElement>(null);
  useLayoutEffect(() => showCurrent(strip.current), [kind]);
  return (
    <nav ref={strip} class={styles.strip} aria-label="What to record">
      <ul>
        {KINDS.map((each) => (
          <li key={each.kind}>
            <a
              href={routes.record(colony.id, each.kind)}
              aria-current={each.kind === kind ? 'page' : undefined}
            >
              {each.label}
            </a>
          </li>
        ))}
        <li>
          <a href={routes.split(colony.id)}>Split</a>
        </li>
      </ul>
    </nav>
  );
}

/** Slides the strip, and not the page, until the kind that is open stands in its middle. */
function showCurrent(strip: HTMLElement | null): void {
  const current = strip?.querySelector<HTMLElement>('[aria-current]');
  if (!strip || !current) return;
  strip.scrollLeft = current.offsetLeft - (strip.clientWidth - current.offsetWidth) / 2;
}
