#include "shelf/blend_argument.h"

#include "files/disk.h"
#include "quantities/suggestion.h"
#include "shelf/recipe_argument.h"
#include "shelf/shipped_files.h"

namespace baitwright {

namespace {

void append(std::vector<BlendSpec>& blends, LibraryFile&& file) {
    for (BlendEntry& entry : file.blends) blends.push_back(std::move(entry.spec));
}

BlendEntry the_one_blend(std::vector<BlendEntry>& entries, const std::string& file) {
    if (entries.size() == 1) return std::move(entries.front());
    if (entries.empty())
        throw InputError({"no-blend",
                          "the file holds no blend",
                          "a blend has a name and at least one [[candidate]]",
                          file,
                          0,
                          0,
                          {}});
    throw InputError(
        {"several-blends",
         "the file holds " + std::to_string(entries.size()) + " blends, and it is not clear which is meant",
         "give the one you want a file of its own",
         file,
         0,
         0,
         {}});
}

BlendSpec blend_called(const std::string& name, const LibraryPlace& place) {
    std::vector<std::string> names;
    for (BlendSpec& blend : all_blends(place)) {
        if (folded_name(blend.name) == folded_name(name)) return std::move(blend);
        names.push_back(blend.name);
    }
    std::string all;
    for (const std::string& one : names) all += (all.empty() ? "" : ", ") + one;
    std::string hint = did_you_mean(name, names);
    if (hint.empty())
        hint = all.empty() ? "there are none here; give a file, as in my-blend.toml"
                           : "there are: " + all + "; or give a file, as in my-blend.toml";
    throw NotFound("unknown-blend", "no blend is called '" + name + "'", hint);
}

}  // namespace

std::vector<BlendSpec> all_blends(const LibraryPlace& place) {
    std::vector<BlendSpec> blends;
    if (place.folder) {
        for (const std::filesystem::path& path : toml_files_below(*place.folder))
            append(blends, read_library_file(read_text_file(path), path.string()));
        return blends;
    }
    for (const ShippedFile& shipped : shipped_files())
        if (shipped.name.starts_with("blends/"))
            append(blends, read_library_file(shipped.text, std::string(shipped.name)));
    return blends;
}

NamedBlend blend_argument(const std::string& word, const LibraryPlace& place, const Shelf& shelf) {
    NamedBlend named;
    named.below = &shelf;
    if (!means_a_file(word)) {
        named.spec = blend_called(word, place);
        return named;
    }
    named.file = word == "-" ? "standard input" : word;
    named.text = read_text_file(word);
    LibraryFile file = read_library_file(named.text, named.file);
    if (!file.faults.empty()) throw InputError(std::move(file.faults));
    BlendEntry entry = the_one_blend(file.blends, named.file);
    named.spec = std::move(entry.spec);
    named.places = std::move(entry.places);
    named.on_top = std::make_unique<MemoryShelf>(&shelf);
    for (Ingredient& ingredient : file.ingredients) named.on_top->put(std::move(ingredient));
    return named;
}

}  // namespace baitwright
