import { Button } from '../parts/Button.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { routes } from './routes.ts';

/** No screen stands at this address. */
export function NotFound() {
  return (
    <PageHeader
      title="Nothing stands at this address"
      lead="The link may be an old one, or mistyped. Your records are untouched."
      actions={<Button href={routes.yards()}>To the yards</Button>}
    />
  );
}
