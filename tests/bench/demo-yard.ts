import { evaluationWork } from '../../src/registry/evaluation.ts';
import { DEFAULT_SETTINGS } from '../../src/store/settings.ts';
import { evaluateWork } from '../../src/workers/evaluate.ts';
import { DEMO_DAY, demoRegistry } from '../helpers/demo.ts';

/**
 * The demo yard's whole evaluation, from the registry to every figure that the screens show: breeding values with their
 * doubt, kinship, brood viability of each candidate's daughters at each yard. The first time in the process, while code
 * is still being compiled, and the middle one of many.
 */

const REPEATS = 21;

export function benchDemoYard(print: (line: string) => void = console.log): void {
  const registry = demoRegistry();
  const times = Array.from({ length: REPEATS }, () => {
    const begin = performance.now();
    const work = evaluationWork(registry, DEMO_DAY, { sexAlleles: DEFAULT_SETTINGS.sexAlleles });
    const between = performance.now();
    evaluateWork(work);
    return { gathered: between - begin, evaluated: performance.now() - between };
  });
  const line = (name: string, { gathered, evaluated }: { gathered: number; evaluated: number }) =>
    print(`${name}: gathered in ${gathered.toFixed(0)} ms, evaluated in ${evaluated.toFixed(0)} ms`);
  const sorted = times.toSorted((a, b) => a.gathered + a.evaluated - b.gathered - b.evaluated);
  line('first', times[0] ?? { gathered: Number.NaN, evaluated: Number.NaN });
  line('middle', sorted[REPEATS >> 1] ?? { gathered: Number.NaN, evaluated: Number.NaN });
}
