import { type Signal, useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { QueenId } from '../../src/journal/ids.ts';
import type { Registry } from '../../src/registry/state.ts';
import { useSearchValue } from '../app/location.ts';
import { goInstead, routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { type DroneSources, droneSources } from './drone-sources.ts';
import { type LineFacts, lineFacts } from './facts.ts';
import { type FamilyShown, familyOf } from './family.ts';
import { type Filtered, filterLives, type LinesFilter } from './filter.ts';
import { graphOf } from './graph-of.ts';
import { type Look, lookOf } from './look.ts';
import { aliveFirst, type WinterCount, winterCounts } from './summaries.ts';

export interface LinesFacts extends LineFacts {
  readonly filter: Signal<LinesFilter>;
  readonly left: Filtered;
  /** Lines left by the filter, from top to bottom of the drawing: those alive first. */
  readonly order: readonly QueenId[];
  /** Queens in and out of each winter, of those left by the filter. */
  readonly winters: ReadonlyMap<number, WinterCount>;
}

/** Everything the drawing is made of, from the records as they stood on the day shown. */
export function useLinesFacts(): LinesFacts {
  const registry = useRegistry();
  const on = useStore().on.value;
  const filter = useSignal<LinesFilter>({ living: false });
  const { lives, byId, lines } = lineFacts(registry, on);
  const left = useMemo(() => filterLives(lives, filter.value), [lives, filter.value]);
  const order = useMemo(() => {
    const here = new Set(left.lives.map(({ line }) => line));
    return aliveFirst(lines).flatMap(({ line }) => (here.has(line) ? [line] : []));
  }, [left, lines]);
  const winters = useMemo(
    () => new Map(winterCounts(registry, left.lives, on).map((each) => [each.spring, each])),
    [registry, left, on],
  );
  return { lives, byId, lines, filter, left, order, winters };
}

export interface LinesChoice {
  readonly chosen: QueenId | undefined;
  readonly shown: FamilyShown | undefined;
  readonly other: Signal<QueenId | undefined>;
  /** The next queen chosen is the one to compare with. */
  readonly comparing: Signal<boolean>;
  readonly dronesShown: Signal<boolean>;
  readonly met: DroneSources | undefined;
  readonly choose: (queen: QueenId | undefined) => void;
  readonly show: (shown: FamilyShown | undefined) => void;
}

/** Who is chosen, kept in the address so that a link or a way back finds her again. */
export function useLinesChoice(): LinesChoice {
  const registry = useRegistry();
  const asked = useSearchValue('focus') as QueenId | undefined;
  const her = asked && registry.queens.get(asked);
  const chosen = her?.id;
  const shown = familyShown(useSearchValue('show'));
  const other = useSignal<QueenId | undefined>(undefined);
  const comparing = useSignal(false);
  const dronesShown = useSignal(false);
  const look = (focus: QueenId | undefined, show: FamilyShown | undefined) =>
    goInstead(routes.lines(focus ? { focus, ...(show ? { show } : {}) } : {}));
  return {
    chosen,
    shown,
    other,
    comparing,
    dronesShown,
    met: her && droneSources(registry, her),
    choose: (queen) => {
      const compared = comparing.value && chosen !== undefined && queen !== undefined && queen !== chosen;
      other.value = compared ? queen : undefined;
      comparing.value = false;
      if (!compared) look(queen, shown);
    },
    show: (next) => look(chosen, next),
  };
}

function familyShown(text: string | undefined): FamilyShown | undefined {
  return text === 'ancestors' || text === 'descendants' || text === 'both' ? text : undefined;
}

/** Colours, words and emphasis of the drawing for the facts and the choice. */
export function useLook(facts: LinesFacts, choice: LinesChoice): Look {
  const registry = useRegistry();
  const drones = choice.dronesShown.value ? choice.met : undefined;
  return lookOf({
    lives: facts.byId,
    summaries: facts.lines,
    chosen: [choice.chosen, choice.other.value].filter((id) => id !== undefined),
    family: inFullInk(registry, facts, choice, drones),
    drones,
  });
}

/** Who stays in full ink: the kin asked for, else the mothers of the drones shown, else those the filter wants. */
function inFullInk(
  registry: Registry,
  facts: LinesFacts,
  { chosen, shown }: LinesChoice,
  drones: DroneSources | undefined,
): ReadonlySet<QueenId> | undefined {
  if (chosen && shown) return familyOf(graphOf(registry), chosen, shown);
  if (drones) return new Set([drones.queen, ...drones.mothers.map(({ queen }) => queen)]);
  return facts.left.wanted;
}
