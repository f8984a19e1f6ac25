import { PageHeader } from '../parts/PageHeader.tsx';
import { Progress } from '../parts/Progress.tsx';

/** The first evaluation is under way. The rest of the app goes on working meanwhile. */
export function Waiting({ fraction }: { readonly fraction: number }) {
  return (
    <>
      <PageHeader title="Choose" lead="Breeding values are being worked out from all records." />
      <Progress fraction={fraction} label="Breeding values" />
    </>
  );
}
