export * from './scene.ts';
