/**
 * Moves things along a line as little as possible (least sum of squares) so that neighbours lie at least `gap` apart
 * and all lie between `low` and `high`. `wanted` in rising order; undefined when there is not room for all.
 *
 * Pool-adjacent-violators: things that would collide move as one block, to the mean of where its members want to be.
 */
export function spread(wanted: readonly number[], gap: number, low: number, high: number): number[] | undefined {
  if ((wanted.length - 1) * gap > high - low) return undefined;
  const blocks: { start: number; count: number; sum: number }[] = [];
  wanted.forEach((position, i) => {
    let block = { start: 0, count: 1, sum: position };
    for (;;) {
      const least = low + (i + 1 - block.count) * gap;
      const most = high - (wanted.length - 1 - i + block.count - 1) * gap;
      block.start = Math.min(Math.max(block.sum / block.count, least), most);
      const before = blocks.at(-1);
      if (before === undefined || before.start + before.count * gap <= block.start) break;
      blocks.pop();
      // What a later member wants counts from where the block starts.
      block = {
        start: 0,
        count: before.count + block.count,
        sum: before.sum + block.sum - block.count * before.count * gap,
      };
    }
    blocks.push(block);
  });
  return blocks.flatMap((block) => Array.from({ length: block.count }, (_, k) => block.start + k * gap));
}
