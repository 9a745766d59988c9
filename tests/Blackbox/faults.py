#!/usr/bin/env python3
"""Runs a black-box probe for full-screen programs (a file tui_blackbox.py, not part of this repository) on paneltui.

    faults.py PROBE PANELTUI [FAULT...]

The probe's own texts are plain lines; this program edits a schedule. So the text to open is a schedule here, an edit goes into
the name of its first circuit, and a file is "new" when it differs by that edit alone.
"""
import importlib.util
import json
import os
import sys

# The probe looks for the file's first line on the screen: the panel is called so.
HEAD = """\
schedule: 1
panel: {name: "schedule: 1 Probe panel", system: 120/240 V 1ph 3W, spaces: 8, bus: 100 A, main: 60 A}
circuits:
  - {space: 1, name: lights, breaker: 15 A, loads: [{kind: lighting, rating: 480 W}]}
"""


def sample(lines=400):
    """A schedule as long as so many lines of the probe's."""
    return (HEAD + "".join("# thing 'thing %d' %s\n" % (n, "." * 60) for n in range(lines))).encode()


def load(path):
    spec = importlib.util.spec_from_file_location("probe", path)
    probe = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(probe)
    return probe


def main():
    probe = load(sys.argv[1])
    with open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "profile.json")) as f:
        given = json.load(f)
    given["argv"][0] = given["recover"][0] = sys.argv[2]

    class Profile(probe.Profile):
        def edit(self, t, text=None):
            t.keys(*self.before, gap=0.1)
            t.send(self.type if text is None or "\r" in text else text)
            t.settle(0.2, 5)
            t.keys(*self.after, gap=0.1)
            t.settle(0.2, 5)

        def edited(self, data):
            return data.replace(b"name: lights", b"name: " + self.type.encode())

    profile = Profile(**given)
    classify = probe.classify
    probe.sample = sample
    probe.classify = lambda path, old, new: classify(path, old, profile.edited(old))
    probe.FAULTS["kill -9 during save"] = lambda p: probe.kill_sweep(p, n=40, mb=1)
    probe.FAULTS["matrix"] = probe.syscall_crash_matrix
    for name in sys.argv[3:] or probe.FAULTS:
        try:
            result = probe.FAULTS[name](profile)
        except Exception as error:  # one fault must not end the others
            result = {"probe_error": "%s: %s" % (type(error).__name__, str(error)[:1500])}
        print("%s | %s" % (name, json.dumps(result, ensure_ascii=False)), flush=True)


if __name__ == "__main__":
    main()
