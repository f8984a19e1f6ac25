/**
 * From the facts of a registry to the compiled pedigree the numerics read: checks everything, puts the nodes in
 * birth order, and computes the Mendelian variance and the diagonal of A of each, inbreeding included.
 * Formulas, sources and cost: mendelian.ts; node layout: nodes.ts.
 */
import { birthOrder, levels } from './birth-order.ts';
import { type Dependencies, dependencies } from './dependencies.ts';
import { loops } from './loops.ts';
import { mendelianTerms } from './mendelian.ts';
import { layOutNodes } from './nodes.ts';
import type { Pedigree } from './pedigree.ts';
import type { PedigreeInput } from './pedigree-input.ts';
import type { PedigreeProblem } from './problems.ts';
import { type Resolved, resolveInput } from './resolve-input.ts';

export type CompiledPedigree =
  | { readonly ok: true; readonly pedigree: Pedigree }
  | { readonly ok: false; readonly problems: readonly PedigreeProblem[] };

/** The compiled pedigree, or everything that is wrong with the input. The input is not changed. */
export function compilePedigree(input: PedigreeInput): CompiledPedigree {
  const checked = resolveInput(input);
  if (!checked.ok) return checked;
  const { resolved } = checked;
  const waitsFor = dependencies(resolved);
  const level = levels(waitsFor);
  if (!level) return { ok: false, problems: loopProblems(input, resolved, waitsFor) };
  const layout = layOutNodes(input, resolved, birthOrder(waitsFor, level));
  const terms = mendelianTerms(resolved, layout, level);
  const { mendelian, diagonal, inbreeding } = terms;
  const relationToMates = terms.relationToMates.slice(0, input.queens.length);
  return { ok: true, pedigree: { ...layout.nodes, mendelian, diagonal, inbreeding, relationToMates } };
}

function loopProblems(input: PedigreeInput, resolved: Resolved, waitsFor: Dependencies): PedigreeProblem[] {
  const { firstQueen } = resolved;
  return loops(waitsFor).map((loop) => {
    const queens = queensOfLoop(resolved, loop);
    const index = Math.min(...queens);
    const names = queens.map((queen) => `'${input.queens[queen]!.id}'`);
    return {
      code: 'cycle',
      list: 'queens',
      index,
      record: input.queens[index]!.id,
      field: loop.includes(firstQueen + index) ? 'dams' : 'mating',
      found: `a loop of descent through ${names.join(', ')}`,
      because: 'No queen descends from herself, by her dam or by the drones her dam met.',
      remedy: 'Correct a dam or a list of drone mothers of these queens.',
    };
  });
}

/** Queens on a loop, and dams whose drones lead round it. */
function queensOfLoop(
  { firstQueen, firstDrone, firstSource, dams, sourceOf, queenOfMating }: Resolved,
  loop: number[],
) {
  const queens = new Set<number>();
  loop.forEach((entity, place) => {
    if (entity < firstQueen || entity >= firstDrone) return;
    const queen = entity - firstQueen;
    queens.add(queen);
    const source = loop[(place + 1) % loop.length]! - firstSource;
    for (let k = dams.start[queen]!; k < dams.start[queen + 1]!; k++) {
      const mating = dams.item[k]!;
      if (sourceOf[mating] === source) queens.add(queenOfMating[mating]!);
    }
  });
  return [...queens];
}
