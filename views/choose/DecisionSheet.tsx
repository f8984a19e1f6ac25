import { SUGGESTED_WEIGHTS } from '../../src/store/trait-weights.ts';
import { routes } from '../app/routes.ts';
import { Button } from '../parts/Button.tsx';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { dayText } from '../parts/days.ts';
import { PageHeader } from '../parts/PageHeader.tsx';
import { QueenName } from '../parts/QueenName.tsx';
import { TRAIT_TITLES } from '../parts/trait-words.ts';
import { number, sentence } from '../parts/words.ts';
import { daughtersAnswer } from './answers.ts';
import styles from './DecisionSheet.module.css';
import { evidenceOf, evidenceWords } from './evidence.ts';
import { LineOf } from './LineOf.tsx';
import { MeritAxis, MeritBar, MeritKey } from './MeritBar.tsx';
import { meritScale } from './merit-scale.ts';
import { linesKept, type Plan, type PlannedDam } from './plan.ts';
import type { Choice } from './use-choice.ts';
import { percents, planLead, rankingLead, reliabilityWords, someOf, whyWords } from './words.ts';
import { brothersWords } from './yard-risk.ts';

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

interface SheetRowProps {
  readonly dam: PlannedDam;
  readonly choice: Choice;
  readonly scale: ReturnType<typeof meritScale>;
}

function SheetRow({ dam: { row, daughters, flies }, choice, scale }: SheetRowProps) {
  return (
    <li class={styles.row}>
      <span class={styles.who}>
        <QueenName queen={row.queen} />
        {row.colony && <ColonyLabel colony={row.colony} />}
        <LineOf line={row.line} lines={choice.lines.lines} />
        <span class={styles.yard}>{row.yard && choice.yardName(row.yard)}</span>
      </span>
      <span class={styles.count}>
        <strong>{daughters}</strong>
        <span class={styles.boxes} aria-hidden="true">
          {Array.from({ length: Math.min(daughters, 12) }, (_, k) => (
            <i key={`box ${k + 1}`} />
          ))}
        </span>
      </span>
      <span class={styles.bar}>
        <MeritBar merit={row.merit} error={row.error} scale={scale} />
      </span>
      <span class={styles.why}>
        {whyWords(row.contributions)} {sentence(reliabilityWords(row.reliability))}:{' '}
        {evidenceWords(evidenceOf(choice.evaluated, row.id))}.
      </span>
      {flies && (
        <span class={styles.flies}>
          Fly at {choice.yardName(flies.risk.yard)}: brood {percents(flies.risk.broodInbreeding)} inbred,{' '}
          {brothersWords(flies.risk)}.
        </span>
      )}
    </li>
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
