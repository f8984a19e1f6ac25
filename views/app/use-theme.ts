import { useEffect } from 'preact/hooks';
import type { Settings } from '../../src/store/settings.ts';

/** Light or dark as the keeper chose; without a choice, as the device has it. */
export function useTheme(theme: Settings['theme']): void {
  useEffect(() => {
    if (theme === 'system') delete document.documentElement.dataset.theme;
    else document.documentElement.dataset.theme = theme;
  }, [theme]);
}
