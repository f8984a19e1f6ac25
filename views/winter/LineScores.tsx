import type { LineSummary } from '../lines/summaries.ts';
import { ShareInterval } from '../parts/ShareInterval.tsx';
import { scoreWords } from './words.ts';

/** How far a line can be told from luck: in words, and its share drawn towards that of its neighbours. */
export function LineScores({ line }: { readonly line: LineSummary }) {
  const { score } = line;
  if (!score) return null;
  const { survival, expectedShare = 0 } = score;
  return (
    <>
      <p>{scoreWords(score)}</p>
      {survival && (
        <ShareInterval
          label="Drawn towards its neighbours"
          share={survival}
          beside={{ share: expectedShare, label: "Neighbours' share" }}
        />
      )}
    </>
  );
}
