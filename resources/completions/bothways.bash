# Completion of the verbs, options, runs, columns and files of bothways, for bash.
# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later

# Names of files below what is typed that end in one of the given endings, and folders.
_bothways_files()
{
    local typed=$1 name ending
    shift
    while IFS= read -r name; do
        if [[ -d $name ]]; then
            COMPREPLY+=("$name/")
            compopt -o nospace
            continue
        fi
        [[ $# -eq 0 ]] && COMPREPLY+=("$name")
        for ending in "$@"; do
            [[ ${name,,} == *."$ending" ]] && COMPREPLY+=("$name")
        done
    done < <(compgen -f -- "$typed")
}

_bothways()
{
    COMPREPLY=()
    # bash takes words apart at '=' and ':', which belong to them here.
    local words=() word i glue=0 line=$COMP_LINE
    line=${line:0:COMP_POINT}
    for ((i = 1; i <= COMP_CWORD; i++)); do
        word=${COMP_WORDS[i]}
        if [[ $word == [=:]* && ${#words[@]} -gt 0 ]] || ((glue)); then
            words[${#words[@]} - 1]+=$word
        else
            words+=("$word")
        fi
        glue=0
        [[ $word == [=:] || $word == *[=:] ]] && glue=1
    done
    [[ ${COMP_WORDS[COMP_CWORD]} == "" && $line == *[[:blank:]] && $glue -eq 0 &&
        ${words[${#words[@]} - 1]} != "" ]] && words+=("")
    local last=$((${#words[@]} - 1)) typed values=() value
    # As the shell would hand them over: without quotes; a leading ~/ is the home.
    for ((i = 0; i <= last; i++)); do
        word=${words[i]}
        word=${word//[\'\"]/}
        word=${word//\\/}
        [[ $word == "~/"* ]] && word=$HOME/${word:2}
        values+=("$word")
    done
    typed=${values[last]}
    while IFS= read -r value; do
        case $value in
        :studies) _bothways_files "$typed" bothways ;;
        :sheets) _bothways_files "$typed" csv tsv txt xlsx ods ;;
        :inputs) _bothways_files "$typed" bothways csv tsv txt xlsx ods ;;
        :files) _bothways_files "$typed" ;;
        *)
            value=${value%%$'\t'*}
            [[ $value == *= || $value == *. ]] && compopt -o nospace
            COMPREPLY+=("$value")
            ;;
        esac
    done < <("${COMP_WORDS[0]}" --complete-for-shell "${values[@]}" 2>/dev/null)
    # What bash replaces begins behind the last '=' or ':'.
    local behind=""
    [[ $COMP_WORDBREAKS == *=* && $typed == *=* ]] && behind=${typed%"${typed##*=}"}
    for ((i = 0; i < ${#COMPREPLY[@]}; i++)); do
        value=${COMPREPLY[i]#"$behind"}
        COMPREPLY[i]=$(printf '%q' "$value")
    done
}

complete -F _bothways bothways
