/**
 * Positions moved as little as needed so that neighbours keep a gap and all stay within [low, high]; order is kept.
 * Where the gap cannot be had, the positions are spread evenly.
 */
export const dodge = (positions: readonly number[], gap: number, low: number, high: number): number[] => {
  const count = positions.length;
  if (count < 2) return positions.map((position) => Math.min(high, Math.max(low, position)));
  if ((count - 1) * gap > high - low) return positions.map((_, index) => low + ((high - low) * index) / (count - 1));
  const blocks: { sum: number; size: number }[] = [];
  const startOf = (block: { sum: number; size: number }): number => block.sum / block.size;
  // Pool adjacent violators on position − index·gap: the least-squares answer to "in order, at least a gap apart".
  positions.forEach((position, index) => {
    let block = { sum: position - index * gap, size: 1 };
    for (let before = blocks.at(-1); before !== undefined && startOf(before) > startOf(block); before = blocks.at(-1)) {
      block = { sum: block.sum + before.sum, size: block.size + before.size };
      blocks.pop();
    }
    blocks.push(block);
  });
  const highest = high - (count - 1) * gap;
  return blocks
    .flatMap((block) => Array.from({ length: block.size }, () => Math.min(highest, Math.max(low, startOf(block)))))
    .map((start, index) => start + index * gap);
};
