#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace baitwright {

/// Something that only a few commands need, in a shared library of its own beside the program, or where
/// `cmake --install` puts it. Linked into the program it would cost every command the time to load it.
struct Module {
    const char* file;        ///< "baitwright_card.so"
    const char* symbol;      ///< the function in it that returns the object
    std::string_view code;   ///< of the fault where it is missing: "no-drawing"
    std::string_view what;   ///< "the drawing of sheets"
    std::string_view needs;  ///< "Pango (Debian: libpango1.0-dev)"
};

/// Where the module lies, for a program at that place: beside it, or where it is installed. Throws NotFound; also where
/// the place is not known in full, for a library is never taken from the folder that one happens to be in.
std::filesystem::path module_of_program(const Module& module, std::string_view command,
                                        const std::filesystem::path& program);

/// What the module's function returns. `command` is what needs it ("card"). Throws NotFound, saying what is missing.
void* load_module(const Module& module, std::string_view command);

}  // namespace baitwright
