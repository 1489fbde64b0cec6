#!/usr/bin/env python3
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later
"""A morning of 30 runs, rehearsed at 100 times the speed.

An invented drive is played into `bothways record` on a pseudo-terminal; what a companion would type is typed when the
drive is where it would be typed. Then the importer gets the same runs and the same drive, and both studies have to
give the same screening and the same verdict. Usage: morning_rehearsal.py path/to/bothways
"""
import csv
import json
import os
import pty
import random
import subprocess
import sys
import tempfile
import threading
import time

RUNS, RUN_S, TURN_S, FIRST_S, SPEED = 30, 100.0, 40.0, 20.0, 100.0
SPOILED = {4, 17}  # an over-speed in each


def start_of(run):
    return FIRST_S + run * (RUN_S + TURN_S)


def configuration(run):
    return "off" if run // 10 % 2 == 0 else "on"


def direction(run):
    return "out" if run % 2 == 0 else "return"


def write_drive(path):
    noise = random.Random(1)
    with open(path, "w", encoding="ascii") as file:
        file.write("time_s,road_speed_kmh,rotor_rpm\n")
        tenths = int((start_of(RUNS) + 5.0) * 10)
        for tenth in range(tenths):
            now = tenth / 10.0
            run = int((now - FIRST_S) // (RUN_S + TURN_S))
            within = now - start_of(run) if now >= FIRST_S else -1.0
            driven = 0.0 <= within <= RUN_S
            speed = 90.0 if driven else 40.0
            over = run in SPOILED and 50.0 < within < 54.0
            rotor = 3400 if over else 2600 if driven else 900
            file.write(f"{now:.1f},{speed + noise.uniform(-0.3, 0.3):.2f},"
                       f"{rotor + noise.randint(-9, 9)}\n")


def consumptions():
    """8.4 off, 2 % less on, half a per cent of noise."""
    noise = random.Random(2)
    return [8.4 * (0.98 if configuration(run) == "on" else 1.0) * (1 + noise.gauss(0, 0.005))
            for run in range(RUNS)]


class Companion:
    """What is typed, and what is read."""

    def __init__(self, command, folder):
        self.said = ""
        self.pid, self.terminal = pty.fork()
        if self.pid == 0:
            os.chdir(folder)
            os.environ["LC_ALL"] = "C"
            os.execv(command[0], command)
        threading.Thread(target=self.read, daemon=True).start()

    def read(self):
        while True:
            try:
                got = os.read(self.terminal, 4096)
            except OSError:
                return
            if not got:
                return
            self.said += got.decode(errors="replace")

    def type(self, line):
        os.write(self.terminal, (line + "\n").encode())

    def wait_for(self, words, seconds=20.0):
        give_up = time.monotonic() + seconds
        while words not in self.said:
            if time.monotonic() > give_up:
                sys.exit(f"never said: {words}\n{self.said[-2000:]}")
            time.sleep(0.005)


def run(program, *arguments):
    done = subprocess.run([program, *arguments], capture_output=True, text=True,
                          env={**os.environ, "LC_ALL": "C"}, check=False)
    if done.returncode not in (0, 1):
        sys.exit(f"{arguments}: {done.returncode}\n{done.stderr}")
    return done.stdout


def rehearse(program, folder):
    companion = Companion([program, "record", "live.bothways", "--from",
                           f"replay:drive.csv,x{SPEED:.0f}"], folder)
    companion.wait_for("'help' says")
    began = time.monotonic()

    def until(drive_s):
        left = began + drive_s / SPEED - time.monotonic()
        if left > 0:
            time.sleep(left)

    numbers = consumptions()
    for place in range(RUNS):
        until(start_of(place) + 2.0)
        companion.type(f"s {configuration(place)} {direction(place)}")
        companion.wait_for(f"run {place + 1}: {configuration(place)}, {direction(place)}, begins")
        until(start_of(place) + RUN_S - 8.0)
        companion.type(f"e {numbers[place]:.2f}")
        companion.wait_for(f"next: run {place + 2}")
        if place in SPOILED:
            companion.type("d")
            companion.wait_for(f"run {place + 1} is discarded: over-speed")
    took = time.monotonic() - began
    companion.type("q")
    os.waitpid(companion.pid, 0)
    return took


def told(program, study):
    analysis = json.loads(run(program, "analyse", study, "--json"))
    screening = json.loads(run(program, "screen", study, "--json"))
    for one in (analysis, screening):
        one.pop("input_sha256", None)  # of the study file
    return analysis, screening


def without_recordings(exported, sheet):
    """Leaves out the column that names the recording. Returns that name: when it began."""
    with open(exported, encoding="utf-8", newline="") as file:
        lines = list(csv.reader(file))
    trace = lines[0].index("trace")
    with open(sheet, "w", encoding="utf-8", newline="") as file:
        csv.writer(file).writerows(line[:trace] + line[trace + 1:] for line in lines)
    return lines[1][trace]


def main():
    program = os.path.abspath(sys.argv[1])
    with tempfile.TemporaryDirectory() as folder:
        def at(name):
            return os.path.join(folder, name)

        write_drive(at("drive.csv"))
        limits = ["stretch.km=2.5", "overspeed.rpm=3200", "baseline=off"]
        run(program, "new", at("live.bothways"), *limits)
        took = rehearse(program, folder)
        # The importer: the same sheet, and the same drive, cut by the sheet's times.
        run(program, "export", at("live.bothways"), "--output", at("exported.csv"))
        began = without_recordings(at("exported.csv"), at("sheet.csv"))
        run(program, "new", at("imported.bothways"), *limits)
        run(program, "import", at("imported.bothways"), at("sheet.csv"))
        run(program, "import", at("imported.bothways"), "--trace", at("drive.csv"), "--start",
            began, "--cut", "times")
        live, imported = (told(program, at(study)) for study in
                          ("live.bothways", "imported.bothways"))
        effect = live[0]["headline"]["effect_pct"]
        found = sum(one["rule"] == "overspeed" for one in live[1]["findings"])
        print(f"{RUNS} runs of {RUN_S:.0f} s typed in {took:.1f} s, {SPEED:.0f} times the speed")
        print(f"effect {effect:.3f} %, verdict {live[0]['verdict']['class']}, over-speeds {found}")
        for name, one, other in zip(("analysis", "screening"), live, imported):
            different = [key for key in sorted({*one, *other}) if one.get(key) != other.get(key)]
            print(f"{name}: {'the same' if not different else 'differs in ' + str(different)}")
            if different:
                print(json.dumps([one[different[0]], other[different[0]]])[:2000])
        sys.exit(0 if live == imported and found == len(SPOILED) else 1)


main()
