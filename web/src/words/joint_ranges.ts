export interface FigureWords {
  position: string;
  start: string;
  moves: string;
  axis: string;
  held: string;
  tool: string;
}
const onTheBack = 'Lying on the back, upper arm straight out at shoulder height, elbow at a right angle. Seen from the measured side.';
const armRotation = {
  position: onTheBack,
  start: 'forearm straight up: 0 degrees',
  axis: 'along the upper arm, which points at you',
  held: 'shoulder blade, down on the bench',
  tool: 'flat on the forearm, near the wrist',
};
const hipRotation = {
  position: 'Sitting on the edge, hip and knee at a right angle, arms crossed. Seen from the front.',
  start: 'lower leg straight down: 0 degrees',
  axis: 'along the thigh, which points at you',
  held: 'pelvis, both sides level on the bench',
  tool: 'flat on the shin, above the ankle',
};

export const jointRangesWords = {
  title: 'Ranges of the joints',
  choose: 'Whose joints are measured?',
  measure: 'Measure',
  first: 'First, for the whole squad',
  date: 'Day',
  rater: 'Measured by',
  tool: 'Tool',
  toolHint: 'inclinometer 1',
  sayWho: 'Say first who measures and with which tool. Angles of another rater, tool or position are never compared.',
  keptWhere: 'Kept on this device until tomorrow.',
  thrower: 'Thrower',
  nextThrower: 'Next thrower',
  angle: 'Angle',
  heldMark: '✓ held for this day',
  sides: { left: 'left', right: 'right' } as Record<string, string>,
  mainSides: { throwing_arm: 'Throwing side', lead_leg: 'Lead leg' } as Record<string, string>,
  otherSides: { throwing_arm: 'Other side', lead_leg: 'Other leg' } as Record<string, string>,
  reading: (n: number) => `Reading ${n}`,
  keys: { back: '⌫', backSaid: 'Delete the last digit', next: 'Next', group: 'Number keys' },
  mean: (mean: string, error: string) => `Mean ${mean} degrees, standard error ${error}.`,
  apart: (spread: string, allowed: string) => `${spread} degrees apart; their error allows ${allowed}.`,
  second: 'One reading cannot show a misreading: take a second.',
  third: (n: number) => `Take a ${n === 3 ? 'third' : 'further'} reading, and look for a misreading.`,
  notChecked: 'The server does not answer: whether the readings agree is not checked.',
  save: 'Save both sides',
  saveOne: 'Save',
  asTheyAre: 'Save these as they are',
  saved: 'Saved.',
  heldBefore: 'Already held.',
  heldReadings: (readings: string) => `Held for this day: ${readings} degrees.`,
  nextAngle: 'Next angle',
  keepIt: 'Keep it',
  change: 'Change it',
  drawn: (side: string) => `Drawn: the ${side} side.`,
  protocol: 'The test’s own words, and its error',
  practice: 'Landmarks: common practice, no source.',
  errors: (trial: string, day: string) => `Standard error ${trial} degrees between readings, ${day} between days.`,
  legend: { start: 'start', moves: 'moves', axis: 'axis', held: 'held still', tool: 'inclinometer' },
  figures: {
    shoulder_external_rotation: { ...armRotation, moves: 'forearm, toward the head, no push at the end' },
    shoulder_internal_rotation: { ...armRotation, moves: 'forearm, toward the feet, until the shoulder blade lifts' },
    shoulder_flexion: {
      position: 'Lying on the back, knees bent. Seen from the measured side.',
      start: 'arm beside the body: 0 degrees',
      moves: 'straight arm, up and overhead, thumb first',
      axis: 'across the shoulder, just below its point',
      held: 'low back, flat on the bench',
      tool: 'flat on the upper arm, above the elbow',
    },
    hip_internal_rotation: { ...hipRotation, moves: 'lower leg, foot outward, pelvis still' },
    hip_external_rotation: { ...hipRotation, moves: 'lower leg, foot inward, pelvis still' },
  } as Record<string, FigureWords>,

  held: 'What is held',
  columns: { angle: 'Angle', side: 'Side', readings: 'Readings', mean: 'Mean', by: 'By and with' },
  total: (joint: string) => `Outward and inward together, ${joint}`,
  differences: 'Differences between the sides',
  differenceAxis: 'Throwing side or lead leg less the other, degrees; bar: 80 % interval',
  missing: 'Not compared, and why',
  earlier: 'Earlier days',
  by: (rater: string, tool: string) => [rater, tool].filter(Boolean).join(', ') || 'not named',
  findings: {
    none_seen: 'No deficit seen',
    measure_again: 'Re-measure',
    show_clinician: 'Show a clinician',
    larger_than_error: 'Larger than its error',
    cannot_tell: 'Cannot tell: re-measure',
    within_error: 'Within its error',
  } as Record<string, string>,
};
