import type { Zoom } from './use-zoom.ts';
import styles from './ZoomButtons.module.css';

const STEP = 1.6;

/** Stretch, shrink, and back to the whole: for a thumb, a mouse and a keyboard alike. */
export function ZoomButtons({ zoom }: { readonly zoom: Zoom }) {
  return (
    <div class={styles.buttons}>
      <button type="button" aria-label="Stretch time" onClick={() => zoom.zoomBy(STEP)}>
        +
      </button>
      <button type="button" aria-label="Shrink time" onClick={() => zoom.zoomBy(1 / STEP)}>
        −
      </button>
      {!zoom.atRest && (
        <button type="button" onClick={zoom.whole}>
          Whole
        </button>
      )}
    </div>
  );
}
