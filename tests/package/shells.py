#!/usr/bin/env python3
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later
"""Types into bash, zsh and fish, presses tab, and reads what they made of it. Usage: shells.py BIN COMPLETIONS"""
import os
import pty
import select
import signal
import subprocess
import sys
import tempfile
import time

# What is typed before the tab, and what stands there after it.
CASES = [
    ("bothways overr", "bothways overrule "),
    ("bothways analyse --marg", "--margin "),
    ("bothways edit day.bothways 7 configuration=B_", "configuration=B_generator "),
    ("bothways edit day.bothways 7 wind_m", "wind_ms="),
    ("bothways analyse own.csv --column Verb", "Verbrauch="),
    ("bothways analyse own.csv --column Verbrauch=km_", "Verbrauch=km_per_l "),
    ("bothways screen da", "day.bothways "),
    ("bothways analyse my", "my\\ sheet.csv "),
]


def typed(shell, before, text, folder, path):
    """What the terminal shows when `text` and a tab were typed."""
    pid, terminal = pty.fork()
    if pid == 0:
        os.chdir(folder)
        os.environ.update(PATH=path, TERM="dumb", PS1="$ ", HOME=folder, LC_ALL="C.UTF-8")
        os.execvp(shell[0], shell)
    shown = b""

    def read(until, seconds):
        nonlocal shown
        end = time.time() + seconds
        while time.time() < end and not (until and until in shown):
            if select.select([terminal], [], [], 0.1)[0]:
                try:
                    shown += os.read(terminal, 65536)
                except OSError:
                    return

    os.write(terminal, before.encode() + b"\necho rea''dy\n")
    read(b"ready", 20)
    read(None, 0.5)
    shown = b""
    os.write(terminal, text[0].encode() + b"\t")
    read(text[1].encode(), 10)
    os.kill(pid, signal.SIGKILL)
    os.waitpid(pid, 0)
    os.close(terminal)
    return shown.decode(errors="replace")


def in_terminals(folder, completions, path):
    shells = {
        "bash": (["bash", "--norc", "-i"], f". {completions}/bothways.bash"),
        "zsh": (["zsh", "-f", "-i"], f"fpath=({completions} $fpath); autoload -U compinit; compinit -u -D"),
    }
    bad = 0
    for name, (command, before) in shells.items():
        for case in CASES:
            shown = typed(command, before, case, folder, path)
            if case[1].rstrip() not in shown.replace("\x08", ""):
                print(f"{name}: '{case[0]}' became {shown!r}, expected '{case[1]}'")
                bad += 1
    return bad


def in_fish(folder, completions, path):
    """fish says what it would offer."""
    bad = 0
    for text, after in CASES:
        ran = subprocess.run(
            ["fish", "-c", f"source {completions}/bothways.fish; complete -C '{text}'"], cwd=folder, text=True,
            capture_output=True, env={**os.environ, "PATH": path, "HOME": folder}, check=False)
        wanted = after.removeprefix("bothways ").strip().replace("\\ ", " ")
        offered = [line.split("\t")[0] for line in ran.stdout.splitlines()]
        if wanted not in offered:
            print(f"fish: '{text}' offers {offered[:5]}, expected '{wanted}'; {ran.stderr[:300]}")
            bad += 1
    return bad


def main():
    programs, completions = (os.path.abspath(word) for word in sys.argv[1:])
    path = programs + os.pathsep + os.environ["PATH"]
    with tempfile.TemporaryDirectory() as folder:
        with open(os.path.join(folder, "own.csv"), "w", encoding="utf-8") as sheet:
            sheet.write("Konfiguration,Richtung,Start,Verbrauch\nA,hin,2026-05-09T05:40:00,8.41\n"
                        "A,her,2026-05-09T05:50:00,8.31\n")
        with open(os.path.join(folder, "my sheet.csv"), "w", encoding="utf-8") as sheet:
            sheet.write("configuration,direction,start,l_per_100km\nA,out,2026-05-09T05:40:00,8.41\n"
                        "A,return,2026-05-09T05:50:00,8.31\nB_generator,out,2026-05-09T06:40:00,8.51\n"
                        "B_generator,return,2026-05-09T06:50:00,8.21\nA,out,2026-05-09T07:40:00,8.4\n"
                        "A,return,2026-05-09T07:50:00,8.3\nA,out,2026-05-09T08:00:00,8.3\n")
        program = os.path.join(programs, "bothways")
        for words in (["new", "day.bothways"], ["import", "day.bothways", "my sheet.csv"]):
            subprocess.run([program, *words], cwd=folder, check=True, stdout=subprocess.DEVNULL)
        return 1 if in_terminals(folder, completions, path) + in_fish(folder, completions, path) else 0


if __name__ == "__main__":
    sys.exit(main())
