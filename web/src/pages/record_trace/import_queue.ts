// Works through many files a few at a time. Files of one row (a thrower's trials of one day) go one after another, so
// that their trials are counted in the order of their names; rows go side by side. One that fails stops no other.
export interface QueueRun<Item> {
  rows: Item[][];
  atOnce: number;
  each: (item: Item) => Promise<void>; // says itself what became of the item
  stopped: () => boolean; // asked before each item is begun
}

export async function runQueue<Item>({ rows, atOnce, each, stopped }: QueueRun<Item>): Promise<void> {
  const waiting = [...rows];
  const worker = async () => {
    for (let row = waiting.shift(); row; row = waiting.shift())
      for (const item of row) {
        if (stopped()) return;
        await each(item);
      }
  };
  await Promise.all(Array.from({ length: Math.min(atOnce, rows.length) }, worker));
}

export function inRows<Item>(items: Item[], rowOf: (item: Item) => string): Item[][] {
  const rows = new Map<string, Item[]>();
  for (const item of items) {
    const row = rows.get(rowOf(item));
    if (row) row.push(item);
    else rows.set(rowOf(item), [item]);
  }
  return [...rows.values()];
}
