export * from './block-directives.ts';
export * from './body-context.ts';
export * from './measures.ts';
export * from './place-names.ts';
export * from './places.ts';
