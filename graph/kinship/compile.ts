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
  const { firstQueen, firstDrone } = resolved;
  return loops(waitsFor).map((loop) => {
    const queens = loop.filter((entity) => entity >= firstQueen && entity < firstDrone);
    const index = Math.min(...queens) - firstQueen;
    const record = input.queens[index]!.id;
    const names = queens.map((entity) => `'${input.queens[entity - firstQueen]!.id}'`);
    const field = input.queens[index]!.dams.length > 0 ? 'dams' : 'mating';
    return {
      code: 'cycle',
      list: 'queens',
      index,
      record,
      field,
      found: `a loop of descent through ${names.join(', ')}`,
      because: 'No queen descends from herself, by her dam or by the drones her dam met.',
      remedy: 'Correct a dam or a list of drone mothers of these queens.',
    };
  });
}
