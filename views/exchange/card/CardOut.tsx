import { plainWord } from '../../../src/exchange/journal-file/index.ts';
import { pedigreePage } from '../../../src/exchange/pedigree/index.ts';
import { queenTitle } from '../../../src/registry/queries.ts';
import { useRegistry, useStore } from '../../app/store-context.ts';
import { Button } from '../../parts/Button.tsx';
import { saveFile } from '../../parts/save-file.ts';
import { useToday } from '../../parts/use-today.ts';
import styles from '../out/Out.module.css';
import type { PedigreeOutProps } from '../out/PedigreeOut.tsx';
import { NameAsk } from '../out/SaveFile.tsx';
import { PedigreeCard } from './PedigreeCard.tsx';

/** The card as it will be printed, and the same in plain text for a message. */
export function CardOut({ queen, options, children }: PedigreeOutProps) {
  const registry = useRegistry();
  const by = useStore().keeper.value.name;
  const on = useToday();
  const saveText = () => {
    const most = options.withTraits ? {} : { mostRecords: 0 };
    const text = pedigreePage(registry, queen.id, {
      on,
      hideYards: options.hideYards,
      ...(by ? { by } : {}),
      ...most,
    });
    saveFile(text, `queen-${plainWord(queenTitle(queen))}-${on}.txt`, 'text/plain');
  };
  return (
    <>
      <PedigreeCard queen={queen} {...options} />
      {children}
      <NameAsk />
      <div class={styles.buttons}>
        <Button look="main" size="hive" onPress={() => window.print()}>
          Print the card
        </Button>
        <Button size="hive" onPress={saveText}>
          Save it as plain text
        </Button>
      </div>
    </>
  );
}
