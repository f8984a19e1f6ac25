import { colonyOfQueen, queenTitle, yardOn } from '../../src/registry/queries.ts';
import type { Queen } from '../../src/registry/state.ts';
import { wintersCrossed } from '../../src/registry/winters-of-queen.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { lineFacts } from '../lines/facts.ts';
import { LineMark } from '../lines/LineMark.tsx';
import { wintersText } from '../lines/words.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { dayInYear } from '../parts/days.ts';
import { MarkDot } from '../parts/MarkDot.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { bornText, endText } from '../parts/queen-words.ts';
import { UnmarkedAsk } from '../parts/UnmarkedAsk.tsx';
import { sentence } from '../parts/words.ts';
import { NameAsk } from './NameAsk.tsx';
import styles from './QueenHeader.module.css';

/** Her name, her mark, her line, and how she stands in one sentence. */
export function QueenHeader({ queen }: { readonly queen: Queen }) {
  const registry = useRegistry();
  const { on } = useStore();
  const { byId, lines } = lineFacts(registry, on.value);
  const line = lines.find((each) => each.line === byId.get(queen.id)?.line);
  const born = bornText(queen, on.value);
  const colony = colonyOfQueen(registry, queen, on.value);
  const winters = wintersCrossed(queen, on.value);
  return (
    <>
      <PageHeader
        above={{ label: 'Lines', href: routes.lines({ focus: queen.id }) }}
        title={
          <span class={styles.title}>
            <i class={queen.name ? styles.name : styles.unnamed}>{sentence(queenTitle(queen))}</i>
            {queen.mark && <MarkDot colour={queen.mark.colour} number={queen.mark.number} />}
            {line && <LineMark letter={line.letter} hue={line.hue} />}
          </span>
        }
        lead={
          <>
            <State queen={queen} />
            {born && ` ${sentence(born)}.`}
            {winters.length > 0 && ` Crossed ${wintersText(winters)}.`}
          </>
        }
      />
      {colony && <UnmarkedAsk colony={colony} />}
      {!queen.name && queen.state.is !== 'failed' && <NameAsk queen={queen} />}
    </>
  );
}

/** "Heads H3 at Sallow Bank." and its like. */
function State({ queen }: { readonly queen: Queen }) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const { state } = queen;
  const end = endText(queen);
  if (end) return <>{`${sentence(end)}.`}</>;
  if (state.is === 'expected') {
    return (
      <>
        Awaited
        {queen.expectedIn && (
          <>
            {' '}
            in <ColonyLabel colony={queen.expectedIn} />
          </>
        )}{' '}
        since {dayInYear(state.since, on)}; nobody has seen her lay yet.
      </>
    );
  }
  const colony = colonyOfQueen(registry, queen, on);
  if (!colony) return <>Where she is now is not known.</>;
  const yard = yardOn(colony, on);
  const place = yard && registry.yards.get(yard)?.name;
  return (
    <>
      Heads <ColonyLabel colony={colony} />
      {place && ` at ${place}`}.
    </>
  );
}
