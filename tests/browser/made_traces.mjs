// Files of force traces for the browser tests, made here from a curve that is known in closed form.
//
// A jump: quiet standing at m g, a dip of -A sin^2 in acceleration, a push of +B sin^2 that leaves the ground with the
// take-off speed asked for, a flight at zero force, a landing sin^2 that brings the speed to rest, quiet standing.
const g = 9.81;

// The force of each sample, newtons.
export function jumpForces({ mass = 76, rate = 1000, speed = 2.4, quiet = 1.6, noise = 1, seed = 1 } = {}) {
  const random = crooked(seed);
  const bell = (seconds, area) => {
    const count = Math.round(seconds * rate);
    return Array.from({ length: count }, (_, i) => mass * (g + ((2 * area) / seconds) * Math.sin((Math.PI * i) / count) ** 2));
  };
  const level = (seconds, force) => Array(Math.round(seconds * rate)).fill(force);
  const dip = 1.35; // m/s downward
  const forces = [...level(quiet, mass * g), ...bell(0.45, -dip), ...bell(0.55, speed + dip), ...level((2 * speed) / g, 0), ...bell(0.5, speed), ...level(1.5, mass * g)];
  return forces.map((force) => force + noise * random());
}

export function forceFile(name, forces, rate = 1000) {
  const rows = forces.map((force, i) => `${(i / rate).toFixed(5)},${force.toFixed(2)}`);
  return { name, mimeType: 'text/csv', buffer: Buffer.from(`time (s),Fz (N)\n${rows.join('\n')}\n`) };
}

// A row of numbers like noise, the same on each run: twelve of Lehmer's numbers summed up, mean 0, deviation 1.
function crooked(seed) {
  let state = seed * 7919;
  const even = () => (state = (state * 48271) % 2147483647) / 2147483647;
  return () => Array.from({ length: 12 }, even).reduce((sum, x) => sum + x, -6);
}

// A C3D file: Intel, floats, no points, six analog channels of one force platform of type 2. The layout is that of the
// format's user guide (header of 512 bytes, parameters in blocks of 512, then the frames), from memory.
export function c3dFile(name, samples = 400) {
  const header = Buffer.alloc(512);
  header.writeUInt8(2, 0); // parameters from block 2
  header.writeUInt8(0x50, 1);
  for (const [word, value] of [[2, 0], [3, 6], [4, 1], [5, samples], [6, 0], [9, 4], [10, 1]]) header.writeUInt16LE(value, 2 * (word - 1));
  header.writeFloatLE(-1, 12); // numbers are floats
  header.writeFloatLE(1000, 20);
  const parts = [Buffer.from([1, 0x50, 2, 84])];
  const record = (group, label, body) => {
    const head = Buffer.from([label.length, group & 0xff, ...Buffer.from(label)]);
    const next = Buffer.alloc(2);
    next.writeInt16LE(body.length + 2);
    parts.push(head, next, body);
  };
  const group = (number, label) => record(-number, label, Buffer.from([0]));
  const parameter = (number, label, type, dimensions, data) => record(number, label, Buffer.from([type & 0xff, dimensions.length, ...dimensions, ...data, 0]));
  const words16 = (...values) => { const data = Buffer.alloc(2 * values.length); values.forEach((value, i) => data.writeInt16LE(value, 2 * i)); return data; };
  const floats = (...values) => { const data = Buffer.alloc(4 * values.length); values.forEach((value, i) => data.writeFloatLE(value, 4 * i)); return data; };
  const letters = (width, ...values) => Buffer.from(values.map((value) => value.padEnd(width)).join(''));
  const channels = ['Fx1', 'Fy1', 'Fz1', 'Mx1', 'My1', 'Mz1'];
  group(1, 'POINT');
  parameter(1, 'USED', 2, [], words16(0));
  parameter(1, 'SCALE', 4, [], floats(-1));
  parameter(1, 'RATE', 4, [], floats(1000));
  parameter(1, 'UNITS', -1, [2], letters(2, 'mm'));
  parameter(1, 'FRAMES', 2, [], words16(samples));
  parameter(1, 'DATA_START', 2, [], words16(4));
  group(2, 'ANALOG');
  parameter(2, 'USED', 2, [], words16(6));
  parameter(2, 'RATE', 4, [], floats(1000));
  parameter(2, 'LABELS', -1, [4, 6], letters(4, ...channels));
  parameter(2, 'UNITS', -1, [4, 6], letters(4, 'N', 'N', 'N', 'Nmm', 'Nmm', 'Nmm'));
  parameter(2, 'GEN_SCALE', 4, [], floats(1));
  parameter(2, 'SCALE', 4, [6], floats(1, 1, 1, 1, 1, 1));
  parameter(2, 'OFFSET', 2, [6], words16(0, 0, 0, 0, 0, 0));
  group(3, 'FORCE_PLATFORM');
  parameter(3, 'USED', 2, [], words16(1));
  parameter(3, 'TYPE', 2, [1], words16(2));
  parameter(3, 'CHANNEL', 2, [6, 1], words16(1, 2, 3, 4, 5, 6));
  parameter(3, 'CORNERS', 4, [3, 4, 1], floats(600, 400, 0, 0, 400, 0, 0, 0, 0, 600, 0, 0));
  parameter(3, 'ORIGIN', 4, [3, 1], floats(0, 0, -40));
  parameter(3, 'ZERO', 2, [2], words16(0, 0));
  const described = Buffer.alloc(1024);
  Buffer.concat(parts).copy(described);
  const frames = Buffer.alloc(samples * 24);
  for (let i = 0; i < samples; i += 1) frames.writeFloatLE(-740, 24 * i + 8);
  return { name, mimeType: 'application/octet-stream', buffer: Buffer.concat([header, described, frames]) };
}
