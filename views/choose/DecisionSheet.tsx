import { dayText } from '../../src/journal/day-words.ts';
import { SUGGESTED_WEIGHTS } from '../../src/store/trait-weights.ts';
import { routes } from '../app/routes.ts';
import { Button } from '../parts/Button.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { TRAIT_TITLES } from '../parts/trait-words.ts';
import { number } from '../parts/words.ts';
import { daughtersAnswer } from './answers.ts';
import styles from './DecisionSheet.module.css';
import { MeritAxis, MeritKey } from './MeritBar.tsx';
import { meritScale } from './merit-scale.ts';
import { linesKept, type Plan } from './plan.ts';
import { SheetRow } from './SheetRow.tsx';
import type { Choice } from './use-choice.ts';
import { planLead, rankingLead, someOf } from './words.ts';

/** What was decided, on one page to take along: whom, how many, where, why, and what it rests on. */
export function DecisionSheet({ choice }: { readonly choice: Choice }) {
  const { plan, evaluated, ranking } = choice;
  if (!plan) return <NoPlan choice={choice} />;
  const dams = plan.dams.map(({ row, daughters }) => ({ name: choice.nameOf(row.id), daughters }));
  const scale = meritScale(plan.dams.map(({ row }) => row));
  return (
    <article class={styles.sheet}>
      <PageHeader
        title={`Daughters to raise, ${dayText(evaluated.on)}`}
        above={{ label: 'Choose', href: routes.choose() }}
        lead={planLead(dams)}
        actions={
          <Button look="main" onPress={() => window.print()}>
            Print
          </Button>
        }
      />
      <div class={styles.axis}>
        <MeritAxis scale={scale} />
      </div>
      <ol>
        {plan.dams.map((dam) => (
          <SheetRow key={dam.row.id} dam={dam} choice={choice} scale={scale} />
        ))}
      </ol>
      <MeritKey />
      <p>{rankingLead(ranking, ({ id }) => choice.nameOf(id))}</p>
      <p>{lostWords(choice, plan)}</p>
      <p class={styles.small}>
        Weights: {weightsWords(choice)}. Brood inbreeding by the drones said or assumed for each yard, with{' '}
        {evaluated.work.effectiveMates} effective mates and {evaluated.work.sexAlleles} sex alleles in the
        unrecorded bees.
      </p>
      <p class={styles.small}>
        Stings can kill: keep your medicine and somebody within call. Look for brood disease before anything
        leaves a yard; moving bees may need a certificate.
      </p>
      <div class={styles.notes} aria-hidden="true">
        Notes
      </div>
    </article>
  );
}

/** Nothing to take along yet, and why. */
function NoPlan({ choice: { ranking, curve } }: { readonly choice: Choice }) {
  const remedy = curve?.is === 'impossible' ? ` ${curve.why.remedy}` : '';
  return (
    <PageHeader
      title="Daughters to raise"
      above={{ label: 'Choose', href: routes.choose() }}
      lead={daughtersAnswer(ranking, undefined, curve) + remedy}
    />
  );
}

function lostWords(choice: Choice, plan: Plan): string {
  const kept = linesKept(choice.ranking, plan);
  const title = (line: (typeof kept)[number]['line']) =>
    choice.lines.lines.find((each) => each.line === line)?.title ?? choice.nameOf(line);
  const without = kept.filter(({ daughters }) => daughters === 0).map(({ line }) => title(line));
  if (without.length === 0) return 'Every living line gets a daughter.';
  return `Without a daughter: ${without.length === 1 ? 'the line' : 'the lines'} of ${someOf(without, 5)}.`;
}

function weightsWords({ weights }: Choice): string {
  return Object.keys(SUGGESTED_WEIGHTS)
    .map((trait) => trait as keyof typeof SUGGESTED_WEIGHTS)
    .filter((trait) => (weights[trait] ?? 0) > 0)
    .map((trait) => `${TRAIT_TITLES[trait].toLowerCase()} ${number(weights[trait] ?? 0)}`)
    .join(', ');
}
