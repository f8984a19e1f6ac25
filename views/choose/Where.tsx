import { useState } from 'preact/hooks';
import { Button } from '../parts/Button.tsx';
import { yardsInOrder } from '../parts/colony-facts.ts';
import { percents } from '../parts/percents.ts';
import { QueenName } from '../parts/QueenName.tsx';
import spoken from '../style/spoken.module.css';
import { Drones } from './Drones.tsx';
import type { Breeder } from './plan.ts';
import type { Choice } from './use-choice.ts';
import styles from './Where.module.css';
import { YardCell } from './YardCell.tsx';
import { bestYard, CLOSELY, yardRisks } from './yard-risk.ts';

/** Rows shown before the rest is asked for. */
const SHOWN = 12;

/** Do the yard's virgins meet their own brothers? Every queen in the choice by every yard. */
export function Where({ choice }: { readonly choice: Choice }) {
  const { evaluated, breeders, yards } = choice;
  const [all, setAll] = useState(false);
  const shown = all ? breeders : breeders.slice(0, SHOWN);
  const drawn = new Set(evaluated.work.yards.map(({ yard }) => yard));
  const columns = yardsInOrder(evaluated.registry)
    .filter(({ id }) => drawn.has(id))
    .sort((a, b) => Number(yards.has(b.id)) - Number(yards.has(a.id)));
  return (
    <div class={styles.parts}>
      <div class={styles.drawn}>
        <table class={styles.table}>
          <caption class={spoken.only}>
            Expected inbreeding of the brood of her daughters, by the yard they fly at
          </caption>
          <thead>
            <tr>
              <th scope="col">Daughters of</th>
              {columns.map(({ id, name }) => (
                <th key={id} scope="col">
                  {name}
                  {!yards.has(id) && <small> not yours</small>}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {shown.map((breeder) => (
              <YardRow key={breeder.row.id} breeder={breeder} choice={choice} columns={columns} />
            ))}
          </tbody>
        </table>
        {breeders.length > shown.length && (
          <Button look="quiet" onPress={() => setAll(true)}>
            Show all {breeders.length} queens
          </Button>
        )}
        <p class={styles.key}>
          Large: inbreeding of their brood, underlined from {percents(CLOSELY)}, where close kin meet. Lives:
          worker cells that do not stay empty through like sex alleles, with the span of nine in ten.
          Brothers: drones there that are sons of her own. The dot: the yard of yours where they meet least
          kin.
        </p>
      </div>
      <Drones choice={choice} columns={columns} />
    </div>
  );
}

interface YardRowProps {
  readonly breeder: Breeder;
  readonly choice: Choice;
  readonly columns: ReturnType<typeof yardsInOrder>;
}

function YardRow({ breeder: { row }, choice, columns }: YardRowProps) {
  const risks = yardRisks(choice.evaluated, row.place);
  const own = risks.filter(({ yard }) => choice.yards.has(yard));
  const best = own.length > 1 ? bestYard(own) : undefined;
  return (
    <tr>
      <th scope="row">
        <QueenName queen={row.queen} hideMark />
      </th>
      {columns.map(({ id, name }) => {
        const risk = risks.find(({ yard }) => yard === id);
        return (
          <td key={id}>
            <span class={styles.yard} aria-hidden="true">
              {name}
            </span>
            {risk ? <YardCell risk={risk} best={best?.any === false && best.risk.yard === id} /> : '–'}
          </td>
        );
      })}
    </tr>
  );
}
