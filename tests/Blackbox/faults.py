#!/usr/bin/env python3
"""Runs a black-box probe for full-screen programs (a file tui_blackbox.py, not part of this repository) on paneltui.

    faults.py PROBE PANELTUI [FAULT...]

The probe's own texts are plain lines; this program edits a schedule. So the text to open is a schedule here, an edit goes into
the name of its first circuit, and a file is "new" when it differs by that edit alone. The faults of schedule_faults.py stand
in the place of those whose texts no schedule can be. Exit 1 when one of them finds something wrong, a fault ends in an error of
the probe, or a file is damaged.
"""
import functools
import importlib.util
import json
import os
import sys

import schedule_faults

# The last line of the screen holds this once the face of the panel is painted.
PAINTED = "? keys"


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
        def wait_ready(self, t, first, timeout=60):
            t.wait_for(self.ready, timeout)
            schedule_faults.until(probe, t, PAINTED, 5)

        def edit(self, t, text=None):
            typed = self.type if text is None or "\r" in text else text
            t.keys(*self.before, gap=0.1)
            schedule_faults.until(probe, t, "Enter done", 10)
            t.send(typed)
            schedule_faults.until(probe, t, typed, 10)
            t.keys(*self.after, gap=0.1)
            schedule_faults.until(probe, t, lambda q: "Enter done" not in q.text(), 10)
            t.settle(0.2, 5)

        def edited(self, data):
            return data.replace(b"name: lights", b"name: " + self.type.encode())

    profile = Profile(**given)
    classify = probe.classify
    probe.sample = schedule_faults.sample
    probe.classify = lambda path, old, new: classify(path, old, profile.edited(old))
    probe.FAULTS["kill -9 during save"] = lambda p: probe.kill_sweep(p, n=40, mb=1)
    own = {"odd bytes": schedule_faults.odd_bytes, "escape injection": schedule_faults.escape_injection,
           "resize storm": schedule_faults.resize_storm, "paste 1 MB": schedule_faults.paste,
           "two editors": schedule_faults.two_editors}
    probe.FAULTS.update({name: functools.partial(fault, probe) for name, fault in own.items()})
    probe.FAULTS["matrix"] = probe.syscall_crash_matrix
    failed = []
    for name in sys.argv[3:] or probe.FAULTS:
        try:
            result = probe.FAULTS[name](profile)
        except Exception as error:  # one fault must not end the others
            result = {"probe_error": "%s: %s" % (type(error).__name__, str(error)[:1500])}
        if result.get("wrong") or result.get("probe_error") or result.get("damaged"):
            failed.append(name)
        print("%s | %s" % (name, json.dumps(result, ensure_ascii=False)), flush=True)
    sys.exit("failed: " + ", ".join(failed) if failed else 0)


if __name__ == "__main__":
    main()
