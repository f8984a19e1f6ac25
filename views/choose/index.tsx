import type { Evaluated } from '../../src/store/evaluation.ts';
import { useSearchValue } from '../app/location.ts';
import { routes } from '../app/routes.ts';
import { lastEvaluated, useEvaluation } from '../app/use-evaluation.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { Notice } from '../parts/Notice.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { Compare } from './Compare.tsx';
import { Decision } from './Decision.tsx';
import { DecisionSheet } from './DecisionSheet.tsx';
import { useChoice } from './use-choice.ts';
import { Waiting } from './Waiting.tsx';

/** Whom to split or graft from, how many daughters each, flown where; why her and not the other; how sure that is. */
export function Choose() {
  const state = useEvaluation();
  const evaluated = lastEvaluated(state);
  if (state.is === 'failed') {
    const { because, remedy, found } = state.problem;
    return (
      <>
        <PageHeader title="Choose" />
        <Notice tone="warn" title={because}>
          <p>
            Found: {found}. {remedy}
          </p>
        </Notice>
      </>
    );
  }
  if (!evaluated) return <Waiting fraction={state.is === 'running' ? state.fraction : 0} />;
  if (evaluated.answer.candidates.length === 0) {
    return (
      <>
        <PageHeader title="Choose" />
        <EmptyState action={{ label: 'To the yards', href: routes.yards() }}>
          The laying queens will stand here, ranked by what you want of them, as soon as one heads a colony.
        </EmptyState>
      </>
    );
  }
  return <Chosen evaluated={evaluated} underWay={state.is === 'running'} />;
}

/** One choice, shown as the screen, as two or three queens side by side, or as the sheet to take along. */
function Chosen({ evaluated, underWay }: { readonly evaluated: Evaluated; readonly underWay: boolean }) {
  const choice = useChoice(evaluated);
  const compared = useSearchValue('compare')?.split(',');
  const sheet = useSearchValue('sheet') !== undefined;
  if (compared) return <Compare choice={choice} queens={compared} />;
  return sheet ? <DecisionSheet choice={choice} /> : <Decision choice={choice} underWay={underWay} />;
}
