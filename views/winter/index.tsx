import { PageHeader } from '../parts/PageHeader.tsx';

export function Winters() {
  return <PageHeader title="Winters" />;
}
