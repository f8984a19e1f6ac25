import type { PlannedBox } from './boxes.ts';
import type { PlannedQueen } from './cast.ts';
import type { InspectionField, ReadRow } from './row.ts';

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
      ({ winter, outcome }) =>
        `winter ${winter - 1}/${String(winter).slice(2)} ${outcome.is === 'dead' ? 'lost' : 'alive'}`,
    ),
    ...row.inspections.map(({ day, field, value }) => `${WORDS[field]} ${value} (${day})`),
    ...row.mites.map(({ day, sample }) =>
      sample.method === 'natural-drop'
        ? `${sample.mites} mites in ${sample.days} days (${day})`
        : `${sample.mites} ${sample.mites === 1 ? 'mite' : 'mites'} on ${sample.bees} bees (${day})`,
    ),
    ...row.harvests.map(({ day, kilograms }) => `${kilograms} kg of honey (${day})`),
    ...lossWords(row),
    ...(row.notes.length > 0 ? ['a note'] : []),
  ];
  return [subject(queen, box), ...records].join('; ');
}

function subject(queen: PlannedQueen | undefined, box: PlannedBox | undefined): string {
  if (!queen) return box ? `${boxWords(box)}${box.known ? '' : ', a new box'}` : 'Nothing';
  const year = queen.year === undefined ? '' : ` of ${queen.year}`;
  const known = queen.known ? ', on record' : '';
  const dams = queen.dams.map((dam) => {
    const sure = dam.probability < 1 ? ` (${Math.round(dam.probability * 100)} %)` : '';
    return `${dam.queen.name ?? 'a queen without a name'}${sure}`;
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
  return [
    outcome.is === 'dead' ? `lost (${ended})` : `queen ${outcome.cause.replaceAll('-', ' ')} (${ended})`,
  ];
}
