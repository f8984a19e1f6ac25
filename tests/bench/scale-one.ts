/**
 * One registry, one process, so that its peak memory is its own: compiled (checks, birth order, all inbreeding
 * coefficients) and evaluated. Prints one line of JSON. Arguments: queens, meeting, drone mothers, 'merit' or ''.
 */
import { compilePedigree } from '../../graph/kinship/compile.ts';
import { benchMerit } from './merit.ts';
import { inventedRegistry, type Meeting, registryShape } from './registries.ts';
import { type Seconds, timed } from './timed.ts';

export interface ScaleFigures {
  readonly queens: number;
  readonly nodes: number;
  readonly compile: Seconds;
  readonly merit?: Seconds;
  readonly iterations?: number;
  readonly megabytes: number;
}

/** The facts of the registry are let go of afterwards: whoever evaluates does not hold them either. */
function compiled(queens: number, meeting: Meeting, droneMothers: number) {
  const input = inventedRegistry(registryShape(queens, { meeting, droneMothers }));
  const { value, seconds, processor } = timed(() => compilePedigree(input));
  if (!value.ok) throw new Error('The invented registry has problems.');
  return { pedigree: value.pedigree, compile: { seconds, processor } };
}

function measure(queens: number, meeting: Meeting, droneMothers: number, withMerit: boolean): ScaleFigures {
  const { pedigree, compile } = compiled(queens, meeting, droneMothers);
  const merit = withMerit ? benchMerit(pedigree) : undefined;
  return {
    queens,
    nodes: pedigree.size,
    compile,
    ...(merit ? { merit: merit.solved, iterations: merit.iterations } : {}),
    megabytes: Math.round(process.resourceUsage().maxRSS / 1024),
  };
}

const [queens = '1000', meeting = 'pool', droneMothers = '50', merit = ''] = process.argv.slice(2);
console.log(
  JSON.stringify(measure(Number(queens), meeting as Meeting, Number(droneMothers), merit === 'merit')),
);
