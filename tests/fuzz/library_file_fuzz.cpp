#include <cstdint>
#include <cstdio>
#include <cstdlib>

#include "fuzz/check_library_file.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string broken = baitwright::broken_promise({reinterpret_cast<const char*>(data), size});
    if (broken.empty()) return 0;
    std::fprintf(stderr, "%s\n", broken.c_str());
    std::abort();
}
