#!/bin/sh
# Installs the packages in a bare Debian root, runs them, upgrades them from the version before, puts one in the place of
# the other, removes them, and looks for what is left. Needs root, mmdebstrap and the Debian archive.
# Usage: sh tests/package/bare_root.sh DEB_FOLDER
#   BOTHWAYS_BARE_ROOT    a bare root that is copied, in place of one that mmdebstrap makes
#   BOTHWAYS_DEB_BEFORE   the package of the version before; without it: the same one under a lower number
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later
set -eu
debs=$(cd "$1" && pwd)
scratch=$(mktemp -d)
root=$scratch/root
cleanup()
{
    for place in proc dev; do
        umount "$root/$place" 2>/dev/null || true
    done
    rm -rf --one-file-system "$scratch"
}
trap cleanup EXIT

if [ -n "${BOTHWAYS_BARE_ROOT:-}" ]; then
    cp -a --one-file-system "$BOTHWAYS_BARE_ROOT" "$root"
else
    mmdebstrap --quiet --variant=apt bookworm "$root"
fi
mount -t proc proc "$root/proc"
cp /etc/resolv.conf "$root/etc/resolv.conf" 2>/dev/null || true
mkdir -p "$root/debs" "$root/before"
cp "$debs"/*.deb "$root/debs/"
within()
{
    chroot "$root" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LC_ALL=C.UTF-8 \
        DEBIAN_FRONTEND=noninteractive QT_QPA_PLATFORM=offscreen XDG_RUNTIME_DIR=/tmp "$@"
}

full=$(cd "$root/debs" && ls bothways_*.deb)
alone=$(cd "$root/debs" && ls bothways-cli_*.deb)
if [ -n "${BOTHWAYS_DEB_BEFORE:-}" ]; then
    cp "$BOTHWAYS_DEB_BEFORE" "$root/before/$full"
else
    dpkg-deb -R "$root/debs/$full" "$scratch/before"
    sed -i 's/^Version: .*/Version: 0.0.1/' "$scratch/before/DEBIAN/control"
    dpkg-deb --root-owner-group -b "$scratch/before" "$root/before/$full" >/dev/null
fi

within apt-get update -qq
# What the packages need comes first, so that only they make the difference below.
within apt-get install -y -qq --no-install-recommends "/debs/$full" >/dev/null
within apt-get purge -y -qq bothways >/dev/null
list() { (cd "$root" && find etc usr var/lib opt srv root home -xdev | grep -v '^var/lib/\(apt\|dpkg\)' | sort); }
list >"$scratch/bare"

echo "== installed: the version before, then this one over it"
within apt-get install -y -qq --no-install-recommends "/before/$full" >/dev/null
within sh -c 'cd /root && bothways new mine.bothways && bothways import mine.bothways /usr/share/bothways/sample_data/tyre_pressure.csv' >/dev/null
within apt-get install -y -qq --no-install-recommends "/debs/$full" >/dev/null
within dpkg-query -W bothways

echo "== run on the demo, and on the study that the version before made"
within bothways analyse /usr/share/bothways/sample_data/levee_generator.csv | head -n 3
within bothways analyse /root/mine.bothways >/dev/null
within bothways-desktop --demo --picture /root/window.png
within bothways-desktop --thumbnail /root/small.png --size 64 /root/mine.bothways
for file in window.png small.png; do
    head -c 4 "$root/root/$file" | grep -q PNG
    rm "$root/root/$file"
done
test -f "$root/usr/share/doc/bothways/handbook/index.html"

echo "== the command line in the place of both"
within apt-get install -y -qq --no-install-recommends "/debs/$alone" >/dev/null
within bothways analyse /root/mine.bothways >/dev/null
if within dpkg-query -W -f='${Status}' bothways 2>/dev/null | grep "ok installed"; then
    exit 1
fi
within sh -c 'dpkg-query -W -f="\${Depends}" bothways-cli' | grep -i qt && exit 1

echo "== removed: what is left is the user's"
within apt-get purge -y -qq bothways-cli bothways >/dev/null 2>&1 || within apt-get purge -y -qq bothways-cli >/dev/null
list >"$scratch/after"
diff "$scratch/bare" "$scratch/after" >"$scratch/left" || true
grep '^[<>]' "$scratch/left" | grep -v '^> root/mine.bothways$' | grep -v '^> root/\.\(cache\|config\|local\)' && exit 1
test -f "$root/root/mine.bothways"
echo "nothing else is left"
