#include <catch2/catch.hpp>
#include <string>

#include "files/library_file.h"

using namespace baitwright;

namespace {

/// A file with one thing wrong, and what must be said of it. Lines and columns were counted by hand.
struct BrokenFile {
    const char* text;
    const char* code;
    int line, column;
    const char* part_of_message;
};

/// Four good lines of an ingredient; what is wrong stands in line 5.
#define CRUMB "name = \"crumb\"\nkind = \"base\"\nloose_density = \"420 g/l\"\nabsorption = \"0.65 g/g\"\n"
/// Three good lines of a mix; what is wrong begins in line 4.
#define MIX "name = \"bed\"\n[[part]]\nof = \"crumb\"\n"
/// Four good lines of a feel.
#define FEEL "[[feel]]\nname = \"firm\"\naim = 1.2\nbelow = 1.3\n"

const BrokenFile broken_files[]{
    // nothing that a file can hold
    {"", "nothing-here", 1, 1, "no ingredient, mix, strategy, blend, venue or feel"},
    {"# only a remark\n", "nothing-here", 1, 1, "no ingredient"},
    {"\n  title = \"x\"\n", "nothing-here", 2, 3, "no ingredient"},
    {"name = \"crumb\"\n", "nothing-here", 1, 1, "no ingredient"},
    {"aim = 1.2\nbelow = 1.3\n", "nothing-here", 1, 1, "no ingredient"},
    {CRUMB "[[part]]\nof = \"x\"\nmass = \"1 g\"\n", "two-entries", 5, 3, "both a kind"},
    {FEEL "[[swim]]\n", "unknown-key", 5, 3, "'swim' is not a key of this file"},

    // the punctuation of TOML
    {"name = \"crumb\nkind = \"base\"\n", "not-toml", 1, 14, "no end on its line"},
    {CRUMB "moisture = 6.5 %\n", "not-toml", 5, 16, "something follows the value"},
    {CRUMB "moisture = 6%\n", "not-toml", 5, 13, "number is not written right"},
    {CRUMB "colour = brown\n", "not-toml", 5, 10, "this is no value"},
    {CRUMB "colour =\n", "not-toml", 5, 9, "nothing follows the '='"},
    {CRUMB "colour \"brown\"\n", "not-toml", 5, 8, "'=' is missing"},
    {CRUMB "name = \"other\"\n", "set-twice", 5, 1, "'name' is set twice"},
    {CRUMB "keeps = { dry = \"1 d\", dry = \"2 d\" }\n", "set-twice", 5, 24, "'dry' is set twice"},
    {CRUMB "keeps = { dry = \"1 d\", }\n", "not-toml", 5, 24, "in braces"},
    {CRUMB "cautions = [\"dust\" \"nuts\"]\n", "not-toml", 5, 20, "list is not closed"},
    {CRUMB "cautions = [\"dust\"", "not-toml", 5, 19, "list is not closed"},
    {CRUMB "[[pack]\nsize = \"1 kg\"\n", "not-toml", 5, 8, "heading is not written right"},
    {CRUMB "[[pack]]\nsize = \"1 kg\"\non = 2026-02-30\n", "not-toml", 7, 16, "not a day of the calendar"},
    {CRUMB "binder = 01\n", "not-toml", 5, 12, "cannot begin with 0"},
    {CRUMB "note = \"a\\qb\"\n", "not-toml", 5, 11, "backslash"},
    {CRUMB "größe = 3\n", "not-toml", 5, 3, "'=' is missing"},
    {CRUMB "= 3\n", "not-toml", 5, 1, "cannot begin like this"},
    {CRUMB "[[pack]]\nsize = \"1 kg\"\n[pack]\n", "not-toml", 7, 1, "stands in the file already"},
    {"name = \"b\xFF\"\n", "not-utf-8", 1, 10, "not in UTF-8"},
    {"name = \"é\xC3\"\n", "not-utf-8", 1, 10, "not in UTF-8"},
    {"a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a.a = 1\n", "too-deep", 1, 34, "more dots"},

    // an ingredient
    {"kind = \"base\"\nloose_density = \"420 g/l\"\nabsorption = \"0.65 g/g\"\n", "missing-value", 1, 1,
     "'name' is missing; an ingredient must state it"},
    {"[[ingredient]]\nname = \"crumb\"\nloose_density = \"420 g/l\"\nabsorption = \"0.65 g/g\"\n", "missing-value", 1,
     1, "'kind' is missing"},
    {"[[ingredient]]\nname = \"crumb\"\nkind = \"base\"\nloose_density = \"420 g/l\"\n", "missing-value", 1, 1,
     "'absorption' is missing; a base must state it"},
    {"[ingredient]\nname = \"crumb\"\nkind = \"base\"\nloose_density = \"420 g/l\"\nabsorption = \"0.65 g/g\"\n",
     "single-brackets", 1, 1, "single brackets"},
    {"ingredient = \"crumb\"\n", "wrong-type", 1, 14, "'ingredient' must be blocks, not the text 'crumb'"},
    {"ingredient = [ 3 ]\n", "wrong-type", 1, 16, "must be blocks, not the number 3"},
    {"name = \"\"\nkind = \"liquid\"\ndensity = \"1 g/ml\"\nwater = \"9 %\"\n", "bad-name", 1, 8, "is empty"},
    {"name = \"a/b\"\nkind = \"liquid\"\ndensity = \"1 g/ml\"\nwater = \"9 %\"\n", "bad-name", 1, 8, "holds a '/'"},
    {"name = \"-a\"\nkind = \"liquid\"\ndensity = \"1 g/ml\"\nwater = \"9 %\"\n", "bad-name", 1, 8, "begins with '-'"},
    {"name = 7\nkind = \"liquid\"\ndensity = \"1 g/ml\"\nwater = \"9 %\"\n", "wrong-type", 1, 8, "not the number 7"},
    {"name = \"a\\u001b[31m\"\nkind = \"liquid\"\ndensity = \"1 g/ml\"\nwater = \"9 %\"\n", "control-character", 1, 8,
     "control character"},
    {"name = \"a\"\nkind = \"pelet\"\n", "unknown-word", 2, 8, "'kind' cannot be 'pelet'"},
    {CRUMB "moisture = \"130 %\"\n", "out-of-range", 5, 12, "'moisture' must be from 0 to 99 %, not 130 %"},
    {CRUMB "moisture = \"-1 %\"\n", "out-of-range", 5, 12, "not -1 %"},
    {CRUMB "moisture = 6.5\n", "no-unit", 5, 12, "'moisture' must be text such as \"6.5 %\", not the number 6.5"},
    {CRUMB "moisture = nan\n", "no-unit", 5, 12, "not the number nan"},
    {CRUMB "moisture = true\n", "wrong-type", 5, 12, "not true"},
    {CRUMB "moisture = [\"6 %\"]\n", "wrong-type", 5, 12, "not a list"},
    {CRUMB "moisture = \"6.5\"\n", "no-unit", 5, 12, "has no unit"},
    {CRUMB "moisture = \"6.5 g\"\n", "wrong-dimension", 5, 12, "is a mass"},
    {CRUMB "moisture = \"6,5 %\"\n", "not-a-number", 5, 12, "comma"},
    {CRUMB "moisture = { value = \"130 %\" }\n", "out-of-range", 5, 22, "must be from 0 to 99 %"},
    {CRUMB "moisture = { spread = \"10 %\" }\n", "missing-value", 5, 12, "'value' is missing"},
    {CRUMB "moisture = { value = \"6 %\", spread = \"301 %\" }\n", "out-of-range", 5, 38, "from 0 to 300 %, not 301 %"},
    {CRUMB "moisture = { value = \"6 %\", spread = 10 }\n", "no-unit", 5, 38, "\"10 %\", not the number 10"},
    {CRUMB "moisture = { value = \"6 %\", source = \"heard\" }\n", "unknown-source", 5, 38, "kind of source"},
    {CRUMB "moisture = { value = \"6 %\", source = \"derived\" }\n", "derived-source", 5, 38, "cannot be 'derived'"},
    {CRUMB "moisture = { value = \"6 %\", source = 3 }\n", "wrong-type", 5, 38, "not the number 3"},
    {CRUMB "moisture = { value = \"6 %\", sprad = \"10 %\" }\n", "unknown-key", 5, 29, "'sprad' is not a key"},
    {CRUMB "slump = \"0.6 g/g\"\n", "inconsistent-values", 5, 1, "'slump' must be above 'absorption'"},
    {CRUMB "envelope_density = \"0.4 g/ml\"\n", "inconsistent-values", 5, 1, "above 'loose_density'"},
    {CRUMB "diameter = \"2 mm\"\n", "unfit-key", 5, 1, "does not belong to a base"},
    {CRUMB "solute = \"salt\"\n", "unfit-key", 5, 1, "belongs to a liquid"},
    {CRUMB "binder = \"1.5\"\n", "wrong-type", 5, 10, "plain number"},
    {CRUMB "binder = inf\n", "out-of-range", 5, 10, "from -20 to 20, not inf"},
    {CRUMB "particle_spread = nan\n", "out-of-range", 5, 19, "not nan"},
    {CRUMB "particle_spread = 0.5\n", "out-of-range", 5, 19, "from 1 to 10, not 0.5"},
    {CRUMB "colour = 3\n", "wrong-type", 5, 10, "'colour' must be text"},
    {CRUMB "coulor = \"brown\"\n", "unknown-key", 5, 1, "'coulor' is not a key of an ingredient"},
    {CRUMB "label_dose = \"25 ml per stone\"\n", "unknown-basis", 5, 14, "basis"},
    {CRUMB "label_dose = \"20000 kg per kg dry\"\n", "out-of-range", 5, 14, "from 1 mg to 10000 kg"},
    {CRUMB "cautions = \"dust\"\n", "wrong-type", 5, 12, "must be a list"},
    {CRUMB "cautions = [\"dust\", \"nut\"]\n", "unknown-caution", 5, 21, "'nut' is not a known caution"},
    {CRUMB "cautions = [\"dust\", 3]\n", "wrong-type", 5, 21, "not the number 3"},
    {CRUMB "keeps = \"9 month\"\n", "wrong-type", 5, 9, "block in braces"},
    {CRUMB "keeps = { dry = \"0 d\" }\n", "out-of-range", 5, 17, "from 0.1 s to 100 years"},
    {CRUMB "keeps = { dry = \"101 years\" }\n", "out-of-range", 5, 17, "from 0.1 s to 100 years"},
    {CRUMB "keeps = { dry = 9 }\n", "no-unit", 5, 17, "not the number 9"},
    {CRUMB "keeps = { wet = \"9 d\" }\n", "unknown-key", 5, 11, "'wet' is not a key"},
    {CRUMB "composition = { protein = \"101 %\" }\n", "out-of-range", 5, 27, "'protein' must be from 0 to 100 %"},
    {CRUMB "composition = { protein = \"60 %\", fat = \"60 %\" }\n", "inconsistent-values", 5, 15, "come to 120 %"},
    {CRUMB "composition = { sugar = \"1 %\" }\n", "unknown-key", 5, 17, "'sugar'"},
    {CRUMB "[[pack]]\nprice = \"£2.10\"\n", "missing-value", 5, 1, "'size' is missing; a pack must state it"},
    {CRUMB "[[pack]]\nsize = \"1 m\"\n", "wrong-dimension", 6, 8, "neither a mass nor a volume"},
    {CRUMB "[[pack]]\nsize = \"0 kg\"\n", "out-of-range", 6, 8, "must be from 1 mg to 10000 kg"},
    {CRUMB "[[pack]]\nsize = \"1 kg\"\nprice = 2.10\n", "no-currency", 7, 9, "not the number 2.1"},
    {CRUMB "[[pack]]\nsize = \"1 kg\"\nprice = \"2.10\"\n", "no-currency", 7, 9, "has no currency"},
    {CRUMB "[[pack]]\nsize = \"1 kg\"\nprice = \"-£1\"\n", "out-of-range", 7, 9, "not be below zero"},
    {CRUMB "[[pack]]\nsize = \"1 kg\"\non = \"2026-03-01\"\n", "wrong-type", 7, 6, "must be a date"},
    {CRUMB "[[pack]]\nsize = \"1 kg\"\non = 2026-03-01T09:30:00\n", "wrong-type", 7, 6, "not a date and time"},

    // a mix
    {"purpose = \"bream\"\nname = \"bed\"\n", "missing-value", 1, 1, "has no part"},
    {"[[mix]]\n[[mix.part]]\nof = \"crumb\"\nmass = \"1 g\"\n", "missing-value", 1, 1, "'name' is missing; a mix"},
    {MIX "mass = 400\n", "no-unit", 4, 8, "'mass' must be text such as \"400 g\", not the number 400"},
    {MIX "mass = \"400 ml\"\n", "wrong-dimension", 4, 8, "is a volume"},
    {MIX "mass = \"0 g\"\n", "out-of-range", 4, 8, "from 1 mg to 10000 kg, not '0 g'"},
    {MIX "mass = \"11 t\"\n", "unknown-unit", 4, 8, "unknown unit 't'"},
    {MIX "mass = \"10001 kg\"\n", "out-of-range", 4, 8, "from 1 mg to 10000 kg"},
    {MIX "volume = \"10001 l\"\n", "out-of-range", 4, 10, "from 0.001 ml to 10000 l"},
    {MIX "packs = \"2\"\n", "wrong-type", 4, 9, "plain number"},
    {MIX "packs = 0\n", "out-of-range", 4, 9, "'packs' must be above 0"},
    {MIX "share = -1\n", "out-of-range", 4, 9, "'share' must be from 0 to 1000000, not -1"},
    {MIX "share = 1000001\n", "out-of-range", 4, 9, "not 1000001"},
    {MIX "", "no-amount", 2, 1, "does not say how much"},
    {MIX "packs = 1\nmass = \"400 g\"\n", "two-amounts", 5, 1, "says twice"},
    {"name = \"bed\"\n[[part]]\nmass = \"400 g\"\n", "missing-value", 2, 1, "'of' is missing; a part must state it"},
    {"name = \"bed\"\n[part]\nof = \"a\"\nshare = 1\n", "single-brackets", 2, 1, "'part'"},
    {"name = \"bed\"\npart = \"crumb\"\n", "wrong-type", 2, 8, "must be blocks, not the text 'crumb'"},
    {MIX "share = 1\nprepare = \"soked\"\n", "unknown-word", 5, 11, "'prepare' cannot be 'soked'"},
    {MIX "share = 1\nprepared = \"soaked\"\n", "unknown-key", 5, 1, "'prepared' is not a key of a part"},
    {MIX "share = 1\n[[dose]]\nof = \"syrup\"\n", "missing-value", 5, 1, "'amount' is missing; a dose must state it"},
    {MIX "share = 1\n[[dose]]\nof = \"syrup\"\namount = 25\n", "no-basis", 7, 10, "not the number 25"},
    {MIX "share = 1\n[[dose]]\nof = \"syrup\"\namount = \"25 ml\"\n", "no-basis", 7, 10, "dosed by"},
    {MIX "share = 1\n[[dose]]\nof = \"syrup\"\namount = \"-2 %\"\n", "out-of-range", 7, 10, "above zero"},
    {"name = \"bed\"\nfeel = 3\n[[part]]\nof = \"a\"\nshare = 1\n", "wrong-type", 2, 8, "'feel' must be text"},
    {"[[mix]]\nname = \"bed\"\nfeel = [3]\n[[mix.part]]\nof = \"a\"\nshare = 1\n", "wrong-type", 3, 8, "not a list"},
    {"name = \"bed\"\nwhy = 3\n[[part]]\nof = \"a\"\nshare = 1\n", "wrong-type", 2, 7, "'why' must be text"},

    // feels
    {"[[feel]]\nname = \"firm\"\naim = 1.2\n", "missing-value", 1, 1, "'below' is missing; a feel must state it"},
    {"[[feel]]\nname = \"firm\"\naim = \"1.2\"\nbelow = 1.3\n", "wrong-type", 3, 7, "plain number"},
    {"[[feel]]\nname = \"firm\"\naim = 1.3\nbelow = 1.3\n", "inconsistent-values", 3, 7, "less than 'below'"},
    {"[[feel]]\nname = \"firm\"\naim = 1.2\nbelow = 11\n", "out-of-range", 4, 9, "from 0 to 3, not 11"},
    {FEEL "[[feel]]\nname = \"soft\"\naim = 1.2\nbelow = 1.4\n", "inconsistent-values", 7, 7, "less than 1.3"},
    {FEEL "[[feel]]\nname = \" FIRM \"\naim = 1.4\nbelow = 1.5\n", "duplicate-name", 6, 8, "in this file twice"},
    {FEEL "[[feel]]\nname = \"soft\"\naim = 1.3\nbelow = 1.35\ncolour = 1\n", "unknown-key", 9, 1, "of a feel"},
};

}  // namespace

TEST_CASE("a file with one thing wrong is told what, where and how to mend it") {
    for (const BrokenFile& broken : broken_files) {
        const LibraryFile file = read_library_file(broken.text, "a.toml");
        CAPTURE(broken.text);
        CHECK(file.faults.size() == 1);
        REQUIRE_FALSE(file.faults.empty());
        const Fault& fault = file.faults.front();
        CAPTURE(fault.message);
        CHECK(fault.code == broken.code);
        CHECK(fault.line == broken.line);
        CHECK(fault.column == broken.column);
        CHECK_THAT(fault.message, Catch::Contains(broken.part_of_message));
        CHECK(fault.file == "a.toml");
    }
}
