import { useState } from 'preact/hooks';
import type { QueenId } from '../../src/journal/ids.ts';
import { go, routes } from '../app/routes.ts';
import { Button } from '../parts/Button.tsx';
import { CheckList } from '../parts/CheckList.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import type { Choice } from './use-choice.ts';

const MOST = 3;

/** Choosing the two or three queens to stand side by side. */
export function CompareSheet({ choice, onClose }: { readonly choice: Choice; readonly onClose: () => void }) {
  const { rows } = choice.ranking;
  const [queens, setQueens] = useState<readonly QueenId[]>(rows.slice(0, 2).map(({ id }) => id));
  return (
    <Sheet title="Compare two or three" onClose={onClose}>
      <CheckList
        label="Queens"
        options={rows.map(({ id }) => ({ value: id, label: choice.nameOf(id) }))}
        value={queens}
        onChange={(chosen) => setQueens(chosen.slice(-MOST))}
        hint="A fourth takes the place of the first chosen."
      />
      <Button
        look="main"
        disabled={queens.length < 2}
        onPress={() => {
          onClose();
          go(routes.choose({ compare: queens }));
        }}
      >
        Side by side
      </Button>
    </Sheet>
  );
}
