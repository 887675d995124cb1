// The one entry of the engine on a phone: JSON in, JSON out. Compiled by Emscripten alone.
#include <string>

#include "page/bank.h"

/// Answers a request of `Bank` (UTF-8, ending in 0). The reply lives until the next call. Text that is no JSON is an
/// error too.
extern "C" const char* baitwright_ask(const char* request) {
    static baitwright::Bank bank;
    static std::string reply;
    const auto asked = baitwright::parsed_json(request);
    reply = asked ? json_line(bank.ask(*asked), baitwright::JsonLetters::utf8)
                  : std::string(R"({"errors":[{"code":"no-json","message":"the request is no JSON"}]})");
    return reply.c_str();
}
