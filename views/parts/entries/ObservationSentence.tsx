import { dayText } from '../../../src/journal/day-words.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import { assertNever } from '../../../src/journal/problems.ts';
import { count, FEEDS, LOSS_CAUSES, number, sentence, winterText } from '../words.ts';
import { inspectionWords } from './inspection-words.ts';
import { ofKinds } from './kinds.ts';
import { miteWords } from './mite-words.ts';

export const isObservation = ofKinds(
  'inspection',
  'mite-count',
  'treatment',
  'treatment-ended',
  'winter-outcome',
  'hygienic-test',
  'harvest',
  'feeding',
);
type Observation = EntryOf<
  | 'inspection'
  | 'mite-count'
  | 'treatment'
  | 'treatment-ended'
  | 'winter-outcome'
  | 'hygienic-test'
  | 'harvest'
  | 'feeding'
>;

export function ObservationSentence({ entry }: { readonly entry: Observation }) {
  switch (entry.kind) {
    case 'inspection':
      return <>{inspectionWords(entry) || 'Looked in; nothing written down.'}</>;
    case 'mite-count':
      return <>{miteWords(entry.sample)}</>;
    case 'treatment':
      return <TreatmentSentence entry={entry} />;
    case 'treatment-ended':
      return <>Treatment taken out.</>;
    case 'winter-outcome':
      return <>{winterWords(entry)}</>;
    case 'hygienic-test':
      return (
        <>
          {entry.cells - entry.notCleared} of {entry.cells} cells cleared in {count(entry.hours, 'hour')}, by
          the {entry.method} test.
        </>
      );
    case 'harvest':
      return <>{number(entry.kilograms)} kg of honey taken.</>;
    case 'feeding':
      return (
        <>{sentence(FEEDS[entry.feed]) + (entry.kilograms ? `, ${number(entry.kilograms)} kg` : '')} fed.</>
      );
    default:
      return assertNever(entry);
  }
}

function TreatmentSentence({ entry }: { readonly entry: EntryOf<'treatment'> }) {
  return (
    <>
      {sentence(entry.active)}
      {entry.manner && `, ${entry.manner.charAt(0).toLowerCase()}${entry.manner.slice(1)}`}
      {entry.end && `, until ${dayText(entry.end)}`}
      {entry.honeyWaitDays !== undefined && `, ${count(entry.honeyWaitDays, 'day')} wait before honey`}
      {entry.against && `, against ${entry.against}`}
      {entry.colonies.length > 1 && `; in ${count(entry.colonies.length, 'colony', 'colonies')} together`}.
    </>
  );
}

function winterWords(entry: EntryOf<'winter-outcome'>): string {
  const { autumnFramesOfBees: autumn, springFramesOfBees: spring } = entry;
  const strength = [
    autumn !== undefined && `${count(autumn, 'frame')} of bees in autumn`,
    spring !== undefined && `${count(spring, 'frame')} in spring`,
  ].filter(Boolean);
  const tail = strength.length > 0 ? `: ${strength.join(', ')}.` : '.';
  if (entry.alive) return `Came through ${winterText(entry.winter)}${tail}`;
  return `Lost in ${winterText(entry.winter)}${entry.cause ? `, ${LOSS_CAUSES[entry.cause]}` : ''}${tail}`;
}
