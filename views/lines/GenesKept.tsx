import { useEffect } from 'preact/hooks';
import type { Evaluated } from '../../src/store/evaluation.ts';
import { Progress } from '../parts/Progress.tsx';
import { useAskedTask } from '../parts/use-task.ts';
import styles from './Breadth.module.css';
import { genesKeptWork, genesLead, genesRows } from './genes-kept.ts';

/** How many sex alleles and founder genes were carried into each winter, and are left: played through the records. */
export function GenesKept({ evaluated }: { readonly evaluated: Evaluated }) {
  const { ask, answer, of, busy, fraction, problem } = useAskedTask('genes-kept');
  // Asked anew only when the records are.
  useEffect(() => ask(genesKeptWork(evaluated)), [evaluated]);
  if (problem) return <p>What genes are left could not be worked out. Found: {problem}.</p>;
  if (!answer || !of) return busy ? <Progress fraction={fraction} label="Genes played down" /> : null;
  const rows = genesRows(of, answer);
  return (
    <>
      <p>{genesLead(rows)}</p>
      <table class={styles.genes}>
        <caption>Carried into each winter</caption>
        <thead>
          <tr>
            <th scope="col">Winter</th>
            <th scope="col">Queens</th>
            <th scope="col">Sex alleles</th>
            <th scope="col">Founder genes</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ when, queens, sex, founders }) => (
            <tr key={when}>
              <th scope="row">{when}</th>
              <td>{queens}</td>
              <td>{sex}</td>
              <td>{founders}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        Genes dealt down the recorded descent many times over; in brackets what nine in ten come to. A queen
        carries two of each, so a line that hangs on one queen has two left of all it had; drones stored in
        her are not counted. Bees nobody recorded are taken to have {of.sexAlleles} sex alleles, as in
        Settings, and otherwise no two genes alike.
      </p>
    </>
  );
}
