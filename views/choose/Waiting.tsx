import { PageHeader } from '../parts/PageHeader.tsx';
import styles from './Waiting.module.css';

/** The first evaluation is under way. The rest of the app goes on working meanwhile. */
export function Waiting({ fraction }: { readonly fraction: number }) {
  return (
    <>
      <PageHeader title="Choose" lead="Breeding values are being worked out from all records." />
      <Progress fraction={fraction} label="Breeding values" />
    </>
  );
}

/** How far some work has come. */
export function Progress({ fraction, label }: { readonly fraction: number; readonly label: string }) {
  return (
    <progress class={styles.progress} max="1" value={fraction} aria-label={label}>
      {Math.round(100 * fraction)} %
    </progress>
  );
}
