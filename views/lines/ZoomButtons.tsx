import type { Zoom } from './use-zoom.ts';
import styles from './ZoomButtons.module.css';

const STEP = 1.6;

/** Larger, smaller, and, where there is room for its words, all of it: for a thumb, a mouse and a keyboard alike. */
export function ZoomButtons({ zoom, whole }: { readonly zoom: Zoom; readonly whole?: string | undefined }) {
  return (
    <div class={styles.buttons}>
      <button type="button" aria-label="Larger" onClick={() => zoom.zoomBy(STEP)}>
        +
      </button>
      <button type="button" aria-label="Smaller" onClick={() => zoom.zoomBy(1 / STEP)}>
        −
      </button>
      {whole && !zoom.isWhole && (
        <button type="button" class={styles.all} onClick={zoom.whole}>
          {whole}
        </button>
      )}
    </div>
  );
}
