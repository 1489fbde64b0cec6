#!/bin/sh
# Installs what is missing, builds, runs all tests. Usage: sh tests/run.sh [release|debug|ci|sanitize]
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later
set -eu
cd "$(dirname "$0")/.."
. app/setup.sh

preset="${1:-release}"
case "$preset" in
release | debug | ci | sanitize) ;;
*)
    echo "tests/run.sh: '$preset' is no preset: expected release, debug, ci or sanitize" >&2
    exit 2
    ;;
esac
bothways_install
bothways_build "$preset"
ctest --preset "$preset"
if [ "$preset" = ci ]; then
    bothways_packages=$bothways_check_packages
    bothways_install || echo "tests/run.sh: some tools for the package are missing; what needs them is skipped" >&2
    BOTHWAYS_PACKAGE_QUICK=1 cmake --build --preset ci --target package_check
fi
