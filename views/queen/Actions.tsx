import { useState } from 'preact/hooks';
import { colonyOfQueen } from '../../src/registry/queries.ts';
import type { Queen } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { GiveAwaySheet } from './GiveAwaySheet.tsx';
import { MarkSheet } from './MarkSheet.tsx';
import { NameSheet } from './NameSheet.tsx';
import { ParentageSheet } from './ParentageSheet.tsx';
import queenStyles from './Queen.module.css';

type Act = 'name' | 'mark' | 'parentage' | 'give';

/** What can be done for and with a queen. */
export function Actions({ queen }: { readonly queen: Queen }) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const [open, setOpen] = useState<Act>();
  const close = () => setOpen(undefined);
  const colony = colonyOfQueen(registry, queen, on);
  const here = queen.state.is === 'laying' || queen.state.is === 'expected';
  const press = (act: Act, label: string) => (
    <li>
      <Button look="quiet" onPress={() => setOpen(act)}>
        {label}
      </Button>
    </li>
  );
  const link = (href: string, label: string) => (
    <li>
      <Button look="quiet" href={href}>
        {label}
      </Button>
    </li>
  );
  return (
    <section class={`${queenStyles.section} ${queenStyles.actions}`} aria-labelledby="actions">
      <h2 id="actions">What can be done</h2>
      <ul>
        {colony && link(routes.split(colony.id), 'Split her colony')}
        {colony && link(routes.carry(colony.id), 'Carry her eggs or cells')}
        {colony && link(routes.recordAny('graft', { colony: colony.id, queen: queen.id }), 'Graft from her')}
        {queen.state.is === 'unknown' &&
          registry.colonies.size > 0 &&
          link(routes.recordAny('queen-moved', { queen: queen.id }), 'Put her into a colony')}
        {press('name', queen.name ? 'Give another name' : 'Name her')}
        {here && press('mark', queen.mark ? 'Mark her anew' : 'Mark her')}
        {press('parentage', 'State her dam')}
        {link(routes.recordAny('mating', { queen: queen.id }), 'State whom she mated with')}
        {here && press('give', 'Give her away')}
        {link(routes.exchange({ queen: queen.id }), 'Hand out her pedigree')}
      </ul>
      {open === 'name' && <NameSheet queen={queen} onClose={close} />}
      {open === 'mark' && <MarkSheet queen={queen} onClose={close} />}
      {open === 'parentage' && <ParentageSheet queen={queen} onClose={close} />}
      {open === 'give' && <GiveAwaySheet queen={queen} onClose={close} />}
    </section>
  );
}
