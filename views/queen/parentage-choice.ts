import type { Evidence, Parentage } from '../../src/journal/entry-parts.ts';
import type { QueenId } from '../../src/journal/ids.ts';

/** How sure a keeper is of a dam, in words to choose from, and the probability each stands for. */
export type Sureness = 'certain' | 'very-likely' | 'likely' | 'even';

const PROBABILITY: Readonly<Record<Sureness, number>> = {
  certain: 1,
  'very-likely': 0.9,
  likely: 0.7,
  even: 0.5,
};

export const SURENESS: readonly {
  readonly value: Sureness;
  readonly label: string;
  readonly hint: string;
}[] = [
  { value: 'certain', label: 'Certain', hint: '100 %' },
  { value: 'very-likely', label: 'Very likely', hint: '90 %' },
  { value: 'likely', label: 'Likely', hint: '70 %' },
  { value: 'even', label: 'Could be', hint: '50 %' },
];

/** The words nearest to a probability; undefined when no dam was named. */
export function surenessOf(probability: number | undefined): Sureness | undefined {
  if (probability === undefined || probability <= 0) return undefined;
  const words = Object.keys(PROBABILITY) as Sureness[];
  return words.reduce((best, each) =>
    Math.abs(PROBABILITY[each] - probability) < Math.abs(PROBABILITY[best] - probability) ? each : best,
  );
}

export interface ParentageChoice {
  readonly dam: QueenId | undefined;
  /** Whom the rest of the probability goes to; absent: a queen not on record. */
  readonly other: QueenId | undefined;
  readonly sure: Sureness | undefined;
  /** The probability on record, kept where the keeper left dam and sureness as they were. */
  readonly recorded?: number | undefined;
  readonly evidence: Evidence;
}

/** The parentage that a choice stands for; without a dam it is unknown. */
export function parentageFor({ dam, other, sure, recorded, evidence }: ParentageChoice): Parentage {
  if (!dam || !sure) return { dams: [], evidence };
  const probability = surenessOf(recorded) === sure && recorded !== undefined ? recorded : PROBABILITY[sure];
  const rest = Math.round((1 - probability) * 100) / 100;
  return {
    dams: [{ queen: dam, probability }, ...(other && rest > 0 ? [{ queen: other, probability: rest }] : [])],
    evidence,
  };
}
