#!/bin/sh
# Makes the Debian packages of the program as it is in this folder. Usage: sh app/package.sh [--check] [--twice]
#   --check  runs all tests on the way
#   --twice  makes them twice, in two folders, and says whether the bytes are the same
# They are left in build/package, or in the folder $BOTHWAYS_PACKAGE_DIR:
#   bothways_VERSION_ARCH.deb      both programs
#   bothways-cli_VERSION_ARCH.deb  the command line alone, without Qt
#   *-dbgsym_*.deb                 their debug symbols
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later
set -eu
cd "$(dirname "$0")/.."
. app/setup.sh

options=nocheck
twice=""
for word in "$@"; do
    case "$word" in
    --check) options="" ;;
    --twice) twice=yes ;;
    *)
        echo "app/package.sh: '$word' is not --check or --twice" >&2
        exit 2
        ;;
    esac
done
target=${BOTHWAYS_PACKAGE_DIR:-$PWD/build/package}
mkdir -p "$target"
target=$(cd "$target" && pwd)
bothways_log=$target/package.log
: >"$bothways_log"
bothways_packages="$bothways_packages debhelper"
bothways_install

heading=$(grep -m 1 '^## ' resources/CHANGELOG)
version=$(echo "$heading" | sed 's/^## \([0-9.]*\) .*/\1/')

# The change log as Debian has it: one entry a version, each at midnight of its day.
debian_changelog()
{
    maintainer=$(sed -n 's/^Maintainer: //p' app/debian/control.in)
    sign=""
    while IFS= read -r line; do
        case "$line" in
        "## "*)
            [ -z "$sign" ] || printf '\n%s\n\n' "$sign"
            number=$(echo "$line" | sed 's/^## \([0-9.]*\) .*/\1/')
            day=$(echo "$line" | sed 's/.*(\(.*\))$/\1/')
            printf 'bothways (%s) unstable; urgency=medium\n\n' "$number"
            sign=" -- $maintainer  $(LC_ALL=C date -u -R -d "$day")"
            ;;
        "- "*) printf '%s\n' "${line#- }" | fold -s -w 74 | sed 's/ *$//; 1s/^/  * /; 2,$s/^/    /' ;;
        esac
    done <resources/CHANGELOG
    printf '\n%s\n' "$sign"
}

# What a build depends on is what app/setup.sh installs.
debian_control()
{
    list=$(echo $bothways_packages | sed 's/ debhelper//; s/ /, /g')
    sed "s/@BUILD_DEPENDS@/$list/" app/debian/control.in
}

# make_packages FOLDER: from a copy of the sources, so that no build folder of ours is touched or taken in.
make_packages()
{
    source=$1/bothways-$version
    rm -rf "$1"
    mkdir -p "$source"
    tar --exclude=./build --exclude=./.git --exclude=./.ci -cf - . | tar -xf - -C "$source"
    mv "$source/app/debian" "$source/debian"
    debian_changelog >"$source/debian/changelog"
    debian_control >"$source/debian/control"
    rm "$source/debian/control.in"
    (cd "$source" && bothways_quietly env DEB_BUILD_OPTIONS="$options" dpkg-buildpackage -b -us -uc) || return 1
    rm -rf "$source"
}

bothways_say "Making the packages of $version"
make_packages "$target/made" || exit 1
if [ -n "$twice" ]; then
    bothways_say "Making them again"
    make_packages "$target/again/elsewhere" || exit 1
    for package in "$target"/made/*.deb; do
        cmp "$package" "$target/again/elsewhere/${package##*/}" || exit 1
    done
    bothways_say "The bytes are the same"
    rm -rf "$target/again"
fi
rm -f "$target"/*.deb
mv "$target"/made/* "$target"
rmdir "$target/made"
ls -l "$target"/*.deb
