# What may come next behind `baitwright` in bash. The program says it; nothing of the line is run or expanded here.

_baitwright() {
    local program=$1 answer
    local -a answers=()
    [[ $program == '~/'* ]] && program=$HOME/${program#'~/'}
    COMPREPLY=()
    mapfile -t answers < <("$program" complete --bash "$COMP_WORDBREAKS" "${COMP_LINE:0:COMP_POINT}" 2>/dev/null)
    for answer in "${answers[@]}"; do
        case $answer in
            $'\tfiles') compopt -o default ;;
            $'\tfolders') compopt -o dirnames ;;
            *)
                COMPREPLY+=("$answer")
                [[ $answer == *= ]] && compopt -o nospace
                ;;
        esac
    done
    return 0
}

complete -o nosort -F _baitwright baitwright
