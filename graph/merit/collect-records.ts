/**
 * From observations to the records of one trait: attributed to the queen whose workers made them, one figure a record,
 * and everything that cannot count set aside with its reason. Nothing is dropped in silence.
 *
 *   comparison group = yard x season (x what the trait says must be alike: method, hours)
 *   season traits: one record a queen's colony and season;  pair traits: first against last far enough apart
 *
 * Source: the protocols named in each trait; a record belongs to the queen whose workers made it, about 40 days after
 * she began to lay: Büchler et al. 2013, J. Apic. Res. 52(1), section 3.1.4 (read).
 * Cost: O(observations log observations). Unknowns: no queen, yard or day where one is needed sets aside.
 */
import { groupBy } from '../grouping.ts';
import { comparable, type GroupSummary } from './comparison-groups.ts';
import type { TraitObservation } from './observations.ts';
import type { SetAside, TraitRecord } from './trait-record.ts';
import { type Figure, isReason, type Reason, type Trait } from './traits/trait.ts';

export interface CollectedRecords {
  readonly records: readonly TraitRecord[];
  readonly setAside: readonly SetAside[];
  readonly groups: readonly GroupSummary[];
}

export interface CollectOptions {
  /** Why records of this queen cannot be used; absent or `undefined`: they can. */
  readonly refuses?: (queen: string) => Reason | undefined;
}

/** An observation that speaks of the trait, with the queen and the yard it counts for. */
interface Attributed<Content> {
  readonly observation: TraitObservation;
  readonly queen: string;
  readonly yard: string;
  readonly group: string;
  readonly content: Content;
}

const WORKERS_SENTENCES = {
  'changing-over':
    "The workers were still partly the previous queen's daughters (until about 40 days after the new one began to lay).",
  'nobody-known': 'Nobody knows whose daughters the workers were.',
  'day-not-exact': 'The day is not known exactly enough to say whose daughters the workers were.',
} as const;

function why(trait: Trait, observation: TraitObservation): Reason | undefined {
  if (observation.yard === undefined) {
    return {
      setAside: 'yard-unknown',
      sentence: 'Nobody knows at which yard it stood, so there is nothing to compare.',
    };
  }
  if (trait.needsDay && !observation.dayExact) {
    return {
      setAside: 'day-not-exact',
      sentence: 'Only the month or the year is known; this trait needs the day.',
    };
  }
  if (observation.workers.known) return undefined;
  const { because } = observation.workers;
  return { setAside: because, sentence: WORKERS_SENTENCES[because] };
}

/** What the trait takes from an observation; `undefined` when it does not speak of the trait. */
function contentOf(trait: Trait, observation: TraitObservation): Figure | number | true | Reason | undefined {
  if (trait.shape === 'each') return trait.figure(observation);
  if (trait.shape === 'season') return trait.score(observation);
  const usable = trait.usable(observation);
  return usable === false ? undefined : usable;
}

const byDay = (a: TraitObservation, b: TraitObservation) => a.day - b.day || (a.id < b.id ? -1 : 1);

/** The observations by day, ties by id; the very same array where it is so already. */
export function inOrder(observations: readonly TraitObservation[]): readonly TraitObservation[] {
  const ordered = observations.every((one, k) => k === 0 || byDay(observations[k - 1]!, one) < 0);
  return ordered ? observations : [...observations].sort(byDay);
}

/** The records of one trait and all that was set aside, in the order of days; groups by yard and season. */
export function collectRecords(
  trait: Trait,
  observations: readonly TraitObservation[],
  options: CollectOptions = {},
): CollectedRecords {
  const setAside: SetAside[] = [];
  const attributed: Attributed<Figure | number | true>[] = [];
  for (const observation of inOrder(observations)) {
    const content = contentOf(trait, observation);
    if (content === undefined) continue;
    const queen = observation.workers.known ? observation.workers.queen : undefined;
    const reason = isReason(content)
      ? content
      : (why(trait, observation) ?? (queen === undefined ? undefined : options.refuses?.(queen)));
    if (reason) setAside.push(asideOf(trait, [observation], reason, queen));
    else if (!isReason(content) && queen !== undefined) {
      const yard = observation.yard!;
      const alike = trait.alike?.(observation);
      const group = `${yard} / ${observation.season}${alike ? ` / ${alike}` : ''}`;
      attributed.push({ observation, queen, yard, group, content });
    }
  }
  const made = makeRecords(trait, attributed, setAside);
  const { kept, groups } = comparable(trait, made, setAside);
  return { records: kept, setAside, groups };
}

function asideOf(
  trait: Trait,
  observations: readonly TraitObservation[],
  { setAside: code, sentence }: Reason,
  queen: string | undefined,
): SetAside {
  const { colony, day, season } = observations.at(-1)!;
  const ids = observations.map(({ id }) => id);
  return {
    trait: trait.id,
    code,
    sentence,
    observations: ids,
    colony,
    day,
    season,
    ...(queen ? { queen } : {}),
  };
}

type AnyAttributed = Attributed<Figure | number | true>;

function record(
  trait: Trait,
  parts: readonly AnyAttributed[],
  figure: Figure,
  belowProtocol = false,
): TraitRecord {
  const { queen, group, yard, observation } = parts.at(-1)!;
  const { colony, season, day } = observation;
  const observations = parts.map((part) => part.observation.id);
  const { value, samplingVariance } = figure;
  const { id } = trait;
  return {
    trait: id,
    queen,
    group,
    value,
    samplingVariance,
    colony,
    yard,
    season,
    day,
    observations,
    belowProtocol,
  };
}

function makeRecords(
  trait: Trait,
  attributed: readonly AnyAttributed[],
  setAside: SetAside[],
): TraitRecord[] {
  if (trait.shape === 'each') return attributed.map((part) => record(trait, [part], part.content as Figure));
  const seasons = groupBy(
    attributed,
    ({ queen, observation, group }) => `${queen} / ${observation.colony} / ${group}`,
  );
  return [...seasons.values()].flatMap((parts) => {
    if (trait.shape === 'season') {
      const figure = trait.combine(parts.map(({ content }) => content as number));
      return [record(trait, parts, figure, parts.length < trait.protocolEvaluations)];
    }
    const [least, most] = trait.daysApart;
    const first = parts[0]!;
    const days = (part: AnyAttributed) => part.observation.day - first.observation.day;
    const last = parts.findLast((part) => days(part) >= least && days(part) <= most);
    const figure = last && trait.join(first.observation, last.observation, days(last));
    if (!last || figure === undefined) return [];
    if (!isReason(figure)) return [record(trait, [first, last], figure)];
    setAside.push(asideOf(trait, [first.observation, last.observation], figure, first.queen));
    return [];
  });
}
