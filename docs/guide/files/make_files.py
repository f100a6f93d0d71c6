"""make_files.py: writes the force traces of this folder anew, the same bytes every time. All are invented.

Force of a countermovement jump as closed curves (docs/methods/force_traces.md): standing, a dip and a push of sin^2 shape,
take-off, flight, landing. Two plates share it; each reads noise of 1.5 N.
  countermovement_jump.txt   two plates, tab-separated, 500 Hz, a time column, quiet
  restless_jump.csv          one plate, decimal comma, 500 Hz, the athlete sways while being weighed: it is refused
  jump.c3d                   the first jump in the C3D format, two platforms of type 2, 16-bit whole numbers, 500 Hz
"""
import math
import pathlib
import random
import struct

here = pathlib.Path(__file__).parent
g, rate, mass, take_off_speed = 9.80665, 500, 78.0, 2.62
weight = mass * g


def lobe(t, length):
    return math.sin(math.pi * t / length) ** 2 if 0 < t < length else 0.0


def force(t, start=1.6):
    t -= start
    if t < 0.4:
        return weight * (1 - 0.6 * lobe(t, 0.4))
    t -= 0.4
    if t < 0.4:
        return weight + (2 * mass * (take_off_speed + g * 0.015) + 0.6 * weight * 0.4) / 0.4 * lobe(t, 0.4)
    t -= 0.4
    if t < 0.03:
        return weight * (1 - t / 0.03)
    t -= 0.03
    if t < 2 * take_off_speed / g:
        return 0.0
    t -= 2 * take_off_speed / g
    return weight + 2 * mass * take_off_speed / 0.25 * lobe(t, 0.25)


def two_plates(seed):
    noise = random.Random(seed)
    return [(force(i / rate) * 0.51 + noise.gauss(0, 1.5), force(i / rate) * 0.49 + noise.gauss(0, 1.5)) for i in range(5 * rate)]


def text_file():
    lines = ["time [s]\tLeft Fz [N]\tRight Fz [N]"]
    lines += [f"{i / rate:.3f}\t{left:.1f}\t{right:.1f}" for i, (left, right) in enumerate(two_plates(1))]
    (here / "countermovement_jump.txt").write_text("\n".join(lines) + "\n")


def restless_file():
    noise = random.Random(2)
    lines = ["t;Fz (N)"]
    for i in range(5 * rate):
        sway = 35 * math.sin(2 * math.pi * 1.3 * i / rate) if i / rate < 1.6 else 0
        lines.append(f"{i / rate:.3f};{force(i / rate) + sway + noise.gauss(0, 1.5):.1f}".replace(".", ","))
    (here / "restless_jump.csv").write_text("\n".join(lines) + "\n")


def c3d_record(name, number, body=b"", description=b"", last=False):
    data = struct.pack("<bb", len(name), number) + name
    rest = body + struct.pack("<B", len(description)) + description
    return data + struct.pack("<H", 0 if last else len(rest) + 2) + rest


def c3d_file():
    samples = two_plates(1)
    scale = 0.25

    def parameter(name, group, kind, dimensions, values):
        return c3d_record(name, group, struct.pack("<bB", kind, len(dimensions)) + bytes(dimensions) + values)

    labels = [f"{axis}{plate}" for plate in (1, 2) for axis in ("Fx", "Fy", "Fz", "Mx", "My", "Mz")]
    corners = []
    for plate in range(2):
        x0 = 600 * plate
        corners += [x0 + 500, 600, 0, x0, 600, 0, x0, 0, 0, x0 + 500, 0, 0]
    records = b"".join([
        c3d_record(b"POINT", -1), c3d_record(b"ANALOG", -2), c3d_record(b"FORCE_PLATFORM", -3),
        parameter(b"USED", 1, 2, [], struct.pack("<h", 0)), parameter(b"SCALE", 1, 4, [], struct.pack("<f", 1.0)),
        parameter(b"RATE", 1, 4, [], struct.pack("<f", rate)), parameter(b"DATA_START", 1, 2, [], struct.pack("<h", 4)),
        parameter(b"FRAMES", 1, 2, [], struct.pack("<h", len(samples))), parameter(b"UNITS", 1, -1, [2], b"mm"),
        parameter(b"USED", 2, 2, [], struct.pack("<h", 12)), parameter(b"RATE", 2, 4, [], struct.pack("<f", rate)),
        parameter(b"GEN_SCALE", 2, 4, [], struct.pack("<f", 1.0)),
        parameter(b"SCALE", 2, 4, [12], struct.pack("<12f", *[scale] * 12)),
        parameter(b"OFFSET", 2, 2, [12], struct.pack("<12h", *[0] * 12)),
        parameter(b"LABELS", 2, -1, [4, 12], "".join(f"{label:<4}" for label in labels).encode()),
        parameter(b"UNITS", 2, -1, [3, 12], "".join(f"{'Nmm' if label[0] == 'M' else 'N':<3}" for label in labels).encode()),
        parameter(b"USED", 3, 2, [], struct.pack("<h", 2)), parameter(b"TYPE", 3, 2, [2], struct.pack("<2h", 2, 2)),
        parameter(b"CHANNEL", 3, 2, [6, 2], struct.pack("<12h", *range(1, 13))),
        parameter(b"CORNERS", 3, 4, [3, 4, 2], struct.pack("<24f", *corners)),
        parameter(b"ORIGIN", 3, 4, [3, 2], struct.pack("<6f", *[0, 0, -40] * 2)),
        parameter(b"ZERO", 3, 2, [2], struct.pack("<2h", 0, 0)),
    ])
    blocks = (4 + len(records) + 2 + 511) // 512
    section = (bytes([1, 80, blocks, 84]) + records + bytes(2)).ljust(blocks * 512, b"\0")
    assert blocks == 2  # POINT:DATA_START says block 4
    header = struct.pack("<BBHHHHHfHHf", 2, 80, 0, 12, 1, len(samples), 0, 1.0, 2 + blocks, 1, rate).ljust(512, b"\0")
    data = b"".join(struct.pack("<12h", 0, 0, -round(left / scale), 0, 0, 0, 0, 0, -round(right / scale), 0, 0, 0)
                    for left, right in samples)
    (here / "jump.c3d").write_bytes(header + section + data.ljust((len(data) + 511) // 512 * 512, b"\0"))


text_file()
restless_file()
c3d_file()
