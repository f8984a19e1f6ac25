import type { LineSummary } from '../lines/summaries.ts';
import { IntervalBar } from '../parts/IntervalBar.tsx';
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
        <IntervalBar
          label="Drawn towards its neighbours"
          value={100 * survival.mean}
          low={100 * survival.low}
          high={100 * survival.high}
          max={100}
          digits={0}
          unit="%"
          threshold={{ value: Math.round(100 * expectedShare), label: "Neighbours' share" }}
        />
      )}
    </>
  );
}
