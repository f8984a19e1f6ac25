import { Unfold } from '../parts/Unfold.tsx';
import styles from './TraitLine.module.css';
import { type TraitStanding, variancesWords } from './trait-standing.ts';

/** Formula and source of a trait's values, on opening. */
export function TraitMethod({ standing }: { readonly standing: TraitStanding }) {
  const { trait, evaluation } = standing;
  const { worker, queen, covariance, permanent, residual } = evaluation.variances;
  const figure = (value: number) => String(Number(value.toPrecision(2))).replace('-', '−');
  return (
    <Unfold class={styles.method} title="How it is worked out">
      <p>
        {trait.method} Unit: {trait.unit}. Protocol: {trait.protocol}.
      </p>
      <p>
        <code>
          record = group + workers’ part of her worker group + her own queen part + lasting part of her colony
          + rest
        </code>
      </p>
      <p>
        The group (yard and season) is taken out; her workers’ part is half hers and half the drones’ she met.
        Her value as a breeder is the worker part plus the queen part, both predicted with all records of all
        her kin (best linear unbiased prediction: Henderson 1984, from memory; two effects in bees: Bienefeld,
        Ehrhardt &amp; Reinhardt 2007, Apidologie 38:77, abstract read).
      </p>
      <p>{variancesWords(evaluation, trait)}</p>
      <p>
        Variances in squared units: workers {figure(worker)}, queens {figure(queen)}, between them{' '}
        {figure(covariance)}, lasting {figure(permanent)}, rest {figure(residual)}; spread of breeding values{' '}
        {figure(evaluation.sigma)}.
      </p>
    </Unfold>
  );
}
