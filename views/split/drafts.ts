import type { PartQueen, SplitPart } from '../../src/journal/entries/increase.ts';
import type { Draft } from '../../src/journal/entry.ts';
import type { Parentage } from '../../src/journal/entry-parts.ts';
import type { ColonyId, QueenId } from '../../src/journal/ids.ts';
import { OLDEST_DAYS, whoseEggs } from '../../src/registry/brood.ts';
import { tenureOn } from '../../src/registry/queries.ts';
import type { Registry } from '../../src/registry/state.ts';
import { type PlanPart, type PlanQueen, queenOf, type SplitPlan } from './plan.ts';

/** The entries that one confirmation writes: the new colonies, and the split. */
export function splitDrafts(plan: SplitPlan, registry: Registry): readonly Draft[] {
  const started = plan.parts.flatMap(({ box }): Draft[] =>
    box.is === 'new'
      ? [
          {
            kind: 'colony-started',
            day: plan.day,
            colony: box.colony,
            yard: box.yard,
            label: box.label.trim(),
            how: 'split',
            ...(Object.keys(box.place).length > 0 ? { place: box.place } : {}),
          },
        ]
      : [],
  );
  const parts = plan.parts.map((part) => splitPart(plan, part, registry));
  return [
    ...started,
    {
      kind: 'split',
      day: plan.day,
      source: plan.source,
      parts,
    },
  ];
}

export function splitPart(plan: SplitPlan, part: PlanPart, registry: Registry): SplitPart {
  const hasFrames = Object.keys(part.frames).length > 0;
  return {
    colony: part.box.colony,
    queen: partQueen(plan, part, registry),
    ...(hasFrames ? { frames: part.frames } : {}),
  };
}

function partQueen(plan: SplitPlan, part: PlanPart, registry: Registry): PartQueen {
  const choice = queenOf(plan, part);
  switch (choice.how) {
    case 'old-queen': {
      const queen = headOfSource(plan, registry);
      return { how: 'old-queen', ...(queen ? { queen } : {}) };
    }
    case 'raises-own': {
      const parentage = layers(registry, plan, plan.source, OLDEST_DAYS[choice.from]);
      return { how: 'raises-own', expected: part.expected, parentage, from: choice.from };
    }
    case 'given-cells':
      return {
        how: 'given-cells',
        expected: part.expected,
        parentage: cellParentage(choice, plan, registry),
        age: choice.age,
        ...(choice.cellsFrom ? { cellsFrom: choice.cellsFrom } : {}),
      };
    case 'given-queen':
      return choice.queen ? { how: 'given-queen', queen: choice.queen } : { how: 'none' };
    case 'none':
      return { how: 'none' };
  }
}

export function headOfSource(plan: SplitPlan, registry: Registry): QueenId | undefined {
  const source = registry.colonies.get(plan.source);
  return source && tenureOn(source, plan.day)?.queen;
}

/** Whose eggs the cells are: as the keeper named, else those who laid in the box they hung in. */
function cellParentage(
  choice: Extract<PlanQueen, { how: 'given-cells' }>,
  plan: SplitPlan,
  registry: Registry,
): Parentage {
  if (choice.layer) return { dams: [{ queen: choice.layer, probability: 1 }], evidence: 'eggs-named' };
  return layers(registry, plan, choice.cellsFrom ?? plan.source, OLDEST_DAYS.cells);
}

function layers(registry: Registry, plan: SplitPlan, colony: ColonyId, oldest: number): Parentage {
  const dams = whoseEggs(registry, colony, plan.day, { youngest: 0, oldest });
  const evidence = dams.length === 1 ? 'eggs-named' : 'dam-in-colony';
  return { dams: [...dams], evidence };
}

/** What keeps the plan from being written, in words for the keeper; the rest is the registry's to check. */
export function missingInPlan(plan: SplitPlan, registry: Registry): readonly string[] {
  const missing: string[] = [];
  const labels = plan.parts.flatMap(({ box }) => (box.is === 'new' ? [box.label.trim()] : []));
  if (plan.parts.length < 2) missing.push('Add a part: a split has at least two.');
  if (labels.some((label) => label === '')) missing.push('Give every new box a label.');
  const given = labels.filter((label) => label !== '');
  if (new Set(given).size < given.length) missing.push('Two new boxes have the same label.');
  for (const part of plan.parts) {
    const choice = queenOf(plan, part);
    if (choice.how === 'given-queen' && !choice.queen) missing.push('Choose the queen that is given.');
    if (choice.how === 'given-cells' && cellParentage(choice, plan, registry).dams.length === 0) {
      missing.push('Say whose eggs the given cells come from: the box they hung in, or the queen.');
    }
  }
  return [...new Set(missing)];
}
