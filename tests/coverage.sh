#!/bin/sh
# Which lines and branches of core/ and storage/ the tests run: a table by room, and every line that they do not.
# Needs gcov, which comes with the compiler. Usage: sh tests/coverage.sh, or the target `coverage` of that preset;
# PROGRAMS="core_tests storage_tests" runs these alone.
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later
set -eu
cd "$(dirname "$0")/.."
tree="build/coverage"
programs="${PROGRAMS:-core_tests storage_tests trace_tests instruments_tests published_tests output_tests cli_journeys}"
# Left out: rounds of kills, since what a SIGKILL ends writes no counts, and the longest days that are watched. They take
# minutes here and add next to no line.
slow='Killed.*:*.*Killed*:*.*AfterAKill*:Watcher.SaysTheSame*'
case " $programs " in *" cli_journeys "*) started=bothways ;; *) started= ;; esac # what the journeys start

[ -f "$tree/build.ninja" ] || cmake --preset coverage
# shellcheck disable=SC2086
cmake --build "$tree" --target $started $programs
find "$tree" -name '*.gcda' -delete
for program in $programs; do
    "$tree/bin/$program" --gtest_brief=1 --gtest_filter="-$slow" || echo "$program: a test failed; the table counts what ran" >&2
done

# One folder an object: headers come out of many of them, each with its own counts; of a function in a header the linker
# may have taken the copy of a test.
rm -rf "$tree/gcov"
root=$PWD
find "$tree" -name '*.gcno' | while IFS= read -r notes; do
    folder="$tree/gcov/$(basename "$notes" .gcno)-$(echo "$notes" | cksum | cut -d' ' -f1)"
    mkdir -p "$folder"
    (cd "$folder" && gcov -b -p -r -s "$root" "$root/${notes%.gcno}.gcda" >/dev/null 2>&1)
done

find "$tree/gcov" -name '*.gcov' | sort | xargs awk -v untested="$tree/untested.txt" '
    # "        5:   12:code": how often, line, text. "branch  0 taken 50%" follows the line that it belongs to.
    /^ *-: *0:Source:/ { sub(/^.*Source:/, ""); file = $0; next }
    file !~ /^(core|storage)\// { next }
    # "function NAME called 7 ..." stands before the line on which it begins. gcov has no count for a line where a lambda
    # begins that is an argument of the statement; it ran when the lambda did.
    /^function / { begun = $0 ~ / called [1-9]/; next }
    /^branch/ {
        if ($0 ~ /\(throw\)/) next
        key = file ":" line ":" $2
        branches[key] = 1
        if ($0 ~ /taken [0-9]/ && $0 !~ /taken 0%/) taken[key] = 1
        next
    }
    /^ *[0-9#=-][^:]*: *[0-9]+:/ {
        split($0, part, ":")
        gsub(/ /, "", part[1]); line = part[2] + 0
        if (part[1] == "-" || line == 0) next
        key = file ":" line
        seen[key] = 1
        if (begun || (part[1] !~ /^[#=]/ && part[1] + 0 > 0)) run[key] = 1
        else if (!(key in text)) text[key] = substr($0, index($0, part[2] ":") + length(part[2]) + 1)
        begun = 0
    }
    function layer(key) { return substr(key, 1, index(key, "/") - 1) }
    function room(key,   p, n) { n = split(key, p, "/"); return p[1] "/" (n > 2 ? p[2] : "") }
    function share(a, b) { return b ? sprintf("%6.2f %%", 100 * a / b) : "       -" }
    END {
        for (key in seen) {
            part[1] = "all"; part[2] = layer(key); part[3] = room(key)
            for (i = 1; i <= 3; i++) { lines[part[i]]++; ran[part[i]] += key in run }
            if (!(key in run)) print key ": " text[key] > untested
        }
        for (key in branches) {
            part[1] = "all"; part[2] = layer(key); part[3] = room(key)
            for (i = 1; i <= 3; i++) { ways[part[i]]++; went[part[i]] += key in taken }
        }
        printf "%-22s %8s %10s %10s %10s\n", "room", "lines", "run", "branches", "taken"
        for (name in lines)
            printf "%-22s %8d %10s %10d %10s\n", name, lines[name], share(ran[name], lines[name]), \
                ways[name], share(went[name], ways[name]) | "sort"
        close("sort")
        close(untested)
    }'
sort -t: -k1,1 -k2,2n -o "$tree/untested.txt" "$tree/untested.txt"
echo "Lines that no test runs: $tree/untested.txt"
