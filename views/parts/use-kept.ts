import { type Dispatch, type StateUpdater, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { useStore } from '../app/store-context.ts';

/** A form left open longer than this is not taken up again. */
const KEPT_MILLISECONDS = 2 * 86_400_000;

interface Kept<T> {
  readonly at: number;
  readonly value: T;
}

export interface KeptState<T> {
  readonly value: T;
  readonly set: Dispatch<StateUpdater<T>>;
  /** When the form was left; absent when it begins fresh. */
  readonly leftAt?: Date;
  /** Empties the form and forgets what was kept. */
  readonly forget: () => void;
}

/**
 * What a keeper has tapped so far, kept on the device until it is saved, so that an interruption loses nothing. It is
 * no record: nothing reads it but the same form. `begun` is what the form begins with instead, laid out elsewhere.
 */
export function useKept<T>(name: string, empty: T, begun?: T): KeptState<T> {
  const { records } = useStore();
  const key = `damline form ${records.value} ${name}`;
  const [kept] = useState(() => (begun === undefined ? read<T>(key) : undefined));
  const [value, setValue] = useState(kept?.value ?? begun ?? empty);
  const fresh = useRef(empty);
  const [restored, setRestored] = useState(kept !== undefined);
  // Written before the screen is drawn: a page put away the moment after a tap has kept the tap.
  useLayoutEffect(() => {
    if (value !== fresh.current) write(key, { at: Date.now(), value });
  }, [value]);
  const forget = () => {
    remove(key);
    fresh.current = empty;
    setValue(empty);
    setRestored(false);
  };
  return { value, set: setValue, forget, ...(restored && kept ? { leftAt: new Date(kept.at) } : {}) };
}

function read<T>(key: string): Kept<T> | undefined {
  try {
    const kept = JSON.parse(localStorage.getItem(key) ?? 'null') as Kept<T> | null;
    return kept && Date.now() - kept.at < KEPT_MILLISECONDS ? kept : undefined;
  } catch {
    return undefined;
  }
}

/** A device that keeps nothing (private browsing, full) still lets the form be filled in and saved. */
function write<T>(key: string, kept: Kept<T>): void {
  try {
    localStorage.setItem(key, JSON.stringify(kept));
  } catch {
    // The form itself is untouched.
  }
}

function remove(key: string): void {
  try {
    localStorage.removeItem(key);
  } catch {
    // Nothing was kept.
  }
}
