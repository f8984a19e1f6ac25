import hues from './hues.module.css';

/** The class that gives `--hue` its colour, for a hue from 1 to 8. */
export function hueClass(hue: number): string {
  return hues[`hue${hue}`] ?? '';
}
