import { useMemo } from 'preact/hooks';
import type { Queen } from '../../../src/registry/state.ts';
import { useRegistry } from '../../app/store-context.ts';
import { TRAIT_TITLES, traitFigures } from '../../parts/trait-words.ts';
import { sentence } from '../../parts/words.ts';
import { type ComparisonGroup, groupWords, herTraits, inLetters } from '../../queen/her-traits.ts';
import styles from './Card.module.css';

/** What her colonies did in the latest season of each trait, beside the queens of the same yard and season. */
export function CardRecords({ queen, hideYards }: { readonly queen: Queen; readonly hideYards: boolean }) {
  const registry = useRegistry();
  const traits = useMemo(() => herTraits(registry, queen.id), [registry, queen.id]);
  const rows = traits.flatMap(({ trait, groups }) => {
    const group = groups.find(({ small }) => !small) ?? groups[0];
    if (!group) return [];
    const own = group.members.filter(({ hers }) => hers).map(({ value }) => value);
    return [{ trait, group, hers: traitFigures(trait, own, group.alike) }];
  });
  if (rows.length === 0) return null;
  const few = [...new Set(rows.flatMap(({ group }) => (group.small ? [coloniesIn(group)] : [])))]
    .sort((a, b) => a - b)
    .map(inLetters);
  return (
    <section class={styles.part}>
      <h4>What her colonies did</h4>
      <table>
        <tbody>
          {rows.map(({ trait, group, hers }) => (
            <tr key={trait}>
              <th scope="row">{TRAIT_TITLES[trait]}</th>
              <td>{hers}</td>
              <td class={styles.beside}>
                {group.small ? `one of ${coloniesIn(group)}` : groupWords(trait, group)}, {group.season}
                {!hideYards && `, ${group.yard}`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class={styles.beside}>
        Beside the colonies of the same yard and season.
        {few.length > 0 && ` ${sentence(few.join(' or '))} colonies: too few to tell the line from luck.`}
      </p>
    </section>
  );
}

function coloniesIn({ members }: ComparisonGroup): number {
  return new Set(members.map(({ colony }) => colony)).size;
}
