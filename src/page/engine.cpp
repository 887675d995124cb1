// The one entry of the engine on a phone: JSON in, JSON out. Compiled by Emscripten alone.
#include <string>

#include "page/bank.h"

/// Answers a request of `Bank` (UTF-8, ending in 0). The reply lives until the next call. Text that is no JSON is an
/// error too.
extern "C" const char* baitwright_ask(const char* request) {
    static baitwright::Bank bank;
    static std::string reply;
    const baitwright::Json asked = baitwright::Json::parse(request, nullptr, false);
    reply = asked.is_discarded() ? std::string(R"({"errors":[{"code":"no-json","message":"the request is no JSON"}]})")
                                 : bank.ask(asked).dump(-1, ' ', false, baitwright::Json::error_handler_t::replace);
    return reply.c_str();
}
