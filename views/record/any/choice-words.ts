import {
  BEGINNINGS,
  CELL_REASONS,
  COMPASS,
  EVIDENCE,
  FEEDS,
  LOSS_CAUSES,
  MITE_METHODS,
  QUEEN_LOSSES,
  QUEEN_SEEN,
  sentence,
} from '../../parts/words.ts';

const KNOWN: Readonly<Record<string, string>> = {
  ...BEGINNINGS,
  ...CELL_REASONS,
  ...COMPASS,
  ...EVIDENCE,
  ...FEEDS,
  ...MITE_METHODS,
  ...QUEEN_LOSSES,
  ...LOSS_CAUSES,
  ...QUEEN_SEEN,
};

/** Words for a choice of a schema; one without words of its own is read as it is written. */
export function choiceWords(value: string): string {
  return sentence(KNOWN[value] ?? value.replaceAll('-', ' '));
}
