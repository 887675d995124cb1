#pragma once

#include "page/bank_answers.h"

namespace baitwright {

/// The engine of the bank page: the library it was given, and a person's questions to it. A question is made of the
/// words and flags of the command of that name, so that both read it alike, and is answered by the same pieces and the
/// same JSON.
///
/// Requests, all JSON records with `ask`:
/// * `open` {usual, library, today: ISO 8601 date, made_on: the same or left out, have: ["brown crumb=400g", ...],
/// units, currency: "EUR"}: what is asked from here on is asked of it, a `library_data`; `usual`, another, which may be
/// left out, has the ingredients that measured ones took the place of; `learnt`, which may be left out, is what the log
/// taught (`learnt_data.h`), `advice` the rules of advice (`advice_data.h`); `units`
/// ("metric", "imperial" or "both") and `currency`, which may be left out, empty or null, are those that the person
/// always uses;
///   Reply: {mixes: [{name, feel}], feels: [name], strategies: [{name,
///   length_minutes, depth_m, tow_cm_s, water_temp_c, mixes: [name], together: [recipe as `put` takes it], feels: {mix:
///   feel}}], ingredients: [{name, kind}], pellets: those of them}.
/// * `mix`, `water`, `dry`, `soak`, `dose`, `drop`, `cost`, `compare`, `shop`, `plan`, `advise`, `find` and
/// `ingredient`, `recipe`, `strategy`, which show one, {words: [text], flags: {"--cups": ["4x250ml"]}, give:
/// ["told", "json",
///   "picture"], narrow, usual: {"units": ["metric"]}}: `usual` is what the person always uses, by key, and may be left
///   out; `give` is ["told"] where left out; `plan` with `--now` is the rest of the session.
///   Reply: {status, told, json, picture}: what was asked for. `told` is `told_json`, `json` the command's own,
///   `picture` an SVG.
/// * what the person tells of their own, which holds for all later questions until `open` or `anew`:
///   `put` {recipe: {name, feel, parts: [{of, share | mass | volume | packs, prepare}], doses: [{of, amount}]}}
///   (`own_mix.h`), reply: that of `open` with `care`, what can hurt in it, and `odd`, what is odd about it;
///   `text` {recipe: name}, reply: {text}, TOML as `recipe add` reads it;
///   `measured` {ingredient, absorption, slump, moisture, vessel, holds, how, spread, on}, reply: told as `ingredient`;
///   `price` {of, pack, price, shop, on}, reply: told as the command `price` does;
///   `shed` {entries} (`shed_answers.h`); `anew` {}, as if nothing had been told, reply: that of `open`.
///
/// What is wrong with a request comes back as {errors: [...]} (`phone_errors.h`).
class Bank {
public:
    /// Never throws.
    Json ask(const Json& request);

private:
    Json answer(const Json& request);
    void add_usual(const Json& request);
    void add_library(const Json& request);

    OpenedBank opened_;
};

}  // namespace baitwright
