import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Notice } from '../parts/Notice.tsx';

export interface ScreenProps {
  readonly id?: string;
  readonly kind?: string;
}

type Loaded = { readonly screen: ComponentType<ScreenProps> } | { readonly failed: true } | undefined;

/** A screen whose code is fetched when it is first opened. A fetch that fails says so and can be tried again. */
export function lazyScreen(load: () => Promise<ComponentType<ScreenProps>>): ComponentType<ScreenProps> {
  let known: ComponentType<ScreenProps> | undefined;

  return function LazyScreen(props: ScreenProps) {
    const [loaded, setLoaded] = useState<Loaded>(known && { screen: known });
    const [attempt, setAttempt] = useState(0);
    useEffect(() => {
      if (known) return;
      let wanted = true;
      load().then(
        (screen) => {
          known = screen;
          if (wanted) setLoaded({ screen });
        },
        () => wanted && setLoaded({ failed: true }),
      );
      return () => {
        wanted = false;
      };
    }, [attempt]);

    if (!loaded) return <p aria-busy="true" />;
    if ('failed' in loaded) {
      const again = () => {
        setLoaded(undefined);
        setAttempt(attempt + 1);
      };
      return (
        <Notice
          tone="warn"
          title="This screen could not be loaded"
          action={{ label: 'Try again', onPress: again }}
        >
          Part of the app is missing on this device and there seems to be no connection to fetch it. Your
          records are untouched.
        </Notice>
      );
    }
    const Screen = loaded.screen;
    return <Screen {...props} />;
  };
}
