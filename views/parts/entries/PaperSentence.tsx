import { titleOfTaskUid } from '../../../graph/calendar/index.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import { assertNever } from '../../../src/journal/problems.ts';
import { isOfUnmarked } from '../../../src/registry/unmarked.ts';
import { count } from '../words.ts';
import { ofKinds } from './kinds.ts';

type PaperKinds = 'keeper-named' | 'note' | 'withdrawal' | 'task-settled';
export const isPaper = ofKinds<PaperKinds>('keeper-named', 'note', 'withdrawal', 'task-settled');

export function PaperSentence({ entry }: { readonly entry: EntryOf<PaperKinds> }) {
  switch (entry.kind) {
    case 'keeper-named':
      return <>The keeper is called {entry.name}.</>;
    case 'note':
      return <Note text={entry.text} />;
    case 'withdrawal':
      return (
        <>
          {count(entry.withdraws.length, 'entry', 'entries')} taken back
          {entry.reason && `: ${entry.reason}`}.
        </>
      );
    case 'task-settled':
      if (isOfUnmarked(entry.task)) return <>The unmarked queen is the one on record; she lost her mark.</>;
      return (
        <>
          {titleOfTaskUid(entry.task) ?? 'A task'}: {entry.how === 'done' ? 'done' : 'set aside'}.
        </>
      );
    default:
      return assertNever(entry);
  }
}

/** The keeper's words, line by line as they were written. */
function Note({ text }: { readonly text: string }) {
  const [first, ...rest] = text.split('\n');
  return (
    <>
      {first}
      {rest.map((line) => (
        <>
          <br />
          {line}
        </>
      ))}
    </>
  );
}
