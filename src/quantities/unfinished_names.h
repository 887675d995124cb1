#pragma once

#include <array>
#include <atomic>
#include <cstddef>
#include <string_view>

/// The names of what is being made and is not whole yet. They can be read at any moment, also by who handles a signal
/// in the middle of anything: nothing is allocated, and a name is seen only while all of it stands.
namespace baitwright {

class UnfinishedName {
public:
    /// Forgotten again with its owner. Where too many are known, or the name is too long, it is not known; what is left
    /// of it is then swept by the next run.
    explicit UnfinishedName(std::string_view name);
    ~UnfinishedName();
    UnfinishedName(const UnfinishedName&) = delete;
    UnfinishedName& operator=(const UnfinishedName&) = delete;
    UnfinishedName(UnfinishedName&&) = delete;
    UnfinishedName& operator=(UnfinishedName&&) = delete;

private:
    std::atomic<bool>* known_ = nullptr;
};

/// Hands over each name known now, with a zero byte behind it. Safe inside a signal's handler where `look` is.
void look_at_unfinished_names(void (*look)(const char* name));

}  // namespace baitwright
