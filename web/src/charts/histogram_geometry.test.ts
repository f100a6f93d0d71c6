import { describe, expect, it } from 'vitest';
import { drawHistogram } from './histogram_geometry';

describe('columns of equal bins', () => {
  it('stand on the ground, as tall as their counts, the highest below the room kept above it', () => {
    const { columns } = drawHistogram([4, 8, 0, 2], 400, 120, 20, 4); // by hand: 100 units for 8
    expect(columns.map((each) => each.height)).toEqual([50, 100, 0, 25]);
    for (const each of columns) expect(each.y + each.height).toBe(120);
    expect(columns[1]).toMatchObject({ x: 102, y: 20, width: 96, count: 8 });
  });
  it('all touch the even line when they are even, and none of nothing is taller than the paper', () => {
    const { columns, even, evenY } = drawHistogram([5, 5, 5, 5], 400, 120);
    expect(even).toBe(5);
    for (const each of columns) expect(each.y).toBe(evenY);
    expect(drawHistogram([0, 0], 400, 120)).toMatchObject({ even: 0, evenY: 120 });
    expect(drawHistogram([], 400, 120).columns).toEqual([]);
  });
});
