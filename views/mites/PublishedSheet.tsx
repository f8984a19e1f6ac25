import { newEntryId } from '../../src/journal/new-ids.ts';
import { useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { MITE_METHODS, number } from '../parts/words.ts';
import styles from './PublishedSheet.module.css';
import { isTaken, PUBLISHED_THRESHOLDS, type PublishedThreshold, taken } from './published-thresholds.ts';

/** Published thresholds with their source. Taking one makes it the keeper's; until then it means nothing here. */
export function PublishedSheet({ onClose }: { readonly onClose: () => void }) {
  const store = useStore();
  const { miteThresholds } = store.settings.value;
  const take = (published: PublishedThreshold) =>
    store.changeSettings({ miteThresholds: [...miteThresholds, taken(published, newEntryId())] });
  return (
    <Sheet title="Published thresholds" onClose={onClose}>
      <p>
        They differ between countries, seasons and plans, and change with the years. Ask your bee inspector or
        club which holds where you are. Where a range is named, the lower end is taken; change it as you see
        fit.
      </p>
      <ul class={styles.offers}>
        {PUBLISHED_THRESHOLDS.map((published) => {
          const mine = isTaken(published, miteThresholds);
          const key = `${published.jurisdiction} ${published.when} ${published.source}`;
          return (
            <li key={key}>
              <p>
                <strong>{valueWords(published)}</strong> {MITE_METHODS[published.method].toLowerCase()},{' '}
                {published.when}
                <span>
                  {published.jurisdiction}. Source: {published.source}; {BASIS[published.basis]}.
                </span>
              </p>
              <Button
                disabled={mine}
                label={`Take ${valueWords(published)}, ${published.jurisdiction}, ${published.when}`}
                onPress={() => take(published)}
              >
                {mine ? 'Taken' : 'Take it'}
              </Button>
            </li>
          );
        })}
      </ul>
    </Sheet>
  );
}

const BASIS: Readonly<Record<PublishedThreshold['basis'], string>> = {
  read: 'read',
  'read at second hand': 'read at second hand',
  'from memory': 'from memory, look it up before you go by it',
};

function valueWords({ value, upTo, method }: PublishedThreshold): string {
  const range = upTo === undefined ? number(value) : `${number(value)} to ${number(upTo)}`;
  return method === 'natural-drop' ? `${range} a day` : `${range} %`;
}
