import { winterYears } from '../../journal/day-words.ts';
import type { PlannedBox } from './boxes.ts';
import type { PlannedQueen } from './cast.ts';
import type { InspectionField, ReadRow } from './row.ts';
import type { MiteSample } from './values/mites.ts';
import { lostWords } from './values/outcome.ts';

const WORDS: Readonly<Record<InspectionField, string>> = {
  gentle: 'gentle',
  calm: 'calm',
  swarmTendency: 'swarm tendency',
  framesOfBees: 'frames of bees',
  framesOfBrood: 'frames of brood',
  framesOfStores: 'frames of stores',
  broodPattern: 'brood pattern',
};

/** What is taken from a row, in one line: "Birch of 2021, daughter of Alder, in Box 3; winter 2021/22 alive". */
export function summaryOf(
  row: ReadRow,
  queen: PlannedQueen | undefined,
  box: PlannedBox | undefined,
): string {
  const records = [
    ...row.winters.map(
      ({ winter, outcome }) => `winter ${winterYears(winter)} ${outcome.is === 'dead' ? 'lost' : 'alive'}`,
    ),
    ...row.inspections.map(({ day, field, value }) => `${WORDS[field]} ${value} (${day})`),
    ...row.mites.map(({ day, sample }) => `${sampleWords(sample)} (${day})`),
    ...row.harvests.map(({ day, kilograms }) => `${kilograms} kg of honey (${day})`),
    ...lossWords(row),
    ...(row.notes.length > 0 ? ['a note'] : []),
  ];
  return [subject(queen, box), ...records].join('; ');
}

/** "3 mites on 300 bees", "1 mite in 2 days". */
export function sampleWords(sample: MiteSample): string {
  const mites = `${sample.mites} ${sample.mites === 1 ? 'mite' : 'mites'}`;
  if (sample.method !== 'natural-drop') return `${mites} on ${sample.bees} bees`;
  return sample.days === 1 ? `${mites} in a day` : `${mites} in ${sample.days} days`;
}

function subject(queen: PlannedQueen | undefined, box: PlannedBox | undefined): string {
  if (!queen) return box ? `${boxWords(box)}${box.known ? '' : ', a new box'}` : 'Nothing';
  const year = queen.year === undefined ? '' : ` of ${queen.year}`;
  const known = queen.known ? ', on record' : '';
  const dams = queen.dams.map((dam) => {
    const named = dam.queen.rows.length === 0 && !dam.queen.known ? 'known by name only' : '';
    const share = dam.probability < 1 ? `${Math.round(dam.probability * 100)} %` : '';
    const about = [share, named].filter(Boolean).join(', ');
    return `${dam.queen.name ?? 'a queen without a name'}${about === '' ? '' : ` (${about})`}`;
  });
  const from = dams.length > 0 ? `, daughter of ${dams.join(' or ')}` : '';
  const place = box ? `, in ${boxWords(box)}` : '';
  return `${queen.name ?? 'A queen without a name'}${year}${known}${from}${place}`;
}

/** A label that is a mere number says that it is one of a box. */
function boxWords({ label }: PlannedBox): string {
  return /^\d/.test(label) ? `box ${label}` : label;
}

function lossWords({ outcome, ended }: ReadRow): readonly string[] {
  if (!outcome || outcome.is === 'alive' || !ended) return [];
  if (outcome.is === 'joined') return [`joined (${ended})`];
  return [outcome.is === 'dead' ? `lost (${ended})` : `queen ${lostWords(outcome.cause)} (${ended})`];
}
