import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import { journalFileName } from '../../../src/exchange/journal-file/index.ts';
import { type PedigreeOptions, pedigreeEntries } from '../../../src/exchange/pedigree/index.ts';
import { queenTitle } from '../../../src/registry/queries.ts';
import type { Queen } from '../../../src/registry/state.ts';
import { useStore } from '../../app/store-context.ts';
import { list } from '../../parts/words.ts';
import { Line, Manifest } from '../Manifest.tsx';
import { manifestOf, yardsToldIn } from '../manifest.ts';
import { estimateBytes, journalFile } from './files.ts';
import styles from './Out.module.css';
import { ReadEntries } from './ReadEntries.tsx';
import { NameAsk, SaveFile } from './SaveFile.tsx';

export interface PedigreeOutProps {
  readonly queen: Queen;
  readonly options: PedigreeOptions;
  /** The ticks by which the options are changed. */
  readonly children: ComponentChildren;
}

/** A queen and her ancestors as a file for another keeper's records. */
export function PedigreeOut({ queen, options: { withTraits, hideYards }, children }: PedigreeOutProps) {
  const store = useStore();
  const registry = store.registry.value;
  const keeper = store.keeper.value;
  // The same entries are listed and saved: their ids are made here.
  const entries = useMemo(() => {
    const scribe = { keeper: keeper.id, now: () => new Date(), newId: store.newId };
    return pedigreeEntries(registry, queen.id, scribe, { withTraits, hideYards });
  }, [registry, queen.id, withTraits, hideYards, keeper.id, keeper.name]);
  // Notes bear the day on which they are told; the days of the queens are those of the other entries.
  const facts = useMemo(() => {
    const told = manifestOf(
      entries.filter(({ kind }) => kind !== 'note'),
      registry,
    );
    return { ...told, entries: entries.length, words: 0 };
  }, [entries, registry]);
  const yards = hideYards ? [] : yardsToldIn(entries, registry);
  const title = queenTitle(queen);
  const scope = { of: 'queen', queen: queen.id, name: title } as const;
  const exported = new Date().toISOString();
  const make = () => journalFile({ exported, by: keeper, scope, entries, photos: [] });
  return (
    <>
      <p class={styles.note}>
        For the records of the keeper who gets her or her daughters: what is written of her there later can
        come back to you as a file.
      </p>
      <Manifest facts={facts}>
        <Line title="Of each queen">
          her possible dams and how sure they are, when she emerged, how she was made and mated, the winters
          she crossed, her mark, what became of her
          {withTraits && ', and the records of her colonies as a note'}
        </Line>
        {yards.length > 0 && <Line title="Yards">{list(yards)}</Line>}
        <Line title="Stays here">
          sisters and daughters, boxes, splits, photographs
          {yards.length === 0 && ', the names of yards'}
          {!withTraits && ', what her colonies did'}
        </Line>
      </Manifest>
      {children}
      <ReadEntries entries={entries} />
      <NameAsk />
      <SaveFile name={journalFileName({ scope, exported })} bytes={estimateBytes(entries)} make={make} />
    </>
  );
}
