# Completion of the verbs, options, runs, columns and files of bothways, for fish.
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later

function __bothways_complete
    set -l words (commandline -opc) (commandline -ct)
    set -l program $words[1]
    set -e words[1]
    set -l typed $words[-1]
    for line in ($program --complete-for-shell $words 2>/dev/null)
        switch $line
            case :studies
                __fish_complete_suffix .bothways
            case :sheets
                for ending in csv tsv txt xlsx ods
                    __fish_complete_suffix .$ending
                end
            case :inputs
                for ending in bothways csv tsv txt xlsx ods
                    __fish_complete_suffix .$ending
                end
            case :files
                __fish_complete_path $typed
            case '*'
                printf '%s\n' $line
        end
    end
end

complete -c bothways -f -a '(__bothways_complete)'
