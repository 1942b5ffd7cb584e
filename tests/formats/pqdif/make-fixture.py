"""Writes fixtures/*.pqd with nothing but struct, uuid and zlib, from the layout of IEEE 1159.3 (PQDIF working-group headers,
definition versions 1.5 to 1.7), so that the reader is tried on files that its own writer did not make.

Run: python3 tests/formats/pqdif/make-fixture.py
"""

import os
import struct
import uuid
import zlib

HERE = os.path.join(os.path.dirname(os.path.abspath(__file__)), "fixtures")

COLLECTION, SCALAR, VECTOR = 1, 2, 3
FORMATS = {1: "B", 2: "H", 3: "I", 10: "B", 11: "H", 20: "b", 21: "h", 22: "i", 30: "B", 31: "H", 32: "I", 40: "f", 41: "d"}


def guid(text):
    return uuid.UUID(text).bytes_le


def item(kind, value):
    if kind in FORMATS:
        return struct.pack("<" + FORMATS[kind], value)
    if kind in (42, 43):
        return struct.pack("<ff" if kind == 42 else "<dd", value.real, value.imag)
    if kind == 50:
        day, seconds = value
        return struct.pack("<Id", day, seconds)
    return guid(value)


def col(tag, *children):
    return (tag, COLLECTION, 0, children)


def sca(tag, kind, value):
    return (tag, SCALAR, kind, value)


def vec(tag, kind, values):
    return (tag, VECTOR, kind, values)


def text(tag, string, end="\0"):
    return vec(tag, 10, (string + end).encode("latin-1"))


def body(children, embed=True):
    out = bytearray()

    def put(raw):
        while len(out) % 4:
            out.append(0)
        at = len(out)
        out.extend(raw)
        return at

    def collection(children):
        start = put(struct.pack("<i", len(children)) + bytes(28 * len(children)))
        for i, (tag, element, kind, content) in enumerate(children):
            if element == COLLECTION:
                link = collection(content)
                size = len(out) - link
            else:
                raw = item(kind, content) if element == SCALAR else struct.pack("<i", len(content)) + b"".join(
                    item(kind, value) for value in content
                )
                if element == SCALAR and len(raw) <= 8 and embed:
                    entry = guid(tag) + struct.pack("<bbBb", element, kind, 1, 0) + raw.ljust(8, b"\0")
                    out[start + 4 + 28 * i : start + 32 + 28 * i] = entry
                    continue
                link = put(raw)
                size = (len(raw) + 3) // 4 * 4
            entry = guid(tag) + struct.pack("<bbBbii", element, kind, 0, 0, link, size)
            out[start + 4 + 28 * i : start + 32 + 28 * i] = entry
        return start

    collection(children)
    put(b"")
    return bytes(out)


def chain(records, header_size=64):
    out = bytearray()
    for i, (kind, stored, checksum) in enumerate(records):
        after = 0 if i == len(records) - 1 else len(out) + header_size + len(stored)
        header = guid("4a111440-e49f-11cf-9900-505144494600") + guid(kind)
        header += struct.pack("<iiiI", header_size, len(stored), after, checksum)
        out += header.ljust(header_size, b"\0") + stored
    return bytes(out)


T = {
    "version": "89738607-f1c3-11cf-9d89-0080c72e70a3", "file": "89738608-f1c3-11cf-9d89-0080c72e70a3",
    "creation": "89738609-f1c3-11cf-9d89-0080c72e70a3", "notes": "89738617-f1c3-11cf-9d89-0080c72e70a3",
    "style": "8973861b-f1c3-11cf-9d89-0080c72e70a3", "algorithm": "8973861c-f1c3-11cf-9d89-0080c72e70a3",
    "source type": "b48d8581-f5f5-11cf-9d89-0080c72e70a3", "source": "b48d8587-f5f5-11cf-9d89-0080c72e70a3",
    "channels": "b48d858d-f5f5-11cf-9d89-0080c72e70a3", "channel": "b48d858e-f5f5-11cf-9d89-0080c72e70a3",
    "channel name": "b48d8590-f5f5-11cf-9d89-0080c72e70a3", "phase": "b48d8591-f5f5-11cf-9d89-0080c72e70a3",
    "quantity type": "b48d8592-f5f5-11cf-9d89-0080c72e70a3", "measured": "c690e872-f755-11cf-9d89-0080c72e70a3",
    "series": "b48d8598-f5f5-11cf-9d89-0080c72e70a3", "one series": "b48d859a-f5f5-11cf-9d89-0080c72e70a3",
    "value type": "b48d859c-f5f5-11cf-9d89-0080c72e70a3", "units": "b48d859b-f5f5-11cf-9d89-0080c72e70a3",
    "characteristic": "3d786f9e-f76e-11cf-9d89-0080c72e70a3", "storage": "b48d85a1-f5f5-11cf-9d89-0080c72e70a3",
    "effective": "62f28183-f9c4-11cf-9d89-0080c72e70a3", "use transducer": "62f28181-f9c4-11cf-9d89-0080c72e70a3",
    "settings": "62f28182-f9c4-11cf-9d89-0080c72e70a3", "one setting": "3d786f9a-f76e-11cf-9d89-0080c72e70a3",
    "nominal frequency": "0fa118c3-cb4a-11d2-b30b-fe25cb9a1760", "definition": "b48d858f-f5f5-11cf-9d89-0080c72e70a3",
    "system side": "62f2818a-f9c4-11cf-9d89-0080c72e70a3", "monitor side": "62f2818b-f9c4-11cf-9d89-0080c72e70a3",
    "observation": "3d786f8a-f76e-11cf-9d89-0080c72e70a3", "created": "3d786f8b-f76e-11cf-9d89-0080c72e70a3",
    "start": "3d786f8c-f76e-11cf-9d89-0080c72e70a3", "method": "3d786f8d-f76e-11cf-9d89-0080c72e70a3",
    "triggered": "3d786f8e-f76e-11cf-9d89-0080c72e70a3", "trigger channels": "3d786f8f-f76e-11cf-9d89-0080c72e70a3",
    "instances": "3d786f91-f76e-11cf-9d89-0080c72e70a3", "instance": "3d786f92-f76e-11cf-9d89-0080c72e70a3",
    "group": "f90de218-e67b-4cf1-a295-b021a2d46767", "series instances": "3d786f93-f76e-11cf-9d89-0080c72e70a3",
    "series instance": "3d786f94-f76e-11cf-9d89-0080c72e70a3", "scale": "3d786f96-f76e-11cf-9d89-0080c72e70a3",
    "offset": "3d786f97-f76e-11cf-9d89-0080c72e70a3", "share channel": "8973861f-f1c3-11cf-9d89-0080c72e70a3",
    "share series": "89738620-f1c3-11cf-9d89-0080c72e70a3", "values": "3d786f99-f76e-11cf-9d89-0080c72e70a3",
    "private": "00000000-1111-2222-3333-444444444444",
}  # fmt: skip
CONTAINER = "89738606-f1c3-11cf-9d89-0080c72e70a3"
SOURCE = "89738619-f1c3-11cf-9d89-0080c72e70a3"
SETTINGS = "b48d858c-f5f5-11cf-9d89-0080c72e70a3"
OBSERVATION = "8973861a-f1c3-11cf-9d89-0080c72e70a3"
BLANK = "89738618-f1c3-11cf-9d89-0080c72e70a3"
VALUELOG = "67f6af82-f753-11cf-9d89-0080c72e70a3"
WAVEFORM = "67f6af80-f753-11cf-9d89-0080c72e70a3"
TIME, VAL = "c690e862-f755-11cf-9d89-0080c72e70a3", "67f6af97-f753-11cf-9d89-0080c72e70a3"
AVG, MAX = "67f6af9a-f753-11cf-9d89-0080c72e70a3", "67f6af99-f753-11cf-9d89-0080c72e70a3"
RMS, NONE = "a6b31ae5-b451-11d1-ae17-0060083a2628", "a6b31adf-b451-11d1-ae17-0060083a2628"
INSTANTANEOUS = "a6b31add-b451-11d1-ae17-0060083a2628"


def series(value, units, characteristic, storage):
    return col(T["one series"], sca(T["value type"], 60, value), sca(T["units"], 32, units),
               sca(T["characteristic"], 60, characteristic), sca(T["storage"], 32, storage))  # fmt: skip


def channel(name, phase, kind, *defined):
    return col(T["channel"], text(T["channel name"], name), sca(T["phase"], 32, phase), sca(T["quantity type"], 60, kind),
               sca(T["measured"], 32, 1), col(T["series"], *defined))  # fmt: skip


def values(kind, numbers, *others):
    return col(T["series instance"], *others, vec(T["values"], kind, numbers))


def shared(channel, index):
    return col(T["series instance"], sca(T["share channel"], 32, channel), sca(T["share series"], 32, index))


def instance(definition, *parts, group=None):
    more = () if group is None else (sca(T["group"], 21, group),)
    return col(T["instance"], sca(T["definition"], 32, definition), *more, col(T["series instances"], *parts))


def observation(name, start, *instances, more=()):
    return [text(T["observation"], name), sca(T["created"], 50, start), sca(T["start"], 50, start),
            sca(T["method"], 32, 2), *more, col(T["instances"], *instances)]  # fmt: skip


source = [
    sca(T["source type"], 60, "e6b51730-f747-11cf-9d89-0080c72e70a3"),
    text(T["source"], "Feeder box, 3°"),
    sca(T["effective"], 50, (44000, 0.0)),
    col(T["private"], text(T["private"], "unknown to the standard")),
    col(
        T["channels"],
        channel("U1", 1, VALUELOG, series(TIME, 2, NONE, 4), series(AVG, 6, RMS, 3), series(MAX, 6, RMS, 0)),
        channel("U2", 2, VALUELOG, series(TIME, 2, RMS, 4), series(MAX, 6, RMS, 1), series(AVG, 6, RMS, 1)),
        channel("u1", 1, WAVEFORM, series(TIME, 2, INSTANTANEOUS, 6), series(VAL, 6, INSTANTANEOUS, 3)),
        channel("f", 13, VALUELOG, series(TIME, 1, NONE, 1), series(VAL, 15, RMS, 1)),
    ),
]
settings = [
    sca(T["effective"], 50, (44000, 0.0)),
    sca(T["use transducer"], 3, 0xFFFFFFFF),
    sca(T["nominal frequency"], 41, 50.0),
    col(T["settings"], col(T["one setting"], sca(T["definition"], 32, 0), sca(T["system side"], 41, 200.0),
                           sca(T["monitor side"], 41, 1.0))),
]  # fmt: skip
log = observation(
    "Ten minutes",
    # The day before plus a whole day of seconds: 2022-09-20 00:00, as one writer stores it.
    (44823, 86400.0),
    instance(0, values(40, [1, 4, 600.0]), values(21, [2301, 2299, -1, 2305], sca(T["scale"], 41, 0.1), sca(T["offset"], 41, 0.5)),
             values(40, [230.5, 230.25, 0.5, 231.0])),
    instance(1, shared(0, 0), values(31, [235, 236, 237, 65535]), values(41, [])),
    instance(3, values(50, [(44824, 0.0), (44824, 600.000001), (44823, 86400.0 + 1200), (44824, 1800.0)]),
             values(22, [50, 51, -2147483648, 49])),
    instance(1, shared(1, 0), values(30, [0, 255, 1, 2]), values(20, [-128, 127, 0, 1]), group=5),
)  # fmt: skip
wave = observation(
    "Waveform",
    (44824, 77225.00000016298),
    instance(2, values(41, [1, 6, 1.0], sca(T["scale"], 41, 0.00015625), sca(T["offset"], 40, -0.25)),
             values(22, [0, 1, 2, 3, -2, -1], sca(T["scale"], 21, 10))),
    instance(2, values(41, [2, 2, 1.0, 3, 10.0], sca(T["scale"], 41, 1.0)), values(3, [0, 1, 4294967295, 0, 7])),
    more=(sca(T["triggered"], 50, (44824, 77225.5)), vec(T["trigger channels"], 32, [1])),
)  # fmt: skip
others = observation(
    "No numbers",
    (44825, 0.5),
    instance(1, values(42, [1 + 2j]), values(43, [3 - 4j]), values(60, [RMS])),
    instance(1, values(10, b"text"), values(1, [1, 0, 2]), values(2, [0, 256])),
)


def container(*more):
    return [vec(T["version"], 32, [1, 5, 1, 5]), text(T["file"], "C:\\Users\\writer\\log.pqd"),
            sca(T["creation"], 50, (44825, 3600.0)), vec(T["notes"], 11, [ord(c) for c in "Ω and μ\0junk"]), *more]  # fmt: skip


def write(name, content):
    with open(os.path.join(HERE, name), "wb") as file:
        file.write(content)


bodies = [(SOURCE, source), (SETTINGS, settings), (OBSERVATION, log), (OBSERVATION, wave), (OBSERVATION, others)]

# Records compressed with zlib; the checksum is the Adler-32 of the stored bytes, which is what one writer puts there.
records = [(CONTAINER, body(container(sca(T["style"], 32, 2), sca(T["algorithm"], 32, 1))), 0)]
for kind, elements in bodies:
    stored = zlib.compress(body(elements))
    records.append((kind, stored, zlib.adler32(stored)))
write("compressed.pqd", chain(records))

# Plain records with every scalar linked, a longer header, a blank record between, and the CRC-32 another writer puts there.
records = [(CONTAINER, body(container(), embed=False), 0), (BLANK, bytes(7), 0)]
for kind, elements in bodies:
    plain = body(elements, embed=False)
    records.append((kind, plain, zlib.crc32(plain)))
write("plain.pqd", chain(records, header_size=80))
