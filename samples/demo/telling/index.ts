import type { Story } from '../story.ts';
import * as increase from './increase.ts';
import * as looks from './looks.ts';
import * as mites from './mites.ts';
import * as places from './places.ts';
import * as queens from './queens.ts';

export { noQueen, oldQueen, part, raises } from './increase.ts';
export { above } from './mites.ts';
export { FORMIC, OXALIC, THYMOL, WITH_EGGS, WITHOUT_EGGS } from './usual.ts';

type Bound<Verbs> = {
  readonly [Name in keyof Verbs as Verbs[Name] extends (story: Story, ...rest: never[]) => unknown
    ? Name
    : never]: Verbs[Name] extends (story: Story, ...rest: infer Rest) => infer Result
    ? (...rest: Rest) => Result
    : never;
};

function bind<Verbs extends Record<string, unknown>>(verbs: Verbs, story: Story): Bound<Verbs> {
  const bound = Object.entries(verbs).flatMap(([name, verb]) =>
    typeof verb === 'function' ? [[name, (...rest: unknown[]) => verb(story, ...rest)] as const] : [],
  );
  return Object.fromEntries(bound) as Bound<Verbs>;
}

const VERBS = { ...places, ...queens, ...looks, ...mites };
const { split, splitOff, cellsGiven, eggsGiven, graft, framesMoved } = increase;

/** Everything that the scripts can say, bound to one story. */
export function tellingOf(story: Story) {
  const verbs = bind({ ...VERBS, split, splitOff, cellsGiven, eggsGiven, graft, framesMoved }, story);
  return {
    ...verbs,
    on: story.book.on,
    write: story.book.write,
    hive: (label: string) => story.hives.get(label),
  };
}

export type Telling = ReturnType<typeof tellingOf>;
