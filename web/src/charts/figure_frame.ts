// How metres become a picture: one scale for a body and a lift, whatever its sliders say, so that a figure moves and
// never grows or shrinks. The frame is wide enough for every posture of the lift; shares of stature, tried in pictures.
import type { DrawnSetup, Vector } from './figure_drawn';

export interface WorldFrame {
  left: number; // metres
  right: number;
  bottom: number;
  top: number;
}
export interface View {
  width: number; // px
  height: number;
  scale: number; // px per metre
  at: (point: Vector) => Vector;
}

const split = ['rear_foot_raised_split_squat', 'split_squat', 'lunge', 'step_up'];

export interface FrameOf {
  lift: string;
  stature: number; // metres
  stance: number; // metres, the largest of the slider
  box: number; // metres, the largest of the slider; 0 without a box
}

export function liftFrame({ lift, stature, stance, box }: FrameOf): WorldFrame {
  if (lift === 'pull_up') return { left: -0.5 * stature, right: 0.5 * stature, bottom: 0, top: 1.5 * stature };
  if (split.includes(lift)) return { left: -(stance + 0.16 * stature), right: 0.5 * stature, bottom: -box, top: 1.04 * stature };
  return { left: -0.66 * stature, right: 0.6 * stature, bottom: 0, top: 1.04 * stature };
}

// The extent of what is drawn, discs of the load included; they stand on the floor, never in it.
export function extentOf(drawing: DrawnSetup): WorldFrame {
  const disc = drawing.disc_radius ?? 0;
  const xs = drawing.points.flatMap((each) => (each.point === 'load' ? [each.x - disc, each.x + disc] : [each.x]));
  const ys = drawing.points.flatMap((each) => (each.point === 'load' ? [each.y, Math.max(each.y, drawing.floor_y + disc) + disc] : [each.y]));
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(drawing.floor_y, ...ys), top: Math.max(...ys) };
}

export function union(frames: WorldFrame[]): WorldFrame {
  return {
    left: Math.min(...frames.map((each) => each.left)),
    right: Math.max(...frames.map((each) => each.right)),
    bottom: Math.min(...frames.map((each) => each.bottom)),
    top: Math.max(...frames.map((each) => each.top)),
  };
}

export interface Margins {
  side: number; // px, left and right
  above: number;
  below: number; // room under the floor for the foot's scale and the forces
}

// The frame fits the width; where that would be taller than `tallest` px, the height decides and the figure is centred.
export function viewOf(frame: WorldFrame, width: number, tallest: number, margins: Margins): View {
  const wide = Math.max(0.1, frame.right - frame.left);
  const high = Math.max(0.1, frame.top - frame.bottom);
  const scale = Math.min((width - 2 * margins.side) / wide, (tallest - margins.above - margins.below) / high);
  const shift = (width - scale * wide) / 2;
  const height = Math.ceil(scale * high + margins.above + margins.below);
  return { width, height, scale, at: ([x, y]) => [shift + scale * (x - frame.left), margins.above + scale * (frame.top - y)] };
}
