import type { EntryOf } from '../../../journal/entry.ts';

export type MiteSample = EntryOf<'mite-count'>['sample'];

export type ReadMites =
  | { readonly is: 'count'; readonly sample: MiteSample; readonly methodSaid: boolean }
  /** A count of a sample of which nobody says how large it was. */
  | { readonly is: 'sample-unsaid'; readonly because: string; readonly remedy: string }
  | { readonly is: 'unreadable'; readonly because: string; readonly remedy: string };

/** What the words over the column say of every count in it. */
export interface MiteHeader {
  readonly method?: MiteSample['method'];
  /** Bees in each sample, from "mites per 300". */
  readonly bees?: number;
  /** Days of each drop, from "drop per day". */
  readonly days?: number;
}

export function miteHeader(header: string): MiteHeader {
  const words = header.toLowerCase();
  const method = /sugar|puder|shake|roll/.test(words)
    ? 'sugar-shake'
    : /drop|fall\b|milbenfall|per day|\/day|pro tag|board/.test(words)
      ? 'natural-drop'
      : /wash|alcohol|auswasch/.test(words)
        ? 'wash'
        : undefined;
  const bees =
    /(?:per|\/|of|in|je|auf|pro)\s*(\d{2,4})\b/.exec(words)?.[1] ?? /\b(\d{3})\s*bees\b/.exec(words)?.[1];
  const days = /(?:per|\/|pro|a)\s*(?:day|tag|d\b)|daily|täglich/.test(words)
    ? '1'
    : /(\d{1,2})\s*(?:days|tage)/.exec(words)?.[1];
  return {
    ...(method ? { method } : {}),
    ...(bees && !days ? { bees: Number(bees) } : {}),
    ...(days ? { days: Number(days) } : {}),
  };
}

const BEES = /^(\d{1,4})\s*(?:\/|:|of|in|per|aus|von|auf|sur|de)\s*(\d{2,4})\s*(?:bees|bienen)?$/i;
const DAYS =
  /^(\d{1,5})\s*(?:\/|in|over|per)\s*(\d{1,2})\s*(?:d|days?|tagen?|tage|jours|dny|dní|dni|dage|dager|dagar|dygn|vrk)\.?$/i;
const PER_DAY = /^(\d{1,5})\s*(?:\/|per|a|pro)\s*(?:d|day|tag|jour)\.?$/i;
const PERCENT = /^[<>~]?\s*(\d+(?:[.,]\d+)?)\s*%$/;

/**
 * Reads a mite count. A bare percentage or number says nothing of the sample: it is a count only where the words over
 * the column, or the keeper, say of how many bees.
 */
export function readMites(text: string, header: MiteHeader): ReadMites {
  const trimmed = text
    .trim()
    .replace(/^(wash|sugar|shake|mites?|varroa|milben)\s*[:=]?\s*/i, '')
    .replace(/\s*(mites?|milben)\s*$/i, '');
  const words = text.toLowerCase();
  const said = /wash/.test(words) ? 'wash' : /sugar|shake|puder/.test(words) ? 'sugar-shake' : header.method;
  const days = DAYS.exec(trimmed);
  if (days?.[1] && days[2]) return drop(Number(days[1]), Number(days[2]));
  const daily = PER_DAY.exec(trimmed);
  if (daily?.[1]) return drop(Number(daily[1]), 1);
  const bees = BEES.exec(trimmed.replace(/mites?\s+(?=\/|of|in|per)/i, ''));
  if (bees?.[1] && bees[2]) return sampled(Number(bees[1]), Number(bees[2]), said);
  const percent = PERCENT.exec(trimmed)?.[1]?.replace(',', '.');
  if (percent !== undefined) {
    if (header.bees !== undefined)
      return sampled(Math.round((Number(percent) * header.bees) / 100), header.bees, said);
    return unsaid('A percentage says nothing of the number of bees, and so not how sure it is.');
  }
  const alone = /^\d{1,5}$/.exec(trimmed)?.[0];
  if (alone === undefined) return noSample('This is no count of mites.');
  if (header.bees !== undefined) return sampled(Number(alone), header.bees, said);
  if (header.days !== undefined) return drop(Number(alone), header.days);
  return unsaid('A number alone says neither how many bees there were nor how many days.');
}

function unsaid(because: string): ReadMites {
  const { remedy } = noSample(because);
  return { is: 'sample-unsaid', because, remedy: `Say above how many bees a sample was. Or: ${remedy}` };
}

function noSample(because: string): Extract<ReadMites, { is: 'unreadable' }> {
  return {
    is: 'unreadable',
    because,
    remedy:
      'Write mites and bees as 6/300, or mites and days as 12 in 3 days. Until then it is kept as a note.',
  };
}

function drop(mites: number, days: number): ReadMites {
  if (days < 1 || days > 60) return noSample('The days on the board must be from 1 to 60.');
  return { is: 'count', sample: { method: 'natural-drop', mites, days }, methodSaid: true };
}

function sampled(mites: number, bees: number, method: MiteSample['method'] | undefined): ReadMites {
  if (bees < 1) return noSample('A sample without bees is none.');
  const shaken = method === 'sugar-shake' ? 'sugar-shake' : 'wash';
  const methodSaid = method === 'sugar-shake' || method === 'wash';
  return { is: 'count', sample: { method: shaken, mites, bees }, methodSaid };
}
