# Sourced by app/run.sh and tests/run.sh: installs what is missing on Debian 12. Nothing else is fetched.
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later

bothways_packages="
    cmake g++ ninja-build
    qt6-base-dev qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools libqcustomplot-dev libqt6svg6
    libgl-dev fonts-dejavu-core
    libsqlitecpp-dev libsqlite3-dev libboost-dev libeigen3-dev libfast-float-dev libcli11-dev libfmt-dev
    nlohmann-json3-dev libzstd-dev libgtest-dev libgmock-dev
"

bothways_install()
{
    missing=""
    for package in $bothways_packages; do
        state=$(dpkg-query -W -f='${Status}' "$package" 2>/dev/null) || state=""
        [ "$state" = "install ok installed" ] || missing="$missing $package"
    done
    [ -z "$missing" ] && return 0
    echo "Installing:$missing" >&2
    as_root=""
    if [ "$(id -u)" -ne 0 ]; then
        command -v sudo >/dev/null 2>&1 || {
            echo "These packages are missing, and sudo is not here to install them:$missing" >&2
            return 1
        }
        as_root="sudo"
    fi
    $as_root apt-get update -qq &&
        # shellcheck disable=SC2086
        $as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $missing >&2
}

# bothways_build PRESET [TARGET...]: configures once, then builds what changed.
bothways_build()
{
    preset=$1
    shift
    [ -f "build/$preset/build.ninja" ] || cmake --preset "$preset" >&2 || return 1
    [ $# -eq 0 ] || set -- --target "$@"
    cmake --build --preset "$preset" "$@" >&2
}
