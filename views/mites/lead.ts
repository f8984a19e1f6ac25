import { count, list } from '../parts/words.ts';
import { type CountSaid, sideOf } from './counts.ts';
import type { Surveyed } from './survey.ts';

type Counted = Surveyed & { readonly last: CountSaid };

/** The mites of all colonies in two sentences: who is above a threshold as far as can be told, and who is due. */
export function leadWords(counted: readonly Counted[], notCounted: number, hasThresholds: boolean): string {
  const due = counted.filter((each) => each.due?.overdue).length;
  const sentences = [
    hasThresholds
      ? aboveWords(counted)
      : 'Set the thresholds you go by, and each count is drawn beside them.',
    due > 0 ? `${count(due, 'colony is', 'colonies are')} overdue for a count.` : '',
    notCounted > 0 ? `${count(notCounted, 'colony has', 'colonies have')} no count this season.` : '',
  ];
  return sentences.filter(Boolean).join(' ');
}

function aboveWords(counted: readonly Counted[]): string {
  const above = counted.filter((each) => isOn(each, 'above'));
  const found = counted.filter((each) => !isOn(each, 'above') && isOn(each, 'found-above'));
  const beside = counted.filter(({ last }) => last.thresholds.length > 0).length;
  if (beside === 0) return 'No threshold of yours holds for the months and ways of the last counts.';
  if (above.length > 0)
    return `Above your threshold as far as the counts can tell: ${labels(above)}.${
      found.length > 0 ? ` Found above it, but not for certain: ${labels(found)}.` : ''
    }`;
  if (found.length > 0) return `Found above your threshold, but not for certain: ${labels(found)}.`;
  return 'No count was found above your threshold.';
}

function isOn({ last }: Counted, side: ReturnType<typeof sideOf>): boolean {
  return last.thresholds.some(({ value }) => sideOf(last.figure, value) === side);
}

function labels(counted: readonly Counted[]): string {
  return list(counted.map(({ colony }) => colony.label));
}
