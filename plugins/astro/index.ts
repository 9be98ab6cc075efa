export { type CreasewrightOptions, default as creasewright } from './integration.ts';
