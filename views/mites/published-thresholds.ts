import type { Threshold } from './counts.ts';

/**
 * Action thresholds that have been published, offered to the keeper with where they come from. None applies until the
 * keeper takes it. What is marked from memory was not read again and is to be looked up before it is gone by.
 */
export interface PublishedThreshold extends Omit<Threshold, 'id'> {
  /** The upper end where the source names a range; `value` is its lower end. */
  readonly upTo?: number;
  readonly when: string;
  readonly basis: 'read' | 'read at second hand' | 'from memory';
}

export const PUBLISHED_THRESHOLDS: readonly PublishedThreshold[] = [
  {
    method: 'wash',
    value: 3,
    months: [4, 5, 6, 7, 8, 9, 10],
    when: 'whole season',
    jurisdiction: 'United States',
    source: 'USDA-ARS Tucson and University of Florida, as quoted by two clubs',
    basis: 'read at second hand',
  },
  {
    method: 'wash',
    value: 2,
    upTo: 3,
    months: [6, 7, 8],
    when: 'summer',
    jurisdiction: 'United States',
    source: 'a ceiling for summer named in a trade article',
    basis: 'read',
  },
  {
    method: 'wash',
    value: 1,
    upTo: 2,
    months: [11, 12, 1, 2, 3, 4],
    when: 'dormant and increase',
    jurisdiction: 'United States',
    source: 'Honey Bee Health Coalition, guide to varroa management',
    basis: 'from memory',
  },
  {
    method: 'wash',
    value: 2,
    upTo: 3,
    months: [5, 6, 7, 8, 9, 10],
    when: 'peak and decline',
    jurisdiction: 'United States',
    source: 'Honey Bee Health Coalition, guide to varroa management',
    basis: 'from memory',
  },
  {
    method: 'wash',
    value: 2,
    months: [5],
    when: 'May',
    jurisdiction: 'Canadian prairies',
    source: 'Currie & Gatien 2006',
    basis: 'from memory',
  },
  {
    method: 'wash',
    value: 4,
    months: [8],
    when: 'late August',
    jurisdiction: 'Canadian prairies',
    source: 'Currie & Gatien 2006',
    basis: 'from memory',
  },
  {
    method: 'wash',
    value: 1,
    upTo: 2,
    months: [4, 5],
    when: 'spring',
    jurisdiction: 'Ontario and prairies',
    source: 'provincial advice',
    basis: 'from memory',
  },
  {
    method: 'wash',
    value: 2,
    upTo: 3,
    months: [8],
    when: 'August',
    jurisdiction: 'Ontario and prairies',
    source: 'provincial advice',
    basis: 'from memory',
  },
  {
    method: 'wash',
    value: 3,
    months: [7],
    when: 'July',
    jurisdiction: 'central Europe',
    source: 'bee institutes’ advice',
    basis: 'from memory',
  },
  {
    method: 'natural-drop',
    value: 10,
    months: [7],
    when: 'end of July',
    jurisdiction: 'central Europe',
    source: 'bee institutes’ advice',
    basis: 'from memory',
  },
];

/** A published threshold as the keeper's own from now on; what is from memory keeps saying so. */
export function taken(published: PublishedThreshold, id: string): Threshold {
  const { method, value, months, jurisdiction, basis } = published;
  const source = basis === 'from memory' ? `${published.source} (from memory, look it up)` : published.source;
  return { id, method, value, months, jurisdiction, source };
}

/** True where the keeper already goes by this one. */
export function isTaken(published: PublishedThreshold, thresholds: readonly Threshold[]): boolean {
  const one = taken(published, '');
  return thresholds.some(
    ({ method, value, months, jurisdiction, source }) =>
      method === one.method &&
      value === one.value &&
      jurisdiction === one.jurisdiction &&
      source === one.source &&
      months.join() === one.months.join(),
  );
}
