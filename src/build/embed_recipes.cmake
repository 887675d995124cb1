# cmake -DOUTPUT=file.cpp -DROOT=recipes -P embed_recipes.cmake: the shipped TOML files as C++ raw strings.
file(GLOB_RECURSE paths RELATIVE ${ROOT} ${ROOT}/*.toml)
list(SORT paths)
set(entries "")
set(everything "")
foreach(path IN LISTS paths)
    file(READ ${ROOT}/${path} text)
    string(APPEND everything "${path}\n${text}")
    string(APPEND entries "    {\"${path}\", R\"shipped~(${text})shipped~\"},\n")
endforeach()
string(SHA256 digest "${everything}")
file(CONFIGURE OUTPUT ${OUTPUT} @ONLY CONTENT [[
#include "library/shipped_files.h"

namespace baitwright {

namespace {

// NOLINTNEXTLINE(modernize-avoid-c-arrays): so that nobody needs to count them here
constexpr ShippedFile files[] = {
@entries@};

}  // namespace

std::span<const ShippedFile> shipped_files() { return files; }

std::string_view shipped_files_digest() { return "@digest@"; }

}  // namespace baitwright
]])
