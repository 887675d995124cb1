#include "cli/page_engine.h"

#include "cli/beside_program.h"
#include "files/disk.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view engine_mark = "baitwright page engine ";

constexpr const char* engine_anew =
    "install baitwright's package, which has it; or make it where Emscripten is installed (Debian: emscripten, zopfli): "
    "cmake --workflow --preset page";

[[noreturn]] void refuse_engine(const std::string& code, const std::string& what) {
    throw StorageError(FaultClass::cannot_create, code, what,
                       std::string(engine_anew) + "; all other commands work without it");
}

[[noreturn]] void tell_missing_engine(const fs::path& program) {
    const std::string needs = "'page' needs the engine that a page carries, and ";
    if (!program.is_absolute())
        refuse_engine("no-page-engine", needs + "where this program lies cannot be told, for /proc is not there");
    refuse_engine("no-page-engine", needs + "its file " + page_engine_file + " is neither beside the program nor in " +
                                        installed_for(program).string());
}

/// What is wrong with the file, for this program; nothing where it fits.
std::string engine_unfit(std::string_view text, std::string_view version) {
    const auto line_end = text.find('\n');
    if (!text.starts_with(engine_mark) || line_end == std::string_view::npos) return "it is something else";
    const std::string_view said = text.substr(engine_mark.size(), line_end - engine_mark.size());
    const std::string_view its_version = said.substr(0, said.find(' '));
    if (its_version != version)
        return "it is of version " + std::string(its_version) + ", and this program of " + std::string(version);
    const std::string whole = std::string(version) + " of " + std::to_string(text.size() - line_end - 1) + " bytes";
    return said == whole ? "" : "it is not whole";
}

}  // namespace

std::string page_engine(const fs::path& program, std::string_view version) {
    const fs::path path = beside_program(page_engine_file, program);
    if (path.empty()) tell_missing_engine(program);
    std::string text = read_text_file(path);
    if (const std::string unfit = engine_unfit(text, version); !unfit.empty())
        refuse_engine("unfit-page-engine", path.string() + " is no page engine for this program: " + unfit);
    return text.erase(0, text.find('\n') + 1);
}

}  // namespace baitwright
