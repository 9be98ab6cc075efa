/**
 * `npm run bench [-- --posts N] [--rounds N]`: how long a build takes against plain Astro on the same Markdown, with
 * caches empty and full, where a post's time goes, how long a card takes to fold, and what far too large a one takes. Each
 * round runs both sites in turn; medians are compared.
 */
import { parseArgs } from 'node:util';
import { compareBuilds } from '../../tests/bench/compare-builds.ts';
import { medianOf, timeFolds } from '../../tests/bench/fold-times.ts';
import { generatePosts } from '../../tests/bench/generate-posts.ts';
import { timePostStages } from '../../tests/bench/post-stages.ts';
import { timeReferenceLoop } from '../../tests/bench/reference-loop.ts';
import { timeWorstCases } from '../../tests/bench/worst-times.ts';

const { values } = parseArgs({
  options: { posts: { type: 'string', default: '200' }, rounds: { type: 'string', default: '3' } },
});
const posts = generatePosts(Number(values.posts));

console.log(`${posts.length} posts, each with its own sizes\n`);
console.log(`reference loop  ${timeReferenceLoop().toFixed(0)} ms of the processor\n`);

const { kinds, large } = timeFolds();
console.log('ms from sizes to the order of plies, median by the clock');
for (const { name, panels, ms } of [...kinds].sort((a, b) => b.ms - a.ms)) sayFold(name, panels, ms);
sayFold('median of the kinds', undefined, medianOf(kinds.map(({ ms }) => ms)), 'aim under 3');
sayFold(large.name, large.panels, large.ms, 'aim under 50');
console.log();

console.log('files that ask for far too much, ms of the processor: the five slowest, aim under 2000');
for (const { asks, leg, ms } of timeWorstCases().slice(0, 5)) {
  console.log(`  ${asks.padEnd(46)}${leg.padEnd(16)}${ms.toFixed(0).padStart(6)}`);
}
console.log();

console.log('ms of the processor, a post, by stage');
for (const [stage, ms] of Object.entries(await timePostStages(posts))) {
  console.log(`  ${stage.padEnd(9)} ${ms.toFixed(3).padStart(8)}`);
}

console.log();
const { cold, warm } = await compareBuilds(posts, Number(values.rounds), (line) => console.log(line));
console.log(
  `\n${'a build, median'.padEnd(18)}${['ours', 'plain', 'ratio'].map((head) => head.padStart(9)).join('')}    aim`,
);
for (const [heat, { ours, plain }, aim] of [
  ['cold', cold, 'under 3'],
  ['warm', warm, 'under 1.2'],
] as const) {
  sayRow(`${heat}, s`, ours.seconds, plain.seconds, aim);
  sayRow(`${heat}, s of CPU`, ours.cpu, plain.cpu, '');
}

function sayFold(name: string, panels: number | undefined, ms: number, aim = ''): void {
  const many = panels === undefined ? '' : `${panels} panels`;
  console.log(`  ${name.padEnd(26)}${many.padStart(11)}${ms.toFixed(2).padStart(9)}  ${aim}`.trimEnd());
}

function sayRow(name: string, ours: number, plain: number, aim: string): void {
  const figures = [ours, plain, ours / plain].map((figure) => figure.toFixed(2).padStart(9));
  console.log(`${name.padEnd(18)}${figures.join('')}    ${aim}`.trimEnd());
}
