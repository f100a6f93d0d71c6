// The least and the most force of any stretch of a long trace, without reading all of it again while it is dragged.
//
// Level 0 is the trace; each level above keeps the least and the most of eight neighbours below. A stretch is put
// together from the widest blocks that lie inside it, so the answer is exact, not a drawing of every eighth sample.
export const blockSize = 8;

interface Level {
  low: Float32Array;
  high: Float32Array;
}

export interface Pyramid {
  samples: Float32Array;
  levels: Level[]; // levels[0] holds blocks of 8 samples, levels[1] of 64, ...
}

export interface Reach {
  low: number;
  high: number;
}

export function buildPyramid(samples: Float32Array): Pyramid {
  const levels: Level[] = [];
  let below: Level = { low: samples, high: samples };
  while (below.low.length > blockSize) {
    below = blocksOf(below);
    levels.push(below);
  }
  return { samples, levels };
}

function blocksOf(below: Level): Level {
  const count = Math.ceil(below.low.length / blockSize);
  const low = new Float32Array(count);
  const high = new Float32Array(count);
  for (let block = 0; block < count; block += 1) {
    const reach: Reach = { low: Infinity, high: -Infinity };
    widen(reach, below, block * blockSize, Math.min((block + 1) * blockSize, below.low.length));
    low[block] = reach.low;
    high[block] = reach.high;
  }
  return { low, high };
}

function widen(reach: Reach, level: Level, from: number, to: number) {
  for (let i = from; i < to; i += 1) {
    const low = level.low[i] as number;
    const high = level.high[i] as number;
    if (low < reach.low) reach.low = low;
    if (high > reach.high) reach.high = high;
  }
}

// Over the samples from (included) to (left out); nothing between them gives Infinity to -Infinity.
export function reachOf(pyramid: Pyramid, from: number, to: number): Reach {
  const reach: Reach = { low: Infinity, high: -Infinity };
  let first = Math.max(0, from);
  let end = Math.min(pyramid.samples.length, to);
  let level: Level = { low: pyramid.samples, high: pyramid.samples };
  for (const above of pyramid.levels) {
    const firstBlock = Math.ceil(first / blockSize);
    const endBlock = Math.floor(end / blockSize);
    if (firstBlock >= endBlock) break;
    widen(reach, level, first, firstBlock * blockSize);
    widen(reach, level, endBlock * blockSize, end);
    first = firstBlock;
    end = endBlock;
    level = above;
  }
  widen(reach, level, first, end);
  return reach;
}
