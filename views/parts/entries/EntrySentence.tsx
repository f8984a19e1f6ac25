import type { Entry } from '../../../src/journal/entry.ts';
import { IncreaseSentence, isIncrease } from './IncreaseSentence.tsx';
import { isObservation, ObservationSentence } from './ObservationSentence.tsx';
import { isPaper, PaperSentence } from './PaperSentence.tsx';
import { isPlace, PlaceSentence } from './PlaceSentence.tsx';
import { QueenSentence } from './QueenSentence.tsx';

/** What an entry says, in a sentence, with the queens and boxes it names. */
export function EntrySentence({ entry }: { readonly entry: Entry }) {
  if (isObservation(entry)) return <ObservationSentence entry={entry} />;
  if (isIncrease(entry)) return <IncreaseSentence entry={entry} />;
  if (isPlace(entry)) return <PlaceSentence entry={entry} />;
  if (isPaper(entry)) return <PaperSentence entry={entry} />;
  return <QueenSentence entry={entry} />;
}
