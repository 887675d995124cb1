#include "cli/surroundings_told.h"

namespace baitwright {

std::vector<StatusTold> statuses_told() {
    return {
        {"0", "It is done."},
        {"1", "It was checked, and the answer is no: short of stock, a rule broken, a fault found."},
        {"64", "The command was typed wrongly."},
        {"65", "A file or a value cannot be read, or the store is of a newer program."},
        {"66", "What was named is not there."},
        {"70", "A mistake in baitwright itself."},
        {"73", "A file or the store cannot be made."},
        {"74", "A file or the store cannot be read or written."},
        {"75", "Try again: the store is in use, or there is not enough memory."},
        {"130", "It was interrupted."},
    };
}

std::vector<PlaceTold> places_told() {
    return {
        {"$XDG_DATA_HOME/baitwright/baitwright.db",
         "The store: your library, the shed, the prices and the log. Where XDG_DATA_HOME is not set it is "
         "~/.local/share/baitwright/baitwright.db."},
    };
}

std::vector<PlaceTold> variables_told() {
    return {
        {"XDG_DATA_HOME", "The folder that the store's folder is in, where it is an absolute path."},
        {"HOME", "Where XDG_DATA_HOME is not set, the store is below this folder."},
        {"BAITWRIGHT_TODAY", "The day that is taken for today, as in 2026-03-01; to look ahead or back."},
        {"VISUAL", "The editor of the edit commands; where it is not set, EDITOR is."},
        {"EDITOR", "The editor of the edit commands."},
        {"NO_COLOR", "Where it is set, nothing is printed in colour."},
        {"PAGER",
         "What shows help and lists that are longer than the terminal, else less; empty or cat: nothing does."},
        {"LESS", "How less shows it; where it is not set, FRX: one screen stays, colours pass."},
        {"COLUMNS", "Another width than the terminal's, from 40 to 200."},
        {"LINES", "Another number of lines than the terminal's."},
        {"TERM", "Where it is dumb, nothing is in colour, nor shown by a pager."},
        {"LC_ALL",
         "Where the first that is set of LC_ALL, LC_CTYPE and LANG names no UTF-8, only plain letters are "
         "printed."},
        {"LC_CTYPE", "See LC_ALL."},
        {"LANG", "See LC_ALL."},
        {"TMPDIR", "The folder of what is there only meanwhile: an entry that is edited, a store that is only tried."},
        {"SOURCE_DATE_EPOCH", "The day that the pages of the manual bear, for builds that come out alike."},
    };
}

}  // namespace baitwright
