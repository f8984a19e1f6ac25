import { routes } from '../app/routes.ts';
import { Button } from '../parts/Button.tsx';
import { useWidth } from '../parts/use-width.ts';
import { herTraits } from '../queen/her-traits.ts';
import styles from './CandidateDetail.module.css';
import { HeadLineOf } from './HeadLineOf.tsx';
import { isTakenIn } from './plan.ts';
import type { Candidate, Ranking } from './ranking.ts';
import { TraitLine } from './TraitLine.tsx';
import { traitStandings } from './trait-standing.ts';
import type { Choice } from './use-choice.ts';
import { chanceWords } from './words.ts';

const UNRANKED =
  'She is not ranked: no record of hers stands in a comparison group of five queens or more. What is drawn rests on ' +
  'her kin and on small groups, where luck outweighs the bees.';

export interface CandidateDetailProps {
  readonly row: Candidate;
  readonly choice: Choice;
}

/** A score opened: how sure, trait by trait with the records behind it, and what can be done with her. */
export function CandidateDetail({ row, choice }: CandidateDetailProps) {
  const { evaluated, ranking, choosing } = choice;
  const { box, width } = useWidth();
  const standings = traitStandings(evaluated, row);
  const hers = herTraits(evaluated.registry, row.id);
  const [first] = ranking.rows;
  const taken = isTakenIn(row, choosing);
  const take = () => choice.setChoosing({ takenIn: { ...choosing.takenIn, [row.id]: !taken } });
  return (
    <div class={styles.detail} ref={box}>
      <HeadLineOf row={row} choice={choice} />
      <p>{sureWords(row, ranking)}</p>
      <ul class={styles.traits}>
        {standings.map((standing) => (
          <TraitLine
            key={standing.trait.id}
            standing={standing}
            hers={hers.find(({ trait }) => trait === standing.trait.id)}
            width={width}
          />
        ))}
      </ul>
      <div class={styles.actions}>
        {row.colony && row.mine && <Button href={routes.split(row.colony)}>Split her colony</Button>}
        {row.colony && row.mine && (
          <Button href={routes.recordAny('graft', { colony: row.colony, queen: row.id })}>
            Graft from her
          </Button>
        )}
        {first && first.id !== row.id && (
          <Button look="quiet" href={routes.choose({ compare: [first.id, row.id] })}>
            Beside {choice.nameOf(first.id)}
          </Button>
        )}
        <Button look="quiet" href={routes.queen(row.id)}>
          Her page
        </Button>
        <Button look="quiet" onPress={take}>
          {taken ? 'Leave her out of the choice' : 'Take her into the choice'}
        </Button>
      </div>
    </div>
  );
}

function sureWords(row: Candidate, { best, rows, amongBest }: Ranking): string {
  const { standing, firstAbove } = row;
  if (standing === 'unranked') return UNRANKED;
  const place = `The chance that she is truly among the best ${best} of ${rows.length} is ${chanceWords(amongBest(row))}`;
  if (standing === 'first') return `${place}.`;
  return `${place}; that the first of the list is truly better than her, ${chanceWords(firstAbove)}.`;
}
