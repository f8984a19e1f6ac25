import { useState } from 'preact/hooks';
import type { TreatmentSpan } from '../../src/registry/state.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { dayInYear } from '../parts/days.ts';
import { sentence } from '../parts/words.ts';
import { HoneyWaitSheet } from './HoneyWaitSheet.tsx';
import styles from './Running.module.css';
import { TakeOutSheet } from './TakeOutSheet.tsx';
import { endForgotten, honeyWait, isIn, treatmentLog } from './treatments.ts';

/** Treatments that are in the hives, and waits before honey that still run: each with what to do about it. */
export function Running() {
  const registry = useRegistry();
  const on = useStore().on.value;
  const [out, setOut] = useState<TreatmentSpan>();
  const [wait, setWait] = useState<TreatmentSpan>();
  const log = treatmentLog(registry, on);
  const open = log.filter((span) => isIn(span, on) || endForgotten(span, on));
  const waiting = log.filter((span) => {
    const honey = honeyWait(span);
    return !open.includes(span) && honey.is === 'until' && honey.day > on;
  });
  if (open.length + waiting.length === 0) return null;
  return (
    <section class={styles.running} aria-labelledby="running">
      <h2 id="running">In the hives now</h2>
      <ul>
        {open.map((span) => (
          <li key={span.id}>
            <p>
              <strong>{sentence(span.entry.active)}</strong> since {dayInYear(span.from, on)}
              {span.entry.end && `, to come out by ${dayInYear(span.entry.end, on)}`}, in{' '}
              <Colonies span={span} />.{' '}
              {endForgotten(span, on) &&
                'Nobody wrote down when it came out; the counts after it are judged as if it had stayed in for ten weeks.'}
            </p>
            <div class={styles.acts}>
              <Button onPress={() => setOut(span)}>Taken out</Button>
              {span.entry.honeyWaitDays === undefined && (
                <Button look="quiet" onPress={() => setWait(span)}>
                  Wait before honey, from the label
                </Button>
              )}
            </div>
          </li>
        ))}
        {waiting.map((span) => {
          const honey = honeyWait(span);
          return (
            <li key={span.id}>
              <p>
                <strong>No honey</strong> from <Colonies span={span} /> before{' '}
                {honey.is === 'until' && dayInYear(honey.day, on)}: {span.entry.active}, wait as you took it
                from the label.
              </p>
            </li>
          );
        })}
      </ul>
      {out && <TakeOutSheet span={out} onClose={() => setOut(undefined)} />}
      {wait && <HoneyWaitSheet span={wait} onClose={() => setWait(undefined)} />}
    </section>
  );
}

/** Colonies named up to this many; more are counted. */
const NAMED = 6;

export function Colonies({ span }: { readonly span: TreatmentSpan }) {
  if (span.colonies.length > NAMED) return <>{span.colonies.length} colonies</>;
  return (
    <>
      {span.colonies.map((colony, at) => (
        <span key={colony}>
          {at > 0 && ' '}
          <ColonyLabel colony={colony} />
        </span>
      ))}
    </>
  );
}
