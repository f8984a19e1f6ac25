/**
 * The address of every screen. Addresses live in the hash, so that the app opens from a file, a folder or an
 * installed page alike. Nothing else in the views spells an address out.
 */

/** What can be recorded at a colony; `record` without one offers all of them. */
export type RecordKind =
  | 'inspection'
  | 'mites'
  | 'treatment'
  | 'queen'
  | 'winter'
  | 'feeding'
  | 'harvest'
  | 'hygienic'
  | 'note'
  | 'other';

export interface LinesLook {
  /** A queen to stand in the middle. */
  readonly focus?: string;
  /** Her ancestors, her descendants, or both. */
  readonly show?: 'ancestors' | 'descendants' | 'both';
}

export interface ExchangeLook {
  /** The queen whose pedigree is to be handed out. */
  readonly queen?: string;
  /** What is coming in, read and not yet taken in. */
  readonly incoming?: 'open';
}

export interface CarryLook {
  /** The colony that the frame is for, and the kind of frame: it lies in that box already. */
  readonly into?: string;
  readonly frame?: string;
}

export type WintersShown = 'outcome' | 'lines' | 'ready';

export interface ChooseLook {
  /** Queens to stand side by side. */
  readonly compare?: readonly string[];
  /** The page to take along: what was decided, on one sheet. */
  readonly sheet?: boolean;
}

export const routes = {
  rounds: () => '#/rounds',
  yards: () => '#/yards',
  yard: (yard: string) => `#/yards/${yard}`,
  colony: (colony: string) => `#/colony/${colony}`,
  queen: (queen: string) => `#/queen/${queen}`,
  lines: (look: LinesLook = {}) => `#/lines${query({ focus: look.focus, show: look.show })}`,
  choose: ({ compare, sheet }: ChooseLook = {}) =>
    `#/choose${query({ compare: compare?.join(), sheet: sheet ? 'yes' : undefined })}`,
  exchange: (look: ExchangeLook = {}) => `#/exchange${query({ queen: look.queen, incoming: look.incoming })}`,
  split: (colony: string) => `#/split/${colony}`,
  /** Choosing the colony to split first. */
  splitFirst: () => '#/split',
  /** A split planned before it is done. */
  planSplit: (colony: string) => `#/split/${colony}?plan=first`,
  /** Frames carried from a colony to others: cells, eggs, brood, stores. */
  carry: (colony: string, { into, frame }: CarryLook = {}) => `#/carry/${colony}${query({ into, frame })}`,
  /** Choosing the colony to record at. */
  recordWhere: () => '#/record',
  record: (colony: string, kind?: RecordKind) => `#/record/${colony}${kind ? `/${kind}` : ''}`,
  /** Any kind of entry, by its schema; `about` is the colony or queen it starts from. */
  recordAny: (kind?: string, about: { readonly colony?: string; readonly queen?: string } = {}) =>
    `#/entry${kind ? `/${kind}` : ''}${query(about)}`,
  /** One entry: read, correct, take back. */
  entry: (entry: string) => `#/history/${entry}`,
  /** The winter outcome of a whole yard in one list. */
  winterWalk: (yard: string) => `#/winter/${yard}`,
  /** Who came through winter; lines over winters; getting ready for the next. */
  winters: (show?: WintersShown) => `#/winters${query({ show })}`,
  /** Counts, treatments and thresholds across colonies. */
  mites: () => '#/mites',
  settings: () => '#/settings',
} as const;

/** Opens an address made by `routes`. */
export function go(href: string): void {
  window.location.hash = href;
}

/** Opens an address in the place of the one that is open: the way back leads past it. */
export function goInstead(href: string): void {
  window.history.replaceState(window.history.state, '', href);
  window.dispatchEvent(new HashChangeEvent('hashchange'));
}

function query(parts: Readonly<Record<string, string | undefined>>): string {
  const known = Object.entries(parts).filter((part): part is [string, string] => part[1] !== undefined);
  return known.length === 0 ? '' : `?${new URLSearchParams(known).toString()}`;
}
