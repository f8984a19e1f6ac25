import type { Threshold } from './Thresholds.tsx';

/**
 * Published action thresholds to start from, each with who says so. They differ, and none is ours: the keeper takes one
 * over, changes it or leaves it.
 *
 * The two of Mississippi were read on the extension service's own pages; the one of the bee research centre was read
 * as quoted on a bee club's page.
 */
export const PUBLISHED: readonly Omit<Threshold, 'id'>[] = [
  {
    method: 'wash',
    value: 1,
    months: [2],
    jurisdiction: 'Mississippi, early February',
    source:
      'State university extension, Sampling for Varroa Mites Using an Alcohol Wash (no research behind it, it says)',
  },
  {
    method: 'wash',
    value: 5,
    months: [8, 9],
    jurisdiction: 'Mississippi, late summer',
    source: 'State university extension, honey bee pages of August 2014',
  },
  {
    method: 'wash',
    value: 3,
    months: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
    jurisdiction: 'United States',
    source: 'USDA bee research centre, Tucson, as quoted by a bee club',
  },
  {
    method: 'sugar-shake',
    value: 3,
    months: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
    jurisdiction: 'United States',
    source: 'USDA bee research centre, Tucson, as quoted by a bee club',
  },
  {
    method: 'natural-drop',
    value: 30,
    months: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
    jurisdiction: 'United States',
    source: 'USDA bee research centre, Tucson, as quoted by a bee club',
  },
];
