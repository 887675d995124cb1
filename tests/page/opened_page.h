#pragma once

#include <string>
#include <vector>

#include "library/advice_rules.h"
#include "library/named.h"
#include "library/open_library.h"
#include "page/bank.h"
#include "page/bank_data.h"

/// What a page of some strategies carries, and how a phone opens it.
namespace opened_page {

inline baitwright::Json data_of(const baitwright::Shelf& shelf, const std::vector<std::string>& names) {
    baitwright::BankContents contents;
    contents.library = &shelf;
    contents.made_on = baitwright::parse_date("2026-05-16");
    contents.version = "0.1.0";
    contents.advice = baitwright::advice_rules({});
    contents.venues = baitwright::all_venues({});
    for (const std::string& name : names) contents.strategies.push_back({&shelf, shelf.strategy(name)});
    return bank_data(contents);
}

inline baitwright::Json opening(const baitwright::Json& data) {
    baitwright::Json request{{"ask", "open"},
                             {"usual", data["usual"]},
                             {"library", data["library"]},
                             {"advice", data["advice"]},
                             {"today", data["made_on"]},
                             {"have", data["have"]}};
    if (const baitwright::Json* learnt = data.find("learnt")) request["learnt"] = *learnt;
    return request;
}

/// Opened on these strategies.
inline void open(baitwright::Bank& bank, const baitwright::Shelf& shelf, const std::vector<std::string>& names,
                 const std::string& today = "2026-05-16") {
    const baitwright::Json data = data_of(shelf, names);
    baitwright::Json request = opening(data);
    request["today"] = today;
    bank.ask(request);
}

}  // namespace opened_page
