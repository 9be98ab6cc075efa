export * from './length.ts';
export * from './system.ts';
