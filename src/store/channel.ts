import type { EntryId } from '../journal/ids.ts';

/** What one tab tells the others. They read the data itself from the disk. */
export type TabMessage =
  | { readonly kind: 'wrote'; readonly entries: readonly EntryId[] }
  /** Settings or the keeper's identity changed. */
  | { readonly kind: 'device' }
  /** More than an addition: a wipe, or an import taken back. */
  | { readonly kind: 'reload' };

export interface Channel {
  readonly tell: (message: TabMessage) => void;
  readonly close: () => void;
}

/** Joins the tabs that have the same database open. Without BroadcastChannel each tab stands alone. */
export function joinTabs(name: string, hear: (message: TabMessage) => void): Channel {
  if (typeof BroadcastChannel === 'undefined') return { tell: () => undefined, close: () => undefined };
  const channel = new BroadcastChannel(name);
  channel.onmessage = (event: MessageEvent<TabMessage>) => hear(event.data);
  return {
    tell: (message) => channel.postMessage(message),
    close: () => channel.close(),
  };
}
