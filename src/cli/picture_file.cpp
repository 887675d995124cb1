#include "cli/picture_file.h"

#include "cli/output_file.h"
#include "files/disk.h"

namespace baitwright {

std::vector<Flag> picture_flags() {
    return {{"--plot", "FILE", "draws it too, as SVG: picture.svg"},
            {"--replace", "", "lets --plot write over a file that is there"}};
}

void check_picture(const Arguments& arguments) {
    const auto path = arguments.value("--plot");
    if (!path) {
        if (arguments.has("--replace"))
            throw UsageError("unfit-flag", "--replace goes with --plot", "leave it out, or add --plot FILE.svg");
        return;
    }
    if (!path->ends_with(".svg"))
        throw UsageError("unfit-picture", "'" + *path + "' does not end in .svg",
                         "pictures are SVG: --plot picture.svg");
    keep_unless_told(*path, arguments);
}

void write_picture(const Arguments& arguments, const std::string& svg) {
    if (arguments.has("--dry-run")) return;
    write_text_file(*arguments.value("--plot"), svg);
}

}  // namespace baitwright
