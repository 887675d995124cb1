#pragma once

#include <cstddef>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace baitwright {

/// One thing that is wrong with what a person wrote: where, what, and how to mend it.
struct Fault {
    std::string code;          ///< short and stable, for programs: "unknown-unit"
    std::string message;       ///< one sentence for a person, without the place
    std::string hint;          ///< how to mend it: an example, a range or the next thing to do; never empty
    std::string subject = {};  ///< which entry of a record it concerns ("part 2"), where it has no place in a file yet
    int line = 0;              ///< from 1; 0 where unknown
    int column = 0;            ///< from 1; 0 where unknown
    std::string file = {};     ///< empty where it was not read from a file
    std::string source_line = {};  ///< the line as written, for the caret
    std::size_t more = 0;          ///< of one that stands for others, not told: how many
};

/// Of a file as a whole, wherever in it.
inline Fault fault_of_file(std::string code, std::string message, std::string hint, std::string file) {
    Fault fault{std::move(code), std::move(message), std::move(hint)};
    fault.file = std::move(file);
    return fault;
}

/// So many faults are worked out and told at once: who has mended these looks again.
constexpr std::size_t most_faults_told = 20;

/// The first of them and, where there are more, a last one that says how many. One among them that says so already is
/// taken into the count, and so are `untold`, which were found and not worked out.
std::vector<Fault> first_faults(std::vector<Fault> faults, std::size_t untold = 0);

/// What went wrong, in the terms that a calling program cares for; each has one exit status (see `docs/commands.md`).
enum class FaultClass { answer_is_no, usage, bad_data, not_found, cannot_create, input_output, try_again, interrupted };

/// Every error that the project throws: the faults of one attempt at once, the first of them where there are many.
class Error : public std::runtime_error {
public:
    Error(FaultClass fault_class, std::vector<Fault> faults)
        : std::runtime_error(faults.empty() ? std::string("unspecified fault") : faults.front().message),
          fault_class_(fault_class),
          faults_(first_faults(std::move(faults))) {}
    Error(FaultClass fault_class, Fault fault) : Error(fault_class, std::vector<Fault>{std::move(fault)}) {}

    [[nodiscard]] FaultClass fault_class() const { return fault_class_; }
    [[nodiscard]] const std::vector<Fault>& faults() const { return faults_; }

private:
    FaultClass fault_class_;
    std::vector<Fault> faults_;
};

/// Something a person wrote cannot be what they meant.
class InputError : public Error {
public:
    explicit InputError(std::vector<Fault> faults) : Error(FaultClass::bad_data, std::move(faults)) {}
    explicit InputError(Fault fault) : Error(FaultClass::bad_data, std::move(fault)) {}
    InputError(std::string code, std::string message, std::string hint)
        : InputError(Fault{std::move(code), std::move(message), std::move(hint)}) {}
};

/// A flag or word of the command line does not fit.
class UsageError : public Error {
public:
    explicit UsageError(Fault fault) : Error(FaultClass::usage, std::move(fault)) {}
    UsageError(std::string code, std::string message, std::string hint)
        : Error(FaultClass::usage, Fault{std::move(code), std::move(message), std::move(hint)}) {}
};

/// A name that is not on the shelf, or a file that is not there.
class NotFound : public Error {
public:
    explicit NotFound(Fault fault) : Error(FaultClass::not_found, std::move(fault)) {}
    NotFound(std::string code, std::string message, std::string hint)
        : Error(FaultClass::not_found, Fault{std::move(code), std::move(message), std::move(hint)}) {}
};

/// The store or the disk failed; `fault_class` says whether trying again can help.
class StorageError : public Error {
public:
    StorageError(FaultClass fault_class, std::string code, std::string message, std::string hint)
        : Error(fault_class, Fault{std::move(code), std::move(message), std::move(hint)}) {}
};

}  // namespace baitwright
