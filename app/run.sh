#!/bin/sh
# Installs what is missing, builds, makes the demo study, and opens it. Usage: sh app/run.sh [STUDY]
# Without a display: prints the demo's verdict and leaves a picture of the main window in a file.
# What the package manager, the compiler and the window have to say is in build/run.log.
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later
set -eu
here=$PWD
cd "$(dirname "$0")/.."
. app/setup.sh

bothways_log=build/run.log
mkdir -p build
: >"$bothways_log"

demo=build/demo/levee_generator.bothways
picture=build/demo/window.png

# Made under another name first: a study that was begun is not taken for one that is whole.
make_demo_study()
{
    [ -f "$demo" ] && return 0
    bothways_say "Making the demo study"
    mkdir -p build/demo
    rm -f build/demo/begun.bothways
    bothways_quietly "$bin/bothways" new build/demo/begun.bothways \
        name="Ram-air generator on the levee road (invented)" \
        baseline=off margin=1 fuel=diesel bearing_deg=75 \
        stretch.km=5 road_speed.target_kmh=90 overspeed.rpm=3200 \
        accessory_change.declared_w=900 accessory_timer.windscreen=600,10
    bothways_quietly "$bin/bothways" import build/demo/begun.bothways sample_data/levee_generator.csv
    mv build/demo/begun.bothways "$demo"
}

no_display()
{
    [ -n "${BOTHWAYS_NO_DISPLAY:-}" ] || { [ -z "${DISPLAY:-}" ] && [ -z "${WAYLAND_DISPLAY:-}" ]; }
}

bothways_install
bothways_build release bothways bothways-desktop
bin=build/release/bin
study=$demo
if [ $# -gt 0 ]; then
    case "$1" in
    /*) study=$1 ;;
    *) study=$here/$1 ;;
    esac
else
    make_demo_study
fi

if no_display; then
    "$bin/bothways" analyse "$study"
    bothways_quietly env QT_QPA_PLATFORM=offscreen "$bin/bothways-desktop" --picture "$picture" "$study"
    echo
    echo "There is no display. A picture of the main window is in $PWD/$picture"
else
    bothways_say "Opening the window"
    bothways_quietly "$bin/bothways-desktop" "$study"
fi
