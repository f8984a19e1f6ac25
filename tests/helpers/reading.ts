import { workersOf } from '../../src/registry/attribution.ts';
import { project } from '../../src/registry/project.ts';
import { headOn } from '../../src/registry/queries.ts';
import type { Contradiction, Queen, Registry } from '../../src/registry/state.ts';
import { day, rough, type Story } from './story.ts';

/** What the records of a story say, read by the names that the story uses. */
export interface Reading {
  readonly registry: Registry;
  /** Contradictions that nobody overruled. */
  readonly contradictions: readonly Contradiction[];
  /** Their codes. */
  readonly codes: readonly string[];
  /** Name of the queen who heads a box on a day. */
  readonly head: (label: string, on: string) => string | undefined;
  readonly queen: (name: string) => Queen;
  /** How a queen stands, with the cause where she is lost. */
  readonly state: (name: string) => string;
  /** Names of the queens on their way in a box. */
  readonly expected: (label: string) => readonly string[];
  /** Name of the queen whose daughters the workers are, or why that is not known. */
  readonly workers: (label: string, on: string) => string;
  /** Possible dams by name with their probabilities, rounded to hundredths. */
  readonly dams: (name: string) => Readonly<Record<string, number>>;
}

/** Reads a story, all of it or until a day. Queens are told by the names given in `names`. */
export function reading(story: Story, names: readonly string[], until?: string): Reading {
  const registry = project(story.journal(), until ? { until: day(until) } : {});
  const nameOf = (id: string | undefined) => names.find((name) => story.queen(name) === id);
  const colony = (label: string) => {
    const found = registry.colonies.get(story.colony(label));
    if (!found) throw new Error(`No colony ${label}.`);
    return found;
  };
  const queen = (name: string) => {
    const found = registry.queens.get(story.queen(name));
    if (!found) throw new Error(`No queen ${name}.`);
    return found;
  };
  const contradictions = registry.contradictions.filter(({ overruled }) => overruled === undefined);
  return {
    registry,
    contradictions,
    codes: contradictions.map(({ code }) => code),
    head: (label, on) => nameOf(headOn(registry, colony(label), day(on))?.id),
    queen,
    state: (name) => {
      const { state } = queen(name);
      return 'cause' in state ? `${state.is}: ${state.cause}` : state.is;
    },
    expected: (label) => colony(label).expected.map((id) => nameOf(id) ?? 'another'),
    workers: (label, on) => {
      const answer = workersOf(registry, story.colony(label), rough(on));
      return answer.known ? (nameOf(answer.queen) ?? 'another') : answer.because;
    },
    dams: (name) =>
      Object.fromEntries(
        (queen(name).parentage?.dams ?? []).map((dam) => [
          nameOf(dam.queen) ?? 'another',
          Math.round(dam.probability * 100) / 100,
        ]),
      ),
  };
}
