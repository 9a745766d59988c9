"""Faults that need texts the program under test can open: each input here is a schedule, or is refused for one reason.

Each function takes the probe module and a profile, and returns a dictionary with "wrong": what is not as it should be.
"""
import os
import random
import re
import time

# The probe looks for the file's first line on the screen: the panel is called so.
HEAD = """\
schedule: 1
panel: {name: "schedule: 1 Probe panel", system: 120/240 V 1ph 3W, spaces: 8, bus: 100 A, main: 60 A}
circuits:
  - {space: 1, name: lights, breaker: 15 A, loads: [{kind: lighting, rating: 480 W}]}
"""

# More than a field of a form takes (2,000 characters).
TOO_LONG = 1 << 20
# As many of these as a name takes (400 characters).
MARKS = ["pasted words %04d" % n for n in range(22)]


def sample(lines=400):
    """A schedule as long as so many lines of the probe's."""
    return (HEAD + "".join("# thing 'thing %d' %s\n" % (n, "." * 60) for n in range(lines))).encode()


def until(probe, t, seen, seconds=60):
    """Waits for a text, or for a condition, on the screen. False when it does not come."""
    try:
        t.wait_for(seen, seconds)
        return True
    except probe.Timeout:
        return False


def read(path):
    with open(path, "rb") as f:
        return f.read()


def odd_texts():
    """Schedules with unusual bytes, and whether they are to be opened."""
    text = HEAD.encode()
    return {
        "CRLF": (text.replace(b"\n", b"\r\n"), True),
        "no final newline": (text[:-1], True),
        "BOM": (b"\xef\xbb\xbf" + text, True),
        "mixed line ends": (text.replace(b"\n", b"\r\n", 2), True),
        "60 kB line": (text + b"# " + b"x" * 60_000 + b"\n", True),
        "200 kB line": (text + b"# " + b"x" * 200_000 + b"\n", False),  # a line holds 65,536 characters
        "trailing spaces": (text.replace(b"circuits:\n", b"circuits:  \n") + b"# tail \t\n", True),
        "tab in a comment": (text + b"#\ta\tb\n", True),
        "letters of two to four bytes": (text + "# Kühlraum, Пила, 厨房, 🔌\n".encode(), True),
        "invalid UTF-8": (text + b"# \xff\xfe\xc3(\n", False),
        "NUL": (text + b"# a\0b\n", False),
        "UTF-16": (b"\xff\xfe" + HEAD.encode("utf-16-le"), False),
    }


def odd_bytes(probe, profile):
    """After one edit and a save every other byte is the same; what cannot be kept is refused with its place."""
    out, wrong = {}, []
    for name, (data, opens) in odd_texts().items():
        with probe.workdir(data) as (path, home):
            with profile.start(path, home) as t:
                if not until(probe, t, profile.ready if opens else lambda q: not q.alive(), 20):
                    out[name] = "not opened" if opens else "opened"
                    wrong.append(name)
                    continue
                t.settle(0.3, 5)
                if opens:
                    profile.edit(t)
                    t.keys(*profile.save, gap=0.1)
                    t.settle(0.5, 8)
                code, said = t.poll(), " ".join(" ".join(t.lines()).split())
            got = read(path)
        if opens:
            out[name] = "kept" if got == profile.edited(data) else "not saved" if got == data else "CHANGED"
            wrong += [] if out[name] == "kept" else [name]
        else:
            placed = re.search(r":\d+:\d+: .*", said)
            out[name] = "refused, exit %s%s" % (code, "" if placed else ", no place: " + said[-80:])
            wrong += [] if code == 2 and placed and got == data else [name]
    return {"texts": out, "wrong": wrong}


def quoted(text):
    """A double-quoted YAML scalar with every control and format character escaped."""
    return '"%s"' % "".join(c if c.isascii() and c.isprintable() and c not in '"\\' else "\\u%04X" % ord(c) for c in text)


def hostile(names):
    """A schedule whose panel and circuits carry the names; YAML escapes stand for what YAML forbids."""
    rows = ["schedule: 1", "panel: {name: %s, location: %s, system: 120/240 V 1ph 3W, spaces: 42, bus: 100 A}" % (
        quoted("schedule: 1 Probe panel" + names[0]), quoted(names[0])), "circuits:"]
    for n, name in enumerate(names):
        rows.append("  - {id: c%d, space: %d, name: %s, breaker: 15 A, loads: [{kind: lighting, rating: 480 W}]}" % (
            n, n + 1, quoted(name)))
    rows.append("scenarios:")
    for n, name in enumerate(names):
        rows.append("  - {name: %s, running: [c%d]}" % (quoted(name), n))
    return ("\n".join(rows) + "\n").encode()


SIDE_EFFECTS = ("clipboard", "hyperlink", "reset", "c1", "bell", "notify", "bidi", "palette", "window", "media-copy")
# The face, why a figure is so, the table, the findings, the keys and a form, each closed again.
WALK = ["Down", "Down", "y", "Esc", "T", "Down", "Esc", "F", "Esc", "?", "Esc", "Enter", "Esc"]


def seen(probe, profile, data, keys):
    """The raw output, the events and the screen of a visit."""
    with probe.workdir(data) as (path, home), profile.start(path, home, rows=40, cols=160) as t:
        until(probe, t, lambda q: profile.ready in q.text() or not q.alive(), 20)
        t.settle(0.4, 5)
        first, opened = t.text(), t.alive()
        if opened:
            t.keys(*keys, gap=0.2)
            t.settle(0.4, 5)
        return bytes(t.raw), t.vt.events, first, opened


def escape_injection(probe, profile):
    """Names that are escape sequences: shown on every page, and the terminal obeys none of them."""
    evil = [(k, v) for k, v in probe.EVIL if "\r" not in v]  # a name with a line break is refused, below
    clean, _, _, _ = seen(probe, profile, hostile(["plain %d" % n for n in range(len(evil))] + ["last one"]), WALK)
    raw, events, text, opened = seen(
        probe, profile, hostile(["%s before%safter" % pair for pair in evil] + ["last one"]), WALK)
    shown = [k for k, _ in evil if k + " before" in text]
    passed = [k for k, v in evil if len(v) > 1 and v.encode() in raw and v.encode() not in clean]
    effects = sorted({k for k, d in events if k in SIDE_EFFECTS or (k == "title" and "PWNED" in d)})
    # The same sequences as raw bytes are no YAML: the sentence that refuses them must not pass them on.
    refused = {}
    for k, v in probe.EVIL:
        r, e, _, is_open = seen(probe, profile, HEAD.replace("lights", '"before%safter"' % v).encode(), [])
        refused[k] = "opened" if is_open else "refused"
        if len(v) > 1 and v.encode() in r and v.encode() not in clean:
            passed.append("raw " + k)
        effects += ["raw " + k for kind, d in e if kind in SIDE_EFFECTS or (kind == "title" and "PWNED" in d)]
    wrong = passed + effects + [k for k, _ in evil if k not in shown] + ([] if opened and "last one" in text else ["screen"])
    return {"names_shown": len(shown), "of": len(evil), "last_name_visible": "last one" in text,
            "raw_payload_passed": passed, "side_effects": effects, "raw_bytes_in_file": refused, "wrong": wrong}


def resize_storm(probe, profile, n=400):
    """After a storm of sizes the screen is, letter and color, what it was, and what a repaint gives."""
    with probe.workdir(sample(200)) as (path, home), profile.start(path, home) as t:
        profile.wait_ready(t, "")
        t.settle(0.4, 5)
        before = [list(row) for row in t.vt.grid]
        chance = random.Random(3)
        cpu, written = t.cpu_ns()[0], len(t.raw)
        for _ in range(n):
            t.resize(chance.randint(1, 60), chance.randint(1, 200))
            t.pump(0.005)
        t.resize(24, 80)
        start = time.monotonic()
        quiet = t.settle(0.5, 10)
        took = time.monotonic() - start - 0.5
        after = [list(row) for row in t.vt.grid]
        t.key("C-l")
        t.settle(0.4, 5)
        again = [list(row) for row in t.vt.grid]
        result = {"sizes": n, "alive": t.alive(), "quiet_again_s": round(took, 2) if quiet else None,
                  "cpu_ms": round((t.cpu_ns()[0] - cpu) / 1e6), "bytes": len(t.raw) - written,
                  "as_before": after == before, "as_repainted": after == again}
    result["wrong"] = [k for k in ("alive", "as_before", "as_repainted") if not result[k]]
    return result


def pasted_name(probe, profile, text, told):
    """Pastes into the name of the first circuit. True when the screen then tells so; the file after a save; the memory."""
    with probe.workdir(sample(20)) as (path, home), profile.start(path, home) as t:
        profile.wait_ready(t, "")
        t.keys(*profile.before, gap=0.2)
        until(probe, t, "Enter done")
        t.paste(text)
        is_told, alive = until(probe, t, told), t.alive()
        t.keys(*profile.after, gap=0.2)
        until(probe, t, lambda q: "Enter done" not in q.text(), 5)
        t.keys(*profile.save, gap=0.2)
        until(probe, t, profile.saved, 5)
        return is_told and alive, read(path), t.memory().get("rss_kb")


def pasted_rows(probe, profile, rows):
    """Rows of a spreadsheet pasted on the table of breakers: the file after a save."""
    table = "space\tname\tbreaker\r" + "".join("%d\tpasted row %d\t20\r" % (n, n) for n in range(2, 2 + rows))
    data = sample(20).replace(b"spaces: 8", b"spaces: 84").replace(b"bus: 100 A, main: 60 A", b"bus: 200 A")
    with probe.workdir(data) as (path, home), profile.start(path, home) as t:
        profile.wait_ready(t, "")
        t.key("T")
        until(probe, t, "s sort")
        t.paste(table.encode())
        until(probe, t, "pasted row %d" % 5)
        t.keys(*profile.save, gap=0.2)
        until(probe, t, profile.saved, 20)
        return read(path), [ln.strip() for ln in t.lines() if ln.strip()][-3:]


def paste(probe, profile):
    """Text pasted where text is taken arrives whole; what no field could hold is refused whole, and says so."""
    _, got, _ = pasted_name(probe, profile, " ".join(MARKS).encode(), MARKS[-1][-9:])
    folded = " ".join(got.decode().split())
    arrived = sum(mark in folded for mark in MARKS)
    huge = (b"pasted line of text, forty characters!!\n" * (TOO_LONG // 40 + 1))[:TOO_LONG]
    refused, kept, rss = pasted_name(probe, profile, huge, "2,000")
    rows, screen = pasted_rows(probe, profile, 80)
    result = {"field": {"sent": len(MARKS), "arrived": arrived},
              "rows": {"sent": 80, "arrived": sum(b"pasted row %d," % n in rows for n in range(2, 82))},
              "1 MB": {"refused": refused, "file_unchanged": kept == sample(20), "rss_kb": rss}}
    if result["rows"]["arrived"] < 80:
        result["rows"]["screen"] = screen
    result["wrong"] = [k for k in ("field", "rows") if result[k]["arrived"] != result[k]["sent"]] + [
        k for k in ("refused", "file_unchanged") if not result["1 MB"][k]]
    return result


def two_editors(probe, profile):
    """A second editor of the same file, also under another of its names, says so before anything can be changed."""
    out = {}
    for name in ("the same path", "a symbolic link"):
        with probe.workdir(sample(60)) as (path, home), profile.start(path, home) as a:
            profile.wait_ready(a, "")
            profile.edit(a)
            other = path
            if name != "the same path":
                other = os.path.join(os.path.dirname(path), "link.yaml")
                os.symlink(path, other)
            with profile.start(other, home) as b:
                warned = until(probe, b, lambda q: re.search("open in another|another editor", " ".join(q.text().split())), 20)
                b.keys(*profile.before, gap=0.2)
                b.settle(0.5, 5)
                out[name] = {"warned": warned, "form_opened": "Enter done" in b.text()}
    return {"names": out, "wrong": [k for k, v in out.items() if not v["warned"] or v["form_opened"]]}
