#!/usr/bin/env python3
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later
"""Ends a session as an X11 session manager does (XSMP, by libSM) while a run is being typed, and begins it again.

The program is not allowed to ask anybody, has to be gone, and what it left as the command to start it anew has to open the
same study with what was typed. Usage, under dbus-run-session and Xvfb: session.py PROGRAM STUDY
"""
import ctypes
import os
import select
import subprocess
import sys
import tempfile
import time

import pyatspi

from accessible import application_now, has, walk

PATIENCE_S = 120  # of a busy machine
SAVE_LOCAL, SAVE_BOTH, INTERACT_NONE = 1, 2, 0
TYPED = "8.29"

sm = ctypes.CDLL("libSM.so.6")
ice = ctypes.CDLL("libICE.so.6")
pointer = ctypes.c_void_p


class ArrayItem(ctypes.Structure):
    _fields_ = [("length", ctypes.c_int), ("value", pointer)]


class Property(ctypes.Structure):
    _fields_ = [("name", ctypes.c_char_p), ("type", ctypes.c_char_p), ("count", ctypes.c_int),
                ("values", ctypes.POINTER(ArrayItem))]


class Callback(ctypes.Structure):
    _fields_ = [("function", pointer), ("data", pointer)]


REGISTER = ctypes.CFUNCTYPE(ctypes.c_int, pointer, pointer, ctypes.c_char_p)
SAVED = ctypes.CFUNCTYPE(None, pointer, pointer, ctypes.c_int)
CLOSED = ctypes.CFUNCTYPE(None, pointer, pointer, ctypes.c_int, pointer)
PROPERTIES = ctypes.CFUNCTYPE(None, pointer, pointer, ctypes.c_int, ctypes.POINTER(ctypes.POINTER(Property)))
WITH_INT = ctypes.CFUNCTYPE(None, pointer, pointer, ctypes.c_int)
NAMES = ctypes.CFUNCTYPE(None, pointer, pointer, ctypes.c_int, pointer)
PLAIN = ctypes.CFUNCTYPE(None, pointer, pointer)
NEW_CLIENT = ctypes.CFUNCTYPE(ctypes.c_int, pointer, pointer, pointer, ctypes.POINTER(Callback), pointer)
LOST = ctypes.CFUNCTYPE(None, pointer)
HOST_AUTH = ctypes.CFUNCTYPE(ctypes.c_int, ctypes.c_char_p)

for name, result, arguments in (
        ("SmsInitialize", ctypes.c_int, [ctypes.c_char_p, ctypes.c_char_p, NEW_CLIENT, pointer, HOST_AUTH, ctypes.c_int,
                                         ctypes.c_char_p]),
        ("SmsRegisterClientReply", ctypes.c_int, [pointer, ctypes.c_char_p]),
        ("SmsSaveYourself", None, [pointer, ctypes.c_int, ctypes.c_int, ctypes.c_int, ctypes.c_int]),
        ("SmsSaveComplete", None, [pointer]), ("SmsDie", None, [pointer]),
        ("SmsInteract", None, [pointer]), ("SmFreeProperty", None, [pointer])):
    getattr(sm, name).restype = result
    getattr(sm, name).argtypes = arguments
for name, result, arguments in (
        ("IceListenForConnections", ctypes.c_int, [pointer, pointer, ctypes.c_int, ctypes.c_char_p]),
        ("IceGetListenConnectionNumber", ctypes.c_int, [pointer]),
        ("IceComposeNetworkIdList", ctypes.c_char_p, [ctypes.c_int, pointer]),
        ("IceSetHostBasedAuthProc", None, [pointer, HOST_AUTH]),
        ("IceAcceptConnection", pointer, [pointer, pointer]),
        ("IceConnectionNumber", ctypes.c_int, [pointer]),
        ("IceProcessMessages", ctypes.c_int, [pointer, pointer, pointer]), ("IceSetIOErrorHandler", pointer, [LOST])):
    getattr(ice, name).restype = result
    getattr(ice, name).argtypes = arguments


class Manager:
    """Of one session with one program."""

    def __init__(self):
        self.client = None
        self.saved = 0
        self.interaction_wanted = False
        self.restart = []
        self.connections = []
        self.callbacks = [  # in libSM's order
            REGISTER(self.register), WITH_INT(self.wants_interaction), WITH_INT(lambda *_: None), WITH_INT(lambda *_: None),
            PLAIN(lambda *_: None), SAVED(self.is_saved), CLOSED(lambda *_: None), PROPERTIES(self.takes_properties),
            NAMES(lambda *_: None), PLAIN(lambda *_: None)]
        self.new_client = NEW_CLIENT(self.is_new)
        self.anybody = HOST_AUTH(lambda _: 1)
        self.lost = LOST(lambda _: None)  # libICE would end this program
        ice.IceSetIOErrorHandler(self.lost)
        words = ctypes.create_string_buffer(256)
        if not sm.SmsInitialize(b"bothways tests", b"1", self.new_client, None, self.anybody, 256, words):
            sys.exit(f"session.py: {words.value.decode()}")
        count = ctypes.c_int()
        self.doors = ctypes.POINTER(pointer)()
        if not ice.IceListenForConnections(ctypes.byref(count), ctypes.byref(self.doors), 256, words):
            sys.exit(f"session.py: {words.value.decode()}")
        for i in range(count.value):
            ice.IceSetHostBasedAuthProc(self.doors[i], self.anybody)
        self.door_count = count.value
        self.address = ice.IceComposeNetworkIdList(count.value, self.doors).decode()

    def is_new(self, connection, _data, mask, callbacks, _reason):
        self.client = connection
        ctypes.cast(mask, ctypes.POINTER(ctypes.c_ulong))[0] = (1 << len(self.callbacks)) - 1
        for i, function in enumerate(self.callbacks):
            callbacks[i] = Callback(ctypes.cast(function, pointer), None)
        return 1

    def register(self, connection, _data, previous):
        # The number lives on in the client's next life.
        number = previous or b"1000000000000000000000001"
        self.number = ctypes.create_string_buffer(number)
        sm.SmsRegisterClientReply(connection, number)
        if not previous:
            sm.SmsSaveYourself(connection, SAVE_LOCAL, 0, INTERACT_NONE, 0)
        return 1

    def wants_interaction(self, *_):
        self.interaction_wanted = True

    def is_saved(self, connection, *_):
        self.saved += 1

    def takes_properties(self, _connection, _data, count, properties):
        for i in range(count):
            one = properties[i].contents
            if one.name == b"RestartCommand":
                self.restart = [ctypes.string_at(one.values[k].value, one.values[k].length).decode()
                                for k in range(one.count)]

    def until(self, condition, what):
        end = time.time() + PATIENCE_S
        while not condition():
            if time.time() > end:
                sys.exit(f"session.py: waited in vain: {what}")
            doors = {ice.IceGetListenConnectionNumber(self.doors[i]): self.doors[i] for i in range(self.door_count)}
            talks = {ice.IceConnectionNumber(one): one for one in self.connections}
            for ready in select.select([*doors, *talks], [], [], 0.1)[0]:
                if ready in doors:
                    one = ice.IceAcceptConnection(doors[ready], ctypes.byref(ctypes.c_int()))
                    if one:
                        self.connections.append(one)
                elif ice.IceProcessMessages(talks[ready], None, None) != 0:  # the other side is gone
                    self.connections.remove(talks[ready])


def entry_of_consumption(manager):
    """The field that takes the consumption of the run that is typed."""
    found = []

    def look():
        app = application_now()
        for item in walk(app) if app is not None else ():
            if item.getRole() == pyatspi.ROLE_TEXT and has(item, pyatspi.STATE_SHOWING) and \
                    "consumption" in item.name.lower():
                found.append(item)
                return True
        return False

    manager.until(look, "the field for the consumption is on show")
    return found[0]


def started(manager, command):
    return subprocess.Popen(command, env={**os.environ, "SESSION_MANAGER": manager.address})


def main():
    program, study = sys.argv[1], os.path.abspath(sys.argv[2])
    with tempfile.TemporaryDirectory() as folder:
        manager = Manager()
        settings = os.path.join(folder, "session.ini")
        child = started(manager, [program, "--settings", settings, "--page", "entry", study])
        manager.until(lambda: manager.saved == 1, "the program joins the session")
        entry = entry_of_consumption(manager)
        entry.queryComponent().grabFocus()
        pyatspi.Registry.generateKeyboardEvent(0, TYPED, pyatspi.KEY_STRING)
        manager.until(lambda: entry.queryText().getText(0, -1) == TYPED, "it is typed")
        sm.SmsSaveYourself(manager.client, SAVE_BOTH, 1, INTERACT_NONE, 0)
        manager.until(lambda: manager.saved == 2, "the program has saved what it wants to")
        if study not in manager.restart:
            print(f"what starts it anew does not name the study: {manager.restart}")
            return child.kill() or 1
        sm.SmsDie(manager.client)
        try:
            manager.until(lambda: child.poll() is not None, "the program ends")
        finally:
            child.kill()
        print("ended with the session")
        child = started(manager, manager.restart)
        try:
            manager.until(lambda: entry_of_consumption(manager).queryText().getText(0, -1) == TYPED,
                          "what was typed stands there again")
        finally:
            child.terminate()
            child.wait()
        print("goes on with it in the next session")
    return 0


if __name__ == "__main__":
    sys.exit(main())
