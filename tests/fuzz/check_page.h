#pragma once

#include <string>
#include <string_view>

#include "fuzz/check_faults.h"
#include "page/bank.h"
#include "page/opened_page.h"

/// What the page's engine promises of any requests, a line each: that it replies, in JSON, and that what it refuses it
/// refuses in words. Requests go to an engine that has the shipped library open; from one that opens anew on, to
/// another.
namespace baitwright::fuzz {

/// Of a request that lacks a key, or has a list where a text belongs; no page sends such.
inline bool is_misshapen(const std::string& message) {
    return message.find("this JSON ") != std::string::npos ||
           message.find("what was learnt is not whole") != std::string::npos;
}

enum class DataOf { program, anyone };

inline std::string broken_reply(const Json& reply, DataOf data) {
    if (!parsed_json(json_line(reply, JsonLetters::utf8))) return "the reply is no JSON";
    const Json* errors = reply.find("errors");
    if (!errors) return {};
    for (const Json& error : errors->items()) {
        const std::string message = error.at("message").text();
        if (message.empty() || error.at("hint").text().empty()) return "a fault without a hint: " + message;
        if (error.at("code").text() != "bug" || data == DataOf::anyone) continue;
        if (!is_misshapen(message)) return message;
    }
    return {};
}

inline Bank& opened_bank() {
    static Bank bank;
    static const bool opened = [] {
        opened_page::open(bank, *shipped_shelf(), {"open carpet"});
        return true;
    }();
    static_cast<void>(opened);
    bank.ask(Json{{"ask", "anew"}});
    return bank;
}

inline std::string broken_page(std::string_view text) {
    Bank other;
    Bank* bank = &opened_bank();
    for (int asked = 0; !text.empty() && asked < 20; ++asked) {
        const auto end = text.find('\n');
        const auto request = parsed_json(text.substr(0, end));
        text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
        if (!request) continue;
        const Json* ask = request->find("ask");
        if (ask && *ask == Json("open")) bank = &other;
        const std::string broken = wrong_with(
            [&] { return broken_reply(bank->ask(*request), bank == &other ? DataOf::anyone : DataOf::program); });
        if (!broken.empty()) return broken;
    }
    return {};
}

}  // namespace baitwright::fuzz
