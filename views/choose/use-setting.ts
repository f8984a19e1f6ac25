import { useEffect, useRef, useState } from 'preact/hooks';
import type { Settings } from '../../src/store/settings.ts';
import { useStore } from '../app/store-context.ts';

/** A pause after the last move before a setting is saved: a slider is not written at each step. */
const SAVE_AFTER_MILLISECONDS = 300;

/** A setting that follows the hand at once and is saved when the hand rests, or when the screen is left. */
export function useSetting<K extends keyof Settings>(
  name: K,
): readonly [Settings[K], (value: Settings[K]) => void] {
  const store = useStore();
  const [moving, setMoving] = useState<{ readonly value: Settings[K] }>();
  const waiting = useRef<{
    readonly timer: ReturnType<typeof setTimeout>;
    readonly save: () => Promise<void>;
  }>(undefined);
  useEffect(
    () => () => {
      const left = waiting.current;
      if (!left) return;
      clearTimeout(left.timer);
      void left.save();
    },
    [],
  );
  const change = (value: Settings[K]) => {
    if (waiting.current) clearTimeout(waiting.current.timer);
    const moved = { value };
    setMoving(moved);
    const save = async () => {
      waiting.current = undefined;
      await store.changeSettings({ [name]: value } as Partial<Settings>);
      setMoving((latest) => (latest === moved ? undefined : latest));
    };
    waiting.current = { save, timer: setTimeout(save, SAVE_AFTER_MILLISECONDS) };
  };
  return [moving ? moving.value : store.settings.value[name], change];
}
