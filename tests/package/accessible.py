#!/usr/bin/env python3
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later
"""Walks the tree that a screen reader sees (AT-SPI) of bothways-desktop on a study, page by page.

Every control that is shown has a name and a role, and can be reached without a mouse: it takes the keyboard, or a menu
has the same command, or a key that it names. Usage, under dbus-run-session and Xvfb: accessible.py PROGRAM STUDY PAGE...
"""
import os
import subprocess
import sys
import tempfile
import time

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


def faults_of(window):
    menus = menu_names(window)
    faults = set()
    seen = 0
    for item in walk(window):
        role = item.getRole()
        # The handle between two panes has a role in Qt for which AT-SPI has none; what lies in the panes has.
        handle = item.parent is not None and item.parent.getRole() == pyatspi.ROLE_SPLIT_PANE
        if role in (pyatspi.ROLE_INVALID, pyatspi.ROLE_UNKNOWN) and not handle:
            faults.add(f"no role: {where(item)}")
        if role not in CONTROLS or not has(item, pyatspi.STATE_SHOWING):
            continue
        seen += 1
        if not item.name.strip():
            faults.add(f"no name: {where(item)}")
        if role in WITHIN or not has(item, pyatspi.STATE_ENABLED) or has(item, pyatspi.STATE_FOCUSABLE):
            continue
        if plain(item.name) not in menus:
            faults.add(f"only a mouse reaches it: {where(item)}")
    return seen, faults


def application():
    for _ in range(100):
        desktop = pyatspi.Registry.getDesktop(0)
        for i in range(desktop.childCount):
            one = desktop.getChildAtIndex(i)
            if one is not None and "bothways" in one.name.lower() and one.childCount > 0:
                return one
        time.sleep(0.1)
    sys.exit("accessible.py: the program does not appear among those that can be assisted")


def look_once(app):
    seen = 0
    faults = set()
    for i in range(app.childCount):
        window = app.getChildAtIndex(i)
        if window is not None:
            more, found = faults_of(window)
            seen += more
            faults |= found
    return seen, faults


def look(program, study, page, settings):
    child = subprocess.Popen([program, "--settings", settings, *arguments_for(page), study])
    try:
        app = application()
        before = None
        for _ in range(20):  # until the answer is computed, and what follows it is laid out
            time.sleep(1.0)
            now = look_once(app)
            if now == before:
                break
            before = now
        return now
    finally:
        child.terminate()
        child.wait()


def arguments_for(page):
    return ["--roadside"] if page == "roadside" else ["--page", page]


def main():
    program, study, *pages = sys.argv[1:]
    bad = 0
    with tempfile.TemporaryDirectory() as folder:
        for page in pages:
            seen, faults = look(program, study, page, os.path.join(folder, f"{page}.ini"))
            print(f"{page}: {seen} controls, {len(faults)} faults")
            for fault in sorted(faults):
                print(f"  {fault}")
            bad += len(faults)
            if seen < 10:
                print(f"  {page}: too few controls were seen to say anything")
                bad += 1
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
