export * from './look-ahead.ts';
export * from './policy.ts';
