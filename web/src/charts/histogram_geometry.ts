// Columns of equal bins, and the height all would have were they even; counts come from the server.
export interface Column {
  x: number;
  y: number;
  width: number;
  height: number;
  count: number;
}

export interface Histogram {
  columns: Column[];
  even: number; // count of each, were they even
  evenY: number;
}

// `top` keeps room above the highest column.
export function drawHistogram(counts: number[], width: number, height: number, top = 4, gap = 3): Histogram {
  const even = counts.reduce((sum, each) => sum + each, 0) / Math.max(1, counts.length);
  const most = Math.max(1, even, ...counts);
  const step = width / Math.max(1, counts.length);
  const tall = (count: number) => (count / most) * (height - top);
  const columns = counts.map((count, i) => ({ x: i * step + gap / 2, width: step - gap, y: height - tall(count), height: tall(count), count }));
  return { columns, even, evenY: height - tall(even) };
}
