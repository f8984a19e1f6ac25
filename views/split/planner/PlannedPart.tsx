import {
  type CombFrame,
  contentOf,
  sideDm2,
  sumContent,
  weaknessText,
} from '../../../graph/increase/index.ts';
import { list, number } from '../../parts/words.ts';
import { Comb } from './Comb.tsx';
import type { JudgedPart } from './deal.ts';
import styles from './PlannedPart.module.css';
import type { SketchFrame } from './sketch.ts';
import { WeekBars } from './WeekBars.tsx';
import { frameWords } from './words.ts';

export interface PlannedPartProps {
  readonly title: string;
  readonly judged: JudgedPart;
  /** All frames of the hive, by id, with their place in it. */
  readonly frames: ReadonlyMap<string, { readonly sketch: SketchFrame; readonly place: number }>;
  readonly all: readonly CombFrame[];
  readonly most: number;
  readonly storesKnown: boolean;
  readonly onMove: (frame: string) => void;
}

/** One part of the planned split: what goes into it, what it will have, and where it is weak. */
export function PlannedPart({ title, judged, frames, all, most, storesKnown, onMove }: PlannedPartProps) {
  const { part, forecast, weak } = judged;
  return (
    <section class={styles.part} aria-label={title}>
      <h3>{title}</h3>
      <p class={styles.role}>{ROLE[part.queen]}</p>
      <div class={styles.frames}>
        {part.frames.map((comb) => {
          const frame = frames.get(comb.id);
          if (!frame) return null;
          return (
            <button
              key={comb.id}
              type="button"
              class={styles.frame}
              aria-label={`${frameWords(frame.sketch, frame.place)}. Put it into the next part`}
              onClick={() => onMove(comb.id)}
            >
              <Comb frame={frame.sketch} sideDm2={sideDm2(comb.size)} />
            </button>
          );
        })}
      </div>
      {sums(judged) && <p class={styles.sums}>{sums(judged)}</p>}
      <WeekBars forecast={forecast} frames={all} most={most} />
      {storesKnown && forecast.storesLast !== undefined && (
        <p class={styles.sums}>Its stores last about {forecast.storesLast} days if nothing comes in.</p>
      )}
      {weak.map((each) => (
        <p key={each.code} class={styles.weak}>
          {weaknessText(each)}
        </p>
      ))}
    </section>
  );
}

const ROLE = {
  'old-queen': 'Has the old queen; she lays on.',
  raises: 'Raises a daughter of hers, who lays in about four weeks.',
  given: 'Is given a queen.',
} as const;

/** Frames of brood and stores in the part, and whose bees are shaken over. */
function sums({ part }: JudgedPart): string {
  const { storesKg } = sumContent(part.frames.map((frame) => contentOf(frame, 'likely')));
  const brood = part.frames.filter(({ openBrood, cappedBrood }) => openBrood + cappedBrood > 0).length;
  const shakenIn = (part.shakenFrom ?? []).reduce((sum, { bees }) => sum + bees, 0);
  const shakenOff = (part.shakenOff ?? []).length;
  const said = [
    `${part.frames.length} ${part.frames.length === 1 ? 'frame' : 'frames'}, ${brood} with brood`,
    storesKg >= 0.5 ? `about ${number(Math.round(storesKg))} kg of stores` : '',
    shakenIn > 0 ? `bees of ${number(Math.round(2 * shakenIn) / 2)} more frames shaken in` : '',
    shakenOff > 0 ? `bees of ${shakenOff} shaken off into another` : '',
  ].filter((text) => text !== '');
  return `${list(said)}.`;
}
