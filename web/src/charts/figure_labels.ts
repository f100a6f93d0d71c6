// Where the number of each joint stands: behind the hip, ahead of knee and foot, where no limb passes; pushed apart when
// two would meet, and never beyond the edge.
import type { Vector } from './figure_drawn';

export interface Wanted {
  joint: string;
  at: Vector; // px, the joint
  lines: string[];
}
export interface Label {
  joint: string;
  x: number;
  y: number; // of the first line's foot
  anchor: 'start' | 'end';
  lines: string[];
}
export interface LabelRoom {
  width: number; // px of the picture
  floor: number; // px, lower edge for labels
  radius: number; // of the arcs
  toe: number; // px, labels of the foot stand right of it
  leg: Vector[]; // px, hip, knee and ankle behind: labels of the hip stand over it
  thick: number; // px, half of that leg
  disc?: { x: number; y: number; radius: number } | undefined; // px, and right of a disc that stands there
}

const lineHigh = 16;
const letterWide = 7.4; // of 14 px bold type, a little more than its mean
export const wideOf = (lines: string[]) => Math.max(...lines.map((each) => each.length)) * letterWide;

const behind = (joint: string) => joint.endsWith('hip') || joint === 'shoulder';

export function labelsOf(wanted: Wanted[], room: LabelRoom): Label[] {
  const labels = wanted.map(({ joint, at, lines }): Label => {
    const wide = wideOf(lines);
    const high = lines.length * lineHigh;
    const foot = joint.endsWith('ankle');
    if (behind(joint)) {
      const x = Math.max(at[0] - room.radius - 13, wide + 4);
      const over = highestOf(room.leg, x - wide, x) - room.thick - (lines.length - 1) * lineHigh;
      return { joint, lines, anchor: 'end', x, y: Math.min(at[1] - high / 2 + 6, room.floor - high, over) };
    }
    const y = foot ? room.floor - high + lineHigh - 8 : at[1] - high / 2 + 11;
    const { disc } = room;
    const past = disc && disc.y + disc.radius > y - lineHigh ? disc.x + disc.radius : 0;
    const x = foot ? Math.max(room.toe, at[0] + room.radius, past) + 12 : at[0] + room.radius + 13;
    return { joint, lines, anchor: 'start', x: Math.min(x, room.width - wide - 4), y };
  });
  return pushedApart(labels);
}

// The highest point (smallest y) of a line of points between two x; far below when it has none there.
function highestOf(line: Vector[], from: number, to: number): number {
  let highest = Infinity;
  for (const [i, a] of line.slice(0, -1).entries()) {
    const b = line[i + 1] ?? a;
    const [start, end] = [Math.max(from, Math.min(a[0], b[0])), Math.min(to, Math.max(a[0], b[0]))];
    if (start > end) continue;
    const at = (x: number) => (a[0] === b[0] ? Math.min(a[1], b[1]) : a[1] + ((x - a[0]) / (b[0] - a[0])) * (b[1] - a[1]));
    highest = Math.min(highest, at(start), at(end));
  }
  return highest;
}

interface Box {
  left: number;
  right: number;
  top: number;
  bottom: number;
}
export function boxOf({ x, y, anchor, lines }: Label): Box {
  const wide = wideOf(lines);
  const from = anchor === 'start' ? x : x - wide;
  return { left: from, right: from + wide, top: y - lineHigh + 3, bottom: y + (lines.length - 1) * lineHigh + 4 };
}
export const meet = (a: Box, b: Box) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

// From the floor upward: each label rises until it is clear of those below it.
function pushedApart(labels: Label[]): Label[] {
  const set: Label[] = [];
  for (const label of [...labels].sort((a, b) => b.y - a.y)) {
    for (const other of set) {
      const [mine, its] = [boxOf(label), boxOf(other)];
      if (meet(mine, its)) label.y -= mine.bottom - its.top + 2;
    }
    set.push(label);
  }
  return labels;
}
