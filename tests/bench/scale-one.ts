/**
 * One registry, one process, so that its peak memory is its own: compiled (checks, birth order, all inbreeding
 * coefficients) and evaluated. Prints one line of JSON. Arguments: queens, meeting, drone mothers, 'merit' or ''.
 */
import { compilePedigree } from '../../graph/kinship/compile.ts';
import { benchMerit } from './merit.ts';
import { inventedRegistry, type Meeting, registryShape } from './registries.ts';

export interface ScaleFigures {
  readonly queens: number;
  readonly nodes: number;
  /** Seconds by the clock, the first time in the process, and the best of a few more. */
  readonly firstCompile: number;
  readonly compile: number;
  /** Seconds of the processor in the first: what the clock shows when nothing else runs, or less with its helpers. */
  readonly processor: number;
  readonly merit?: number;
  readonly iterations?: number;
  readonly megabytes: number;
}

const AGAIN_UP_TO = 100_000;

function timed<Value>(work: () => Value): { value: Value; seconds: number } {
  const begin = performance.now();
  const value = work();
  return { value, seconds: (performance.now() - begin) / 1000 };
}

function measure(queens: number, meeting: Meeting, droneMothers: number, withMerit: boolean): ScaleFigures {
  const input = inventedRegistry(registryShape(queens, { meeting, droneMothers }));
  const before = process.cpuUsage();
  const first = timed(() => compilePedigree(input));
  const { user, system } = process.cpuUsage(before);
  if (!first.value.ok) throw new Error('The invented registry has problems.');
  let compile = first.seconds;
  const repeats = queens <= AGAIN_UP_TO && meeting === 'pool' ? 3 : 0;
  for (let k = 0; k < repeats; k++) compile = Math.min(compile, timed(() => compilePedigree(input)).seconds);
  const { pedigree } = first.value;
  const merit = withMerit ? benchMerit(pedigree) : undefined;
  return {
    queens,
    nodes: pedigree.size,
    firstCompile: first.seconds,
    compile,
    processor: (user + system) / 1e6,
    ...(merit ? { merit: merit.seconds, iterations: merit.iterations } : {}),
    megabytes: Math.round(process.resourceUsage().maxRSS / 1024),
  };
}

const [queens = '1000', meeting = 'pool', droneMothers = '50', merit = ''] = process.argv.slice(2);
console.log(
  JSON.stringify(measure(Number(queens), meeting as Meeting, Number(droneMothers), merit === 'merit')),
);
