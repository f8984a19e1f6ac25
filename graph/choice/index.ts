export * from './contribution-problem.ts';
export * from './contributions.ts';
export * from './trade-off.ts';
export * from './whole-daughters.ts';
