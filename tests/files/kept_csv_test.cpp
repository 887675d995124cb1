#include "files/kept_csv.h"

#include <rapidcheck.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <cstring>
#include <fstream>

#include "files/any_ingredient.h"
#include "files/saved_by_spreadsheet.h"
#include "quantities/date.h"
#include "quantities/money.h"
#include "quantities/unit_table.h"

using namespace baitwright;

namespace {

double any_number_between(double low, double high) {
    const double part = (static_cast<double>(*rc::gen::arbitrary<std::uint32_t>()) +
                         static_cast<double>(*rc::gen::arbitrary<std::uint32_t>()) / 4294967296.0) /
                        4294967296.0;
    return low + (high - low) * part;
}

std::int64_t any_whole_between(double low, double high) {
    return static_cast<std::int64_t>(std::floor(any_number_between(low, high)));
}

std::string any_mark() {
    std::string mark;
    while (mark.size() < 32) mark += "0123456789abcdef"[*rc::gen::inRange(0, 16)];
    return mark;
}

std::string any_bytes_of_numbers() {
    std::string bytes;
    for (int left = *rc::gen::inRange(0, 5); left > 0; --left) {
        const double number = any_number_between(-20, 20);
        bytes.append(reinterpret_cast<const char*>(&number), sizeof number);
    }
    return bytes;
}

/// Names as hostile as names can be.
std::string any_hostile_name() {
    return *rc::gen::element<std::string>("brown crumb", "=1+2", "+cmd", "@here", "'quoted'", "\"a\", \"b\"", "a;b",
                                          "a,b", "..", "\xF0\x9F\x90\x9F", "\xE6\xBF\xA1", "'=x", "''", "1e5", "%s%n",
                                          "null", std::string(200, 'x'));
}

std::string any_prose() {
    return *rc::gen::element<std::string>("", "one line", "two\nlines", "a \"quoted\" word\n\n", "=SUM(A1)\n", ",,\n,",
                                          "\t", "[[mix]]\nname = \"x\"\n", " blanks ", "'");
}

void fill_cell(const KeptColumn& column, KeptRow& row) {
    const bool empty = column.optional && *rc::gen::arbitrary<bool>();
    if (empty) {
        row.resize(row.size() + values_in(column.form));
        return;
    }
    switch (column.form) {
        case CellForm::number:
            return row.push_back(any_whole_between(1, 1e15));
        case CellForm::whole:
            return row.push_back(any_whole_between(column.least, column.most));
        case CellForm::bare:
        case CellForm::quantity:
            return row.push_back(any_number_between(column.least, column.most));
        case CellForm::name:
            return row.push_back(any_hostile_name());
        case CellForm::line:
            return row.push_back(column.optional ? any_hostile_name() : *rc::gen::element<std::string>("", "x", " y "));
        case CellForm::prose:
            return row.push_back(any_prose());
        case CellForm::word:
            return row.push_back(std::string(*rc::gen::elementOf(column.words)));
        case CellForm::clock:
            return row.push_back(*rc::gen::element<std::string>("", "00:00", "09:30", "23:59"));
        case CellForm::truth:
            return row.push_back(std::int64_t{*rc::gen::inRange(0, 2)});
        case CellForm::date:
            return row.push_back(date_text(Date(std::chrono::days(*rc::gen::inRange(0, 30000)))));
        case CellForm::amount:
            row.push_back(std::string(*rc::gen::elementOf(column.words)));
            return row.push_back(any_number_between(0, 10));
        case CellForm::money:
            row.push_back(std::int64_t{*rc::gen::inRange(0, 100000000)});
            return row.push_back(*rc::gen::element<std::string>("GBP", "EUR", "CHF", "JPY", "KWD"));
        case CellForm::grams:
            return row.push_back(any_whole_between(-1e10, 1e10));
        case CellForm::mark:
            return row.push_back(any_mark());
        case CellForm::numbers:
            return row.push_back(any_bytes_of_numbers());
    }
}

std::vector<KeptTable> tables_and_entries() {
    std::vector<KeptTable> all = kept_tables();
    all.push_back(entries_table());
    return all;
}

std::vector<KeptRow> any_rows(const KeptTable& table) {
    std::vector<KeptRow> rows(static_cast<std::size_t>(*rc::gen::inRange(0, 4)));
    for (KeptRow& row : rows)
        for (const KeptColumn& column : table.columns) fill_cell(column, row);
    // A row that says nothing at all is passed over, and no store has one.
    std::erase_if(rows, [&](const KeptRow& row) {
        return kept_csv_row(table, row).find_first_not_of(",\" \n\t") == std::string::npos;
    });
    return rows;
}

std::vector<KeptRow> read_all(const KeptTable& table, const std::string& text, std::vector<Fault>& faults) {
    FileFaults found(text, std::string(table.name) + ".csv");
    std::vector<KeptRow> rows;
    KeptCsvReader reader(table, text, found);
    for (KeptRow row; reader.next(row);) rows.push_back(row);
    faults = found.in_file_order();
    return rows;
}

std::string written(const KeptTable& table, const std::vector<KeptRow>& rows) {
    std::string text = kept_headings(table);
    for (const KeptRow& row : rows) text += kept_csv_row(table, row);
    return text;
}

/// With a row too many, besides.
std::string as_saved(const std::string& text) {
    return saved_by_spreadsheet(text) + ",,,\r\n";
}

Fault only_fault(const char* table, const std::string& text) {
    std::vector<Fault> faults;
    static_cast<void>(read_all(kept_table(table), text, faults));
    REQUIRE(faults.size() == 1);
    CHECK_FALSE(faults[0].hint.empty());
    CHECK(faults[0].file == std::string(table) + ".csv");
    return faults[0];
}

}  // namespace

TEST_CASE("any rows of any table come back from CSV to the last bit, and as a spreadsheet saves them too") {
    for (const KeptTable& table : tables_and_entries()) {
        CHECK(rc::check(std::string(table.name), [&] {
            const std::vector<KeptRow> rows = any_rows(table);
            std::vector<Fault> faults;
            const std::string text = written(table, rows);
            const bool same = read_all(table, text, faults) == rows;
            for (const Fault& fault : faults) RC_LOG() << fault.line << ": " << fault.message << "\n";
            RC_ASSERT(faults.empty());
            RC_ASSERT(same);
            RC_ASSERT(read_all(table, as_saved(text), faults) == rows);
            RC_ASSERT(faults.empty());
        }));
    }
}

TEST_CASE("columns may stand in any order") {
    std::vector<Fault> faults;
    const auto rows = read_all(kept_table("shed-movements"), "change (g),lot,entry\n-1.5,2,1\n", faults);
    CHECK(faults.empty());
    REQUIRE(rows.size() == 1);
    CHECK(rows[0] == KeptRow{std::int64_t{1}, std::int64_t{2}, std::int64_t{-1500}});
}

TEST_CASE("a cell may have a unit of its own") {
    std::vector<Fault> faults;
    const auto rows =
        read_all(kept_table("log-soaks"),
                 "entry,dry (g),drained (g),under water (min),water (degC)\n1,0.5 kg,1 lb,1 h,59 degF\n", faults);
    CHECK(faults.empty());
    REQUIRE(rows.size() == 1);
    CHECK(std::get<double>(rows[0][1]) == 0.5);
    CHECK(std::get<double>(rows[0][2]) == 0.45359237);
    CHECK(std::get<double>(rows[0][3]) == 3600);
    CHECK(std::get<double>(rows[0][4]) == Approx(288.15));
}

TEST_CASE("a wrong cell is named with its line and column, what is wrong and how to mend it") {
    const std::string head = "entry,lot,change (g)\n";
    CHECK(only_fault("shed-movements", head + "1,2,heavy\n").column == 5);
    CHECK(only_fault("shed-movements", head + "1,2,3\n1,x,4\n").line == 3);
    CHECK(only_fault("shed-movements", head + "0,2,3\n").code == "out-of-range");
    CHECK(only_fault("shed-movements", head + "1.5,2,3\n").code == "not-whole");
    CHECK(only_fault("shed-movements", head + ",2,3\n").code == "missing-value");
    CHECK(only_fault("shed-movements", head + "1,2,0.0001\n").code == "too-fine");
    CHECK(only_fault("shed-movements", head + "1,2\n").code == "ragged-row");
    CHECK(only_fault("shed-movements", head + "1,2,3,4\n").code == "no-heading");
    CHECK(only_fault("shed-movements", "entry,lot\n1,2\n").code == "missing-column");
    CHECK(only_fault("shed-movements", "entry,lot,change (g),weight\n1,2,3,4\n").code == "unknown-column");
    CHECK(only_fault("shed-movements", "entry,lot,lot,change (g)\n1,2,2,3\n").code == "set-twice");
    CHECK(only_fault("shed-movements", "entry;lot;change (g)\n1;2;3\n").code == "not-commas");
    CHECK(only_fault("shed-movements", "").code == "nothing-here");
    CHECK(only_fault("shed-movements", head + "1,2,\"3\n").code == "unclosed-quote");
    CHECK(only_fault("shed-movements", head + "1,2,\xff\n").code == "not-utf-8");
    CHECK(only_fault("log-catches", "entry,fish,mass (g)\n1,2,-3\n").code == "out-of-range");
    CHECK(only_fault("log-catches", "entry,fish,mass (g)\n1,2,3 l\n").code == "wrong-dimension");
    CHECK(only_fault("log-catches", "entry,fish,mass (g)\n1,2,1e999\n").code == "too-large");
    CHECK(only_fault("log-used", "entry,amount\n1,500\n").code == "wrong-dimension");
    CHECK(only_fault("log-used", "entry,amount\n1,20000 l\n").code == "out-of-range");
    CHECK(only_fault("log-used", "entry,amount\n1,20000 kg\n").code == "out-of-range");
    CHECK(only_fault("old-prices", "ingredient,pack,price,on,shop\nbran,1 kg,dear,,\n").column == 11);
    CHECK(only_fault("old-prices",
                     "ingredient,pack,price,on,shop\nbran,1 kg,\xC2\xA3"
                     "2,01/03/2026,\n")
              .code == "not-a-date");
    CHECK(only_fault("shops", "shop\nthe\x1bmill\n").code == "unfit-letter");
    CHECK(only_fault("shops", "shop\n../mill\n").code == "bad-name");
    CHECK(only_fault("names-given-up", "kind,name,now\nmixture,a,b\n").code == "unknown-word");
    CHECK(only_fault("stamps", "kind,of,changed,there since\nmix,a,-1,0\n").code == "out-of-range");
}

TEST_CASE("water may be a little below freezing and a little above boiling, as a thermometer is wrong, and no more") {
    const std::string head = "entry,dry (g),drained (g),under water (min),water (degC)\n1,500,900,60,";
    std::vector<Fault> faults;
    for (const char* fit : {"-5", "100.5", "4"}) {
        CAPTURE(fit);
        CHECK(read_all(kept_table("log-soaks"), head + fit + "\n", faults).size() == 1);
        CHECK(faults.empty());
    }
    for (const char* unfit : {"-5.1", "100.6", "110"}) {
        CAPTURE(unfit);
        CHECK(only_fault("log-soaks", head + unfit + "\n").code == "out-of-range");
    }
}

TEST_CASE("what is wrong in many rows is counted, and the first of it told") {
    std::string text = kept_headings(kept_table("shed-movements"));
    for (int i = 0; i < 1000; ++i) text += "x,y,z\n";
    std::vector<Fault> faults;
    CHECK(read_all(kept_table("shed-movements"), text, faults).empty());
    REQUIRE(faults.size() == most_faults_told + 1);
    CHECK(faults.back().more == 3000 - most_faults_told);
}

TEST_CASE("each unit of a heading is one that is read") {
    for (const KeptTable& table : kept_tables())
        for (const KeptColumn& column : table.columns) {
            if (column.form != CellForm::quantity) continue;
            INFO(table.name << ": " << column.heading);
            CHECK(unit_called(column.unit) != nullptr);
            CHECK(column.heading.ends_with("(" + std::string(column.unit) + ")"));
            CHECK(column.least < column.most);
        }
}

TEST_CASE("each file of an export and each of its columns is in the documentation") {
    std::ifstream document(BAITWRIGHT_SOURCE_DIR "/docs/files.md");
    std::vector<std::string> lines;
    for (std::string line; std::getline(document, line);) lines.push_back(line);
    for (const KeptTable& table : tables_and_entries()) {
        const std::string file = "`" + std::string(table.name) + ".csv`";
        INFO(file);
        const auto row = std::find_if(lines.begin(), lines.end(), [&](const std::string& line) {
            return line.starts_with("| `") && line.substr(0, line.find('|', 1)).find(file) != std::string::npos;
        });
        REQUIRE(row != lines.end());
        for (const KeptColumn& column : table.columns) {
            INFO(column.heading);
            CHECK(row->find("`" + column.heading + "`") != std::string::npos);
        }
    }
}
