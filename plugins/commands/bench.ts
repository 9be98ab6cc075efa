/**
 * `npm run bench [-- --posts N] [--rounds N]`: how long a build takes against plain Astro on the same Markdown, with
 * caches empty and full, and where a post's time goes. Each round runs both sites in turn; medians are compared.
 */
import { parseArgs } from 'node:util';
import { compareBuilds } from '../../tests/bench/compare-builds.ts';
import { generatePosts } from '../../tests/bench/generate-posts.ts';
import { timePostStages } from '../../tests/bench/post-stages.ts';
import { timeReferenceLoop } from '../../tests/bench/reference-loop.ts';

const { values } = parseArgs({
  options: { posts: { type: 'string', default: '200' }, rounds: { type: 'string', default: '3' } },
});
const posts = generatePosts(Number(values.posts));

console.log(`${posts.length} posts, each with its own sizes\n`);
console.log(`reference loop  ${timeReferenceLoop().toFixed(0)} ms\n`);

console.log('ms a post by stage');
for (const [stage, ms] of Object.entries(await timePostStages(posts))) {
  console.log(`  ${stage.padEnd(9)} ${ms.toFixed(3).padStart(8)}`);
}

const { cold, warm } = await compareBuilds(posts, Number(values.rounds), (line) => console.log(line));
console.log('\nseconds a build, median     ours   plain   ratio   aim');
for (const [name, { ours, plain }, aim] of [
  ['cold', cold, 3],
  ['warm', warm, 1.2],
] as const) {
  const figures = [ours.toFixed(2), plain.toFixed(2), (ours / plain).toFixed(2)].map((figure) => figure.padStart(7));
  console.log(`  ${name.padEnd(20)} ${figures.join(' ')}   < ${aim}`);
}
