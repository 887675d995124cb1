#include "fuzz/check_csv.h"
#include "fuzz/fuzz_entry.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    return baitwright::fuzz::judge(data, size, baitwright::fuzz::broken_csv);
}
