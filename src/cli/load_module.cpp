#include "cli/load_module.h"

#include <dlfcn.h>

#include <filesystem>

#include "cli/beside_program.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

[[noreturn]] void refuse(const Module& module, std::string_view command, const std::string& why) {
    throw NotFound(std::string(module.code),
                   "'" + std::string(command) + "' needs " + std::string(module.what) + ", and " + why,
                   "install " + std::string(module.needs) + ", build baitwright again, and keep " + module.file +
                       " beside the program; all other commands work without it");
}

}  // namespace

fs::path module_of_program(const Module& module, std::string_view command, const fs::path& program_file) {
    if (!program_file.is_absolute())
        refuse(module, command, "where this program lies cannot be told, for /proc is not there");
    fs::path path = beside_program(module.file, program_file);
    if (path.empty())
        refuse(module, command,
               "its module " + std::string(module.file) + " is neither beside the program nor in " +
                   installed_for(program_file).string());
    return path;
}

void* load_module(const Module& module, std::string_view command) {
    const fs::path path = module_of_program(module, command, this_program());
    void* loaded = dlopen(path.c_str(), RTLD_NOW | RTLD_LOCAL);
    if (!loaded) refuse(module, command, "its module does not load: " + std::string(dlerror()));
    auto* const make = reinterpret_cast<void* (*)()>(dlsym(loaded, module.symbol));
    if (!make) refuse(module, command, "its module is not of this program's version: " + path.string());
    return make();
}

}  // namespace baitwright
