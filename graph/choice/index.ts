export * from './contribution-problem.ts';
export * from './contributions.ts';
export * from './look-ahead/index.ts';
export * from './node-merit.ts';
export * from './trade-off.ts';
export * from './what-if-mating.ts';
export * from './whole-daughters.ts';
