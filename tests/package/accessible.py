#!/usr/bin/env python3
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later
"""Walks the tree that a screen reader sees (AT-SPI) of bothways-desktop on a study, page by page.

Every control that is shown has a name and a role, and can be reached without a mouse: it takes the keyboard, or a menu
has the same command, or a key that it names. Usage, under dbus-run-session and Xvfb: accessible.py PROGRAM STUDY PAGE...

A page is what --page names, or 'roadside', or one of these and what is pressed there to come to a dialog, as a screen reader
presses it: 'runs > Keys', 'recordings.list > Cut into runs…'. '*words' is what has these words in its name; a text after '='
is written into a field: 'runs > Import a recording… > File name:=/tmp/drive.csv > Open'.
"""
import os
import re
import subprocess
import sys
import tempfile
import time
from typing import NamedTuple

import pyatspi
from gi.repository import Atspi

Atspi.set_timeout(30000, 60000)  # ms: of a busy machine

CONTROLS = {
    pyatspi.ROLE_PUSH_BUTTON, pyatspi.ROLE_TOGGLE_BUTTON, pyatspi.ROLE_CHECK_BOX, pyatspi.ROLE_RADIO_BUTTON,
    pyatspi.ROLE_COMBO_BOX, pyatspi.ROLE_ENTRY, pyatspi.ROLE_SPIN_BUTTON, pyatspi.ROLE_SLIDER, pyatspi.ROLE_LIST,
    pyatspi.ROLE_TABLE, pyatspi.ROLE_TREE, pyatspi.ROLE_TREE_TABLE, pyatspi.ROLE_PAGE_TAB_LIST, pyatspi.ROLE_PAGE_TAB,
    pyatspi.ROLE_MENU_ITEM, pyatspi.ROLE_MENU, pyatspi.ROLE_TEXT, pyatspi.ROLE_PASSWORD_TEXT, pyatspi.ROLE_LINK,
    pyatspi.ROLE_CHECK_MENU_ITEM, pyatspi.ROLE_RADIO_MENU_ITEM,
}
# Reached through what holds them: arrows in a row of tabs, Alt and arrows in menus.
WITHIN = {
    pyatspi.ROLE_PAGE_TAB, pyatspi.ROLE_MENU_ITEM, pyatspi.ROLE_MENU, pyatspi.ROLE_CHECK_MENU_ITEM,
    pyatspi.ROLE_RADIO_MENU_ITEM,
}
CELLS = {pyatspi.ROLE_TABLE, pyatspi.ROLE_TREE, pyatspi.ROLE_TREE_TABLE, pyatspi.ROLE_LIST}


class Looked(NamedTuple):
    controls: int  # that are shown
    take_keys: int  # of these, those where a keyboard can stand; the rest is reached through tabs and menus
    faults: frozenset

    def and_also(self, other):
        return Looked(self.controls + other.controls, self.take_keys + other.take_keys, self.faults | other.faults)


def plain(name):
    return name.replace("&", "").replace("…", "").strip().lower()


def has(item, state):
    return item.getState().contains(state)


def walk(item, depth=0):
    """Everything that is shown, but for the cells of tables, which have the table's name."""
    yield item
    if depth > 40 or item.getRole() in CELLS:
        return
    for i in range(min(item.childCount, 400)):
        child = item.getChildAtIndex(i)
        if child is not None:
            yield from walk(child, depth + 1)


def menu_names(window):
    names = set()
    for item in walk(window):
        if item.getRole() in WITHIN and item.getRole() != pyatspi.ROLE_PAGE_TAB:
            names.add(plain(item.name))
    return names


def where(item):
    names = []
    while item is not None and item.getRole() != pyatspi.ROLE_APPLICATION and len(names) < 6:
        names.append(f"{item.getRoleName()} '{item.name}'")
        item = item.parent
    return " in ".join(names)


def names_a_key(item):
    """As in "The run starts now (Ctrl+N)"."""
    return re.search(r"\((?:(?:Ctrl|Alt|Shift)\+)*(?:F\d+|[A-Z]|[A-Z][a-z]+)\)$", item.description or item.name) is not None


def is_a_sign(item):
    """In a field, to be read; or its ×, which does what the keyboard does there."""
    return item.parent is not None and item.parent.getRole() in (pyatspi.ROLE_TEXT, pyatspi.ROLE_ENTRY)


def is_outside(item, window):
    """Qt keeps the tabs of docks that are hidden beyond the window's edge, where nobody sees them."""
    there, here = (one.queryComponent().getExtents(0) for one in (item, window))
    return there.x + there.width <= here.x or there.y + there.height <= here.y


def faults_of(window):
    menus = menu_names(window)
    faults = set()
    seen = take_keys = 0
    for item in walk(window):
        role = item.getRole()
        # The handle between two panes, and the corner that a dialog is resized by, have a role in Qt for which AT-SPI has none.
        handle = item.parent is not None and item.parent.getRole() in (pyatspi.ROLE_SPLIT_PANE, pyatspi.ROLE_DIALOG)
        shown = has(item, pyatspi.STATE_SHOWING)
        if role in (pyatspi.ROLE_INVALID, pyatspi.ROLE_UNKNOWN) and shown and not handle:
            faults.add(f"no role: {where(item)}")
        if role not in CONTROLS or not shown:
            continue
        if role == pyatspi.ROLE_PAGE_TAB_LIST and is_outside(item, window):
            continue
        seen += 1
        if not item.name.strip():
            faults.add(f"no name: {where(item)}")
        take_keys += has(item, pyatspi.STATE_FOCUSABLE)
        if role in WITHIN or not has(item, pyatspi.STATE_ENABLED) or has(item, pyatspi.STATE_FOCUSABLE):
            continue
        if not (plain(item.name) in menus or names_a_key(item) or is_a_sign(item)):
            faults.add(f"only a mouse reaches it: {where(item)}")
    return Looked(seen, take_keys, frozenset(faults))


def application_now():
    desktop = pyatspi.Registry.getDesktop(0)
    for i in range(desktop.childCount):
        one = desktop.getChildAtIndex(i)
        if one is not None and "bothways" in one.name.lower() and one.childCount > 0:
            return one
    return None


def application():
    for _ in range(600):
        app = application_now()
        if app is not None:
            return app
        time.sleep(0.1)
    sys.exit("accessible.py: the program does not appear among those that can be assisted")


def windows_of(app):
    found = (app.getChildAtIndex(i) for i in range(app.childCount))
    return [window for window in found if window is not None]


def look_once(app):
    all_of_it = Looked(0, 0, frozenset())
    for window in windows_of(app):
        all_of_it = all_of_it.and_also(faults_of(window))
    return all_of_it


def what_is_shown(app):
    return {(item.getRole(), item.name) for window in windows_of(app) for item in walk(window)}


def settled(look_at):
    """What it says when it has said so twice: the answer is computed, and what follows it laid out."""
    before = None
    for _ in range(60):
        time.sleep(1.0)
        now = look_at()
        if now is not None and now == before:
            return now
        before = now
    return before


def control(app, name, roles):
    """The one that is shown or in a menu; the newest window is asked first."""
    for window in reversed(windows_of(app)):
        for item in walk(window):
            called = plain(name[1:]) in plain(item.name) if name.startswith("*") else plain(item.name) == plain(name)
            shown = has(item, pyatspi.STATE_SHOWING) or item.getRole() in WITHIN
            if called and shown and item.getRole() in roles and has(item, pyatspi.STATE_ENABLED):
                return item
    return None


def take(app, step):
    """Presses what is called so, or writes into it."""
    name, written, text = step.partition("=")
    roles = {pyatspi.ROLE_TEXT, pyatspi.ROLE_ENTRY} if written else CONTROLS
    item = None
    for _ in range(60):
        item = control(app, name, roles)
        if item is not None:
            break
        time.sleep(0.5)
    else:
        sys.exit(f"accessible.py: there is no '{name}' to be pressed")
    if written:
        item.queryEditableText().setTextContents(text)
        return
    Atspi.set_timeout(3000, 60000)
    try:
        item.queryAction().doAction(0)
    except Exception:  # a dialog that waits within the press answers it later
        pass
    Atspi.set_timeout(30000, 60000)


def look(program, study, way, settings):
    page, *steps = (step.strip() for step in way.split(" > "))
    child = subprocess.Popen([program, "--settings", settings, *arguments_for(page), study])
    try:
        app = application()
        now = settled(lambda: look_once(app))
        for step in steps:
            before = what_is_shown(app)
            take(app, step)
            now = settled(lambda: look_once(app))
            if "=" not in step and what_is_shown(app) == before:
                now = now.and_also(Looked(0, 0, frozenset([f"nothing came of '{step}'"])))
        return now
    finally:
        child.kill() if steps else child.terminate()
        child.wait()


def arguments_for(page):
    return ["--roadside"] if page == "roadside" else ["--page", page]


def main():
    program, study, *pages = sys.argv[1:]
    bad = 0
    with tempfile.TemporaryDirectory() as folder:
        for i, page in enumerate(pages):
            seen, take_keys, faults = look(program, study, page, os.path.join(folder, f"{i}.ini"))
            print(f"{page}: {seen} controls, {take_keys} take the keyboard, {len(faults)} faults", flush=True)
            for fault in sorted(faults):
                print(f"  {fault}")
            bad += len(faults)
            if seen < 10:
                print(f"  {page}: too few controls were seen to say anything")
                bad += 1
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
