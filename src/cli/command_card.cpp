#include "cli/commands.h"

#include "cli/load_module.h"
#include "cli/output_file.h"
#include "cli/plan_flags.h"
#include "cli/result_formats.h"
#include "files/disk.h"
#include "report/replies.h"
#include "report/session_sheet.h"
#include "report/shown_units.h"

namespace baitwright {

namespace {

constexpr Module drawing{"baitwright_card.so", sheet_printer_symbol, "no-drawing", "the drawing of sheets",
                         "Pango (Debian: libpango1.0-dev)"};

struct SheetFile {
    std::string path;
    SheetFormat format;
};

/// Refuses, before anything is worked out, a name that says no format, and a file that is there without --replace.
SheetFile sheet_file(const Arguments& arguments) {
    const auto path = arguments.value("-o");
    if (!path)
        throw UsageError("no-file", "where is the sheet to go?", "say it with -o sheet.pdf, sheet.svg or sheet.png");
    if (goes_to_standard_output(arguments, "a sheet")) return {*path, SheetFormat::pdf};
    for (const SheetFormat format : {SheetFormat::pdf, SheetFormat::svg, SheetFormat::png}) {
        if (!path->ends_with("." + std::string(name_of(format)))) continue;
        keep_unless_told(*path, arguments);
        return {*path, format};
    }
    throw UsageError("unfit-sheet", "'" + *path + "' does not end in .pdf, .svg or .png",
                     "a sheet is one of these: -o sheet.pdf");
}

PrintedSheet print(const CardSheet& sheet, SheetFormat format) {
    auto* const printer = static_cast<SheetPrinter*>(load_module(drawing, "card"));
    PrintedSheet printed = printer->print(with_degree_signs(sheet), format);
    if (!printed.fault.empty())
        throw Error(FaultClass::answer_is_no, Fault{"no-sheet", "the sheet could not be drawn: " + printed.fault,
                                                    "what it would say is in: baitwright plan"});
    return printed;
}

CommandResult run_card(const Arguments& arguments, const Surroundings& around) {
    const SheetFile file = sheet_file(arguments);
    const SessionPlan plan = planned_session(arguments, around, plan_request(arguments, around.today));
    const CardSheet sheet = session_sheet(plan, around.today);
    const PrintedSheet printed = print(sheet, file.format);
    if (file.path == "-") return {printed.bytes, plan_reply(plan).status, OutputForm::bytes};
    write_text_file(file.path, printed.bytes);
    CommandResult result = given(
        arguments, {plan_reply(plan).status, [&] { return card_told(plan, file.path, printed); },
                    [&] {
                        const UnitsShownHere as_ever{ShownUnits{}};
                        return card_json(plan, session_sheet(plan, around.today), file.path, file.format, printed);
                    }});
    result.unheeded = unheeded_in(plan);
    return result;
}

std::vector<Flag> card_flags() {
    std::vector<Flag> flags{
        {"-o", "FILE", "where to: sheet.pdf, sheet.svg or sheet.png; - for a PDF on standard output"},
        {"--replace", "", "lets -o write over a file that is there"},
    };
    for (const Flag& flag : plan_flags()) flags.push_back(flag);
    return flags;
}

}  // namespace

CommandSpec command_card() {
    return {"card",
            "one A5 sheet for the tackle box: what to weigh, wet and soak, and when",
            {{"STRATEGY", "its name, a TOML file, or - for standard input; NAME=3 for three sessions"}},
            card_flags(),
            run_card,
            R"(baitwright card "open carpet" --start 09:30 -o sheet.pdf
baitwright card "open carpet" --length 3h --people 2 -o sheet.png)"};
}

}  // namespace baitwright
