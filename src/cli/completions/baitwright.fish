# What may come next behind `baitwright` in fish. The program says it; nothing of the line is run or expanded here.

function __baitwright_answers
    set -l words (commandline -opc)
    set -l typed (commandline -ct)
    set -l program (string replace -r '^~/' "$HOME/" -- $words[1])
    set -e words[1]
    # The word as it is meant: without a quote that is still open, or without its backslashes.
    set -l meant (string replace -r '^["\']' '' -- $typed)
    if test "$meant" = "$typed"
        set meant (string unescape -- $typed)
    end
    # Of "--store=my" the shell completes what is behind the sign.
    set -l front (string match -r -- '^-[^=]*=' $typed)
    set -l path (string replace -r -- '^-[^=]*=' '' $typed)
    for answer in (command $program complete $words "$meant" 2>/dev/null)
        switch $answer
            case \t'files'
                for file in (__fish_complete_path $path)
                    printf '%s%s\n' "$front" $file
                end
            case \t'folders'
                for folder in (__fish_complete_directories $path '')
                    printf '%s%s\n' "$front" $folder
                end
            case '*'
                printf '%s\n' $answer
        end
    end
end

complete -c baitwright -f -a '(__baitwright_answers)'
