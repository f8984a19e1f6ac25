export * from './drone-source.ts';
export * from './expected-loss.ts';
export * from './populations.ts';
export * from './retained.ts';
export * from './viability.ts';
