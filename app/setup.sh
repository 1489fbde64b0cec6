# Sourced by app/run.sh and tests/run.sh: installs what is missing on Debian 12, and builds. Nothing else is fetched.
# With $bothways_log set, the terminal gets a line a step, and that file all that the tools say.
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later

bothways_log=""
bothways_packages="
    cmake g++ ninja-build
    qt6-base-dev qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools libqcustomplot-dev libqt6svg6
    qt6-multimedia-dev libgl-dev fonts-dejavu-core
    libsqlitecpp-dev libsqlite3-dev libboost-dev libeigen3-dev libfast-float-dev libcli11-dev libfmt-dev
    nlohmann-json3-dev libzstd-dev libzip-dev libexpat1-dev libmodbus-dev libgtest-dev libgmock-dev
"

# What tests/package/check.sh looks at the program with; what is not there is skipped, and said.
bothways_check_packages="
    appstream at-spi2-core dbus desktop-file-utils fish libglib2.0-bin lintian man-db mandoc python3 python3-pyatspi
    shared-mime-info xauth xvfb zsh
"

bothways_say()
{
    echo "$*" >&2
    [ -z "$bothways_log" ] || echo "== $*" >>"$bothways_log"
}

# bothways_quietly COMMAND...: what it says goes to the log; the end of that is shown when it fails.
bothways_quietly()
{
    if [ -z "$bothways_log" ]; then
        "$@" >&2
        return
    fi
    "$@" >>"$bothways_log" 2>&1 && return 0
    bothways_show_log
    return 1
}

bothways_show_log()
{
    {
        echo
        # Of a build that failed: what the compiler did not like, which may be far above the end.
        grep -E '^FAILED: |(error|Error): ' "$bothways_log" | head -n 10 || true
        echo "The last lines of $PWD/$bothways_log:"
        tail -n 30 "$bothways_log"
        echo
        echo "That failed. All of it is in $PWD/$bothways_log"
    } >&2
}

bothways_install()
{
    missing=""
    count=0
    for package in $bothways_packages; do
        state=$(dpkg-query -W -f='${Status}' "$package" 2>/dev/null) || state=""
        if [ "$state" != "install ok installed" ]; then
            missing="$missing $package"
            count=$((count + 1))
        fi
    done
    [ "$count" -gt 0 ] || return 0
    [ -z "$bothways_log" ] || echo "==$missing" >>"$bothways_log"
    bothways_say "Installing $count packages and what they need"
    as_root=""
    if [ "$(id -u)" -ne 0 ]; then
        command -v sudo >/dev/null 2>&1 || {
            echo "These packages are missing, and sudo is not here to install them:$missing" >&2
            return 1
        }
        as_root="sudo"
    fi
    bothways_quietly $as_root apt-get update -qq &&
        # shellcheck disable=SC2086
        bothways_quietly $as_root env DEBIAN_FRONTEND=noninteractive \
            apt-get install -y -qq --no-install-recommends $missing
}

# Copies what the build says into the log; on a terminal, counts beside the step how far it is.
bothways_count()
{
    while IFS= read -r line; do
        printf '%s\n' "$line" >>"$bothways_log"
        case "$line" in
        "["[0-9]*/*"] "*)
            part=${line%%"]"*}
            [ -t 2 ] && printf '\r%s: %s ' "$1" "${part#"["}" >&2
            ;;
        esac
    done
    [ -t 2 ] && printf '\n' >&2
    return 0
}

# bothways_build PRESET [TARGET...]: configures where that is due, then builds what changed.
bothways_build()
{
    preset=$1
    shift
    if [ ! -f "build/$preset/build.ninja" ] ||
        [ -n "$(find CMakePresets.json -newer "build/$preset/build.ninja")" ]; then
        bothways_say "Configuring"
        bothways_quietly cmake --preset "$preset" || return 1
    fi
    [ $# -eq 0 ] || set -- --target "$@"
    if [ -z "$bothways_log" ]; then
        cmake --build --preset "$preset" "$@" >&2
        return
    fi
    bothways_say "Building (the first time for some minutes)"
    rm -f "$bothways_log.failed"
    { cmake --build --preset "$preset" "$@" 2>&1 || : >"$bothways_log.failed"; } | bothways_count "Building"
    [ -f "$bothways_log.failed" ] || return 0
    rm -f "$bothways_log.failed"
    bothways_show_log
    return 1
}
