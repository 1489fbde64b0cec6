#!/bin/sh
# Looks at what is installed as desktops, shells, manual readers and assistive programs do. What needs a tool that is not
# there is skipped and said. Usage: sh tests/package/check.sh BUILD_FOLDER APP_ID [DEB_FOLDER]
#   DEB_FOLDER  with packages that app/package.sh made: those are looked at, too (build/package, if it is there)
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later
set -eu
build=$(cd "$1" && pwd)
app_id=$2
cd "$(dirname "$0")/../.."
debs=${3:-build/package}
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
failed=0
skipped=0
root=$scratch/root

# needs TOOL...: false, with words, where one is missing.
needs()
{
    for tool in "$@"; do
        command -v "$tool" >/dev/null 2>&1 && continue
        echo "skipped: $what ($tool is not here)"
        skipped=$((skipped + 1))
        return 1
    done
}

# passes COMMAND...: its words are shown when it fails.
passes()
{
    if "$@" >"$scratch/said" 2>&1; then
        echo "passed: $what"
        return 0
    fi
    echo "FAILED: $what"
    head -n 40 "$scratch/said" | sed 's/^/    /'
    failed=$((failed + 1))
}

# silent COMMAND...: what says anything has something to complain of.
silent()
{
    "$@" >"$scratch/complaints" 2>&1 || return 1
    cat "$scratch/complaints"
    [ ! -s "$scratch/complaints" ]
}

what="an installation takes DESTDIR and leaves the file system alone"
passes env DESTDIR="$root" cmake --install "$build" --prefix /usr
share=$root/usr/share

all_in_places()
{
    [ -x "$root/usr/bin/bothways" ] && [ -x "$root/usr/bin/bothways-desktop" ] &&
        # nothing beside usr, and no path of the machine that built it in what is read by others
        [ "$(ls "$root")" = usr ] && ! grep -rIl --exclude-dir=bin -e "$build" -e "$PWD" "$root"
}
what="everything is installed below its prefix, without paths of the build"
passes all_in_places

what="desktop entry"
needs desktop-file-validate && passes silent desktop-file-validate "$share/applications/bothways.desktop"

# Width and height stand at byte 16 of a PNG.
icons_fit()
{
    for size in 16 22 24 32 48; do
        icon=$share/icons/hicolor/${size}x$size/apps/bothways.png
        sides=$(od -A n -t u1 -j 16 -N 8 "$icon" | tr -s ' ')
        [ "$sides" = " 0 0 0 $size 0 0 0 $size" ] || {
            echo "$icon: $sides"
            return 1
        }
    done
    [ -f "$share/icons/hicolor/scalable/apps/bothways.svg" ] &&
        [ -f "$share/icons/hicolor/scalable/mimetypes/application-x-bothways-study.svg" ]
}
what="an icon of each size, and of studies"
passes icons_fit

what="thumbnailer names the program's own option"
passes grep -q -- "--thumbnail %o" "$share/thumbnailers/bothways.thumbnailer"

what="metainfo"
metainfo=$share/metainfo/$app_id.metainfo.xml
needs appstreamcli && passes appstreamcli validate --strict --no-net "$metainfo"

# With addresses, which the project has not: under the reserved domain .invalid.
with_addresses()
{
    place=$scratch/addresses
    mkdir -p "$place" && cp resources/CHANGELOG resources/bothways.metainfo.xml.in resources/metainfo.cmake "$place" &&
        (cd "$place" && cmake -DBOTHWAYS_HOMEPAGE_URL=https://bothways.invalid/ -DBOTHWAYS_APP_ID="$app_id" \
            -DBOTHWAYS_PICTURES_URL=https://bothways.invalid/pictures -P metainfo.cmake) &&
        grep -q screenshots "$place/$app_id.metainfo.xml" && grep -q homepage "$place/$app_id.metainfo.xml" &&
        appstreamcli validate --strict --no-net "$place/$app_id.metainfo.xml"
}
what="metainfo with pictures and a home page"
needs appstreamcli && passes with_addresses
what="pictures that the metainfo names are in the repository"
passes test -f resources/pictures/main_window.png -a -f resources/pictures/roadside.png

# The type of a study is known by its content, whatever it is called; a database of somebody else is not one.
type_is_known()
{
    mkdir -p "$scratch/data/mime/packages" && cp "$share/mime/packages/bothways.xml" "$scratch/data/mime/packages/" &&
        XDG_DATA_HOME="$scratch/data" update-mime-database "$scratch/data/mime" || return 1
    "$build/bin/bothways" new "$scratch/study.bothways" >/dev/null && cp "$scratch/study.bothways" "$scratch/nameless"
    for file in study.bothways nameless; do
        type=$(XDG_DATA_HOME="$scratch/data" gio info -a standard::content-type "$scratch/$file")
        echo "$type" | grep -q application/x-bothways-study || {
            echo "$file: $type"
            return 1
        }
    done
}
what="MIME type of a study, by name and by content"
needs update-mime-database gio && passes type_is_known

manuals_are_clean()
{
    find "$share/man" -type f >"$scratch/pages" && [ "$(wc -l <"$scratch/pages")" -eq 8 ] || return 1
    while IFS= read -r page; do
        silent "$@" "$page" || return 1
    done <"$scratch/pages"
}
what="manual pages for mandoc"
needs mandoc && passes manuals_are_clean mandoc -Tlint -Wstyle
groff_reads()
{
    LC_ALL=C.UTF-8 MANROFFSEQ="" MANWIDTH=80 man --warnings -E UTF-8 -l -Tutf8 -Z "$1" 2>&1 >/dev/null
}
what="manual pages for groff"
needs man && passes manuals_are_clean groff_reads

handbook_is_whole()
{
    for page in resources/help/*.md; do
        name=$(basename "$page" .md)
        [ -f "$share/doc/bothways/handbook/$name.html" ] && [ -f "$share/doc/bothways/handbook/de/$name.html" ] || {
            echo "$name is missing"
            return 1
        }
    done
}
what="the handbook has every page in both languages"
passes handbook_is_whole

what="completion in bash, zsh and fish"
needs python3 bash zsh fish && passes python3 tests/package/shells.py "$build/bin" resources/completions

# on_screen SCRIPT STUDY WORD...: a script of tests/package for assistive programs, on a new study, with a screen of its own.
on_screen()
{
    script=$1
    study=$scratch/$2.bothways
    shift 2
    "$build/bin/bothways" new "$study" stretch.km=5 &&
        "$build/bin/bothways" import "$study" sample_data/levee_generator.csv >/dev/null &&
        HOME="$scratch" XDG_RUNTIME_DIR="$scratch" QT_LINUX_ACCESSIBILITY_ALWAYS_ON=1 QT_QPA_PLATFORM=xcb LC_ALL=C.UTF-8 \
            xvfb-run -a -s "-screen 0 1600x1000x24" dbus-run-session -- \
            "$python" "tests/package/$script" "$build/bin/bothways-desktop" "$study" "$@"
}

# Every page that the program says it has, and the dialogs that are no pages.
assisted()
{
    pages=$(QT_QPA_PLATFORM=offscreen LC_ALL=C "$build/bin/bothways-desktop" --settings "$scratch/none.ini" --page nowhere 2>&1 |
        sed -n 's/.*expected one of //p' | tr -d ',')
    [ -n "$pages" ] || return 1
    printf '%s\n' "Konfiguration,Richtung,Start,Ergebnis" "A,hin,2026-05-09T05:40:00,8.41" >"$scratch/unknown.csv"
    # shellcheck disable=SC2086
    on_screen accessible.py assisted $pages \
        "runs > Keys" "runs > About Bothways" "runs > Names in all runs…" "runs > Compare studies…" "runs > Rig…" \
        "runs > Hide consumption until the discards are settled" "runs > Rehearse with the demo drive" \
        "findings > *not checked" "recordings.list > Cut into runs…" "recordings.list > Drop…" \
        "runs > Import a run sheet… > File name:=$scratch/unknown.csv > Open" \
        "runs > Import a recording… > File name:=$PWD/sample_data/levee_generator_traces/run_01.csv > Open"
}
what="names, roles and keys in the tree for assistive programs"
if [ -n "${BOTHWAYS_PACKAGE_QUICK:-}" ]; then
    echo "skipped: $what (BOTHWAYS_PACKAGE_QUICK is set: it opens the window once for each page)"
    skipped=$((skipped + 1))
elif needs python3 xvfb-run dbus-run-session xauth; then
    python=python3
    "$python" -c 'import pyatspi' 2>/dev/null || python=/usr/bin/python3 # Debian's, where another stands before it
    if "$python" -c 'import pyatspi' 2>/dev/null; then
        passes assisted
        grep -E ': [0-9]+ controls|^  ' "$scratch/said" | sed 's/^/    /' || true
        what="a session that ends while a run is typed, and goes on with it"
        passes on_screen session.py session
    else
        echo "skipped: $what (python3-pyatspi is not here)"
        skipped=$((skipped + 1))
    fi
fi

# hardened PROGRAM...: at a random address, its tables read only, all bound at the start, with guards on the stack and in the
# C library's copying.
hardened()
{
    for program in "$@"; do
        readelf -h "$program" | grep -q "Type: *DYN" && readelf -lW "$program" | grep -q GNU_RELRO &&
            readelf -lW "$program" | grep "GNU_STACK" | grep -q "RW " &&
            readelf -dW "$program" | grep -q "FLAGS_1.*NOW.*PIE" &&
            readelf -sW --dyn-syms "$program" >"$scratch/symbols" && grep -q __stack_chk_fail "$scratch/symbols" &&
            grep -q "__[a-z]*_chk@" "$scratch/symbols" || {
            echo "$program is not hardened in every way"
            return 1
        }
    done
}

packages_are_hardened()
{
    for package in "$debs"/bothways_*.deb "$debs"/bothways-cli_*.deb; do
        rm -rf "$scratch/unpacked"
        dpkg-deb -x "$package" "$scratch/unpacked" && hardened "$scratch/unpacked"/usr/bin/* || return 1
    done
}

if ls "$debs"/bothways_*.deb >/dev/null 2>&1; then
    what="programs in the packages are hardened"
    needs readelf dpkg-deb && passes packages_are_hardened
    what="packages for lintian"
    needs lintian && passes lintian --pedantic --fail-on error,warning --allow-root "$debs"/bothways_*.changes
    what="packages installed, run, upgraded and removed in a bare root"
    if [ "$(id -u)" -ne 0 ]; then
        echo "skipped: $what (it needs root)"
        skipped=$((skipped + 1))
    elif needs mmdebstrap chroot dpkg-deb; then
        passes sh tests/package/bare_root.sh "$debs"
    fi
else
    echo "skipped: packages (sh app/package.sh makes them in build/package)"
    skipped=$((skipped + 1))
fi

echo "$failed failed, $skipped skipped"
[ "$failed" -eq 0 ]
