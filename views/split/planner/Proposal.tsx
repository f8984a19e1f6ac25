import { useMemo } from 'preact/hooks';
import type { CombFrame } from '../../../graph/increase/comb.ts';
import { Button } from '../../parts/Button.tsx';
import { list } from '../../parts/words.ts';
import { Assumptions } from './Assumptions.tsx';
import { type Deal, type JudgedPart, judged, moveOn } from './deal.ts';
import { PlannedPart } from './PlannedPart.tsx';
import styles from './Planner.module.css';
import type { Sketch } from './sketch.ts';

export interface ProposalProps {
  readonly deal: Deal;
  readonly sketch: Sketch;
  readonly frames: readonly CombFrame[];
  /** Label of the source. */
  readonly source: string;
  /** False where nobody looked at the stores, and none are drawn. */
  readonly storesKnown: boolean;
  readonly onDeal: (deal: Deal) => void;
  readonly onLay: () => void;
}

/** The partition, part by part: a tap moves a frame on; one more lays it all on the bench. */
export function Proposal({ deal, sketch, frames, source, storesKnown, onDeal, onLay }: ProposalProps) {
  const parts = useMemo(() => judged(deal, frames, storesKnown), [deal, frames, storesKnown]);
  const most = Math.max(...parts.flatMap(({ forecast }) => forecast.weeks.map(({ bees }) => bees.high)));
  const byId = new Map(
    sketch.boxes.flatMap(({ frames: box }) =>
      box.map((frame, at) => [frame.id, { sketch: frame, place: at + 1 }]),
    ),
  );
  const move = (id: string) =>
    onDeal(
      moveOn(
        deal,
        frames.findIndex((frame) => frame.id === id),
      ),
    );
  const found = frames.some(({ queen }) => queen);
  return (
    <section class={styles.proposal} aria-labelledby="proposal">
      <h2 id="proposal">The parts</h2>
      <p class={styles.verdict}>{verdictWords(parts, source)}</p>
      {!storesKnown && (
        <p>What there is to eat is not known: draw the stores on the frames, or see to it on the day.</p>
      )}
      {!found && (
        <p>
          On which frame the queen is, nobody has said: on the day, find her first, and put the frame she is
          on into the part that is hers.
        </p>
      )}
      <div class={styles.parts}>
        {parts.map((part, at) => (
          <PlannedPart
            key={at}
            title={titleOf(part, at, source)}
            judged={part}
            frames={byId}
            all={frames}
            most={most}
            storesKnown={storesKnown}
            onMove={move}
          />
        ))}
      </div>
      <p class={styles.quiet}>
        Bar: the range that the assumptions allow; stroke: the likely figure. A tap on a frame puts it into
        the next part.
      </p>
      <Assumptions />
      <div class={styles.work}>
        <Button look="main" size="hive" onPress={onLay}>
          Lay it on the bench
        </Button>
        <p>There it can be changed still; nothing is written until you confirm it.</p>
      </div>
    </section>
  );
}

/** Which parts risk being too weak, in a sentence. */
function verdictWords(parts: readonly JudgedPart[], source: string): string {
  const weak = parts.flatMap((part, at) => (part.weak.length > 0 ? [titleOf(part, at, source)] : []));
  if (weak.length === 0) return 'By these figures no part is too weak.';
  if (weak.length === parts.length)
    return 'Every part is weak by these figures: the colony is small for so many.';
  return `Weak by these figures: ${list(weak)}. The reason stands in the part.`;
}

function titleOf({ part }: JudgedPart, at: number, source: string): string {
  if (at === 0) return `${source}, on the old stand`;
  return part.queen === 'old-queen' ? 'Nucleus with the old queen' : `Part ${at + 1}`;
}
