import { useMemo } from 'preact/hooks';
import type { PlainDay } from '../../../src/journal/day.ts';
import { dayText } from '../../../src/journal/day-words.ts';
import type { Queen } from '../../../src/registry/state.ts';
import { useRegistry, useStore } from '../../app/store-context.ts';
import { MarkDot } from '../../parts/MarkDot.tsx';
import { PlainNames } from '../../parts/plain-names.ts';
import { QueenName } from '../../parts/QueenName.tsx';
import { sentence } from '../../parts/words.ts';
import { countsSentence, daughterCounts } from '../../queen/daughter-counts.ts';
import { damLineWords } from '../../queen/family-lives.ts';
import styles from './Card.module.css';
import { CardDrawing } from './CardDrawing.tsx';
import { CardRecords } from './CardRecords.tsx';
import { type CardFacts, cardFacts } from './card-facts.ts';

export interface PedigreeCardProps {
  readonly queen: Queen;
  readonly withTraits: boolean;
  readonly hideYards: boolean;
  /** Who tells it, where it is not the keeper at the screen. */
  readonly teller?: string;
}

/** A page to show over the fence or to hand over with her: where she comes from, how sure that is, how her bees do. */
export function PedigreeCard({ queen, withTraits, hideYards, ...told }: PedigreeCardProps) {
  const registry = useRegistry();
  const { keeper, on } = useStore();
  const facts = useMemo(
    () => cardFacts(registry, queen, { on: on.value, hideYards }),
    [registry, queen, on.value, hideYards],
  );
  const teller = told.teller ?? keeper.value.name;
  const line = facts.lives.filter(({ dam }) => dam !== queen.id);
  return (
    <PlainNames.Provider value={true}>
      <article class={styles.card} aria-label={`Pedigree card of ${facts.title}`}>
        <header class={styles.head}>
          <p class={styles.kind}>Pedigree</p>
          <h3 class={styles.name}>
            {facts.title}
            {queen.mark && <MarkDot colour={queen.mark.colour} number={queen.mark.number} />}
          </h3>
          <p>{facts.about}</p>
          <p class={styles.strong}>{facts.winters}</p>
        </header>
        <CardDrawing facts={facts} on={on.value} words={damLineWords(line)} />
        <Dams facts={facts} />
        <DaughterWords facts={facts} on={on.value} />
        {withTraits && <CardRecords queen={queen} hideYards={hideYards} />}
        <p class={styles.foot}>
          {teller ? `Told by ${teller}, ` : ''}
          {dayText(on.value)}. A knot is a winter crossed; a broken line is a dam who is only probable.
        </p>
      </article>
    </PlainNames.Provider>
  );
}

function Dams({ facts: { dams, damsLeftOut, beyond, whole } }: { readonly facts: CardFacts }) {
  return (
    <section class={styles.part}>
      <h4>Her dams</h4>
      {dams.length > 0 && (
        <table>
          <thead>
            <tr>
              <th scope="col">Out of</th>
              <th scope="col">Emerged</th>
              <th scope="col">Winters crossed</th>
              <th scope="col">How sure</th>
            </tr>
          </thead>
          <tbody>
            {dams.map(({ id, born, winters, sure }, at) => (
              <tr key={id}>
                <td>
                  <QueenName queen={id} hideMark />
                  {damsLeftOut > 0 && at === dams.length / 2 && (
                    <small class={styles.between}>after {damsLeftOut} more between</small>
                  )}
                </td>
                <td>{born}</td>
                <td>{winters}</td>
                <td>{sure}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p>
        {beyond} {whole}
      </p>
    </section>
  );
}

function DaughterWords({ facts: { daughters }, on }: { readonly facts: CardFacts; readonly on: PlainDay }) {
  const registry = useRegistry();
  if (daughters.length === 0) return null;
  const counts = daughterCounts(registry, daughters, on);
  const { wintersWentIn: into, wintersCameOut: out } = counts;
  return (
    <section class={styles.part}>
      <h4>Her daughters</h4>
      <p>
        {sentence(countsSentence(counts))}
        {counts.probable > 0 && ` Of ${counts.probable} she is only probably the dam.`}
        {into > 0 &&
          ` Of ${into} ${into === 1 ? 'winter' : 'winters'} they went into, they came out of ${out}.`}
      </p>
    </section>
  );
}
