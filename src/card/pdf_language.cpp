#include "card/pdf_language.h"

#include <array>
#include <cstdio>
#include <cstdlib>

namespace baitwright {

namespace {

constexpr const char* language = "   /Lang (en-GB)\n   /ViewerPreferences << /DisplayDocTitle true >>\n";

/// The number behind the last such key; 0 where there is none.
std::size_t number_after(const std::string& pdf, const std::string& key) {
    const auto at = pdf.rfind(key);
    return at == std::string::npos ? 0 : std::strtoul(pdf.c_str() + at + key.size(), nullptr, 10);
}

}  // namespace

std::string with_language(std::string pdf) {
    const std::size_t old_table = number_after(pdf, "startxref\n"), catalog = number_after(pdf, "/Root ");
    const std::string opening = "\n" + std::to_string(catalog) + " 0 obj\n<<";
    const auto begin = pdf.rfind(opening);
    const auto end = pdf.find("endobj", begin), trailer = pdf.rfind("trailer\n<<"),
               trailer_end = pdf.find(">>", trailer);
    if (old_table == 0 || catalog == 0 || begin == std::string::npos || end == std::string::npos ||
        trailer == std::string::npos || trailer_end == std::string::npos || pdf.compare(old_table, 4, "xref") != 0)
        return pdf;
    std::string object = pdf.substr(begin + 1, end - begin - 1);
    object.insert(object.rfind(">>"), language);
    const std::string entries = pdf.substr(trailer, trailer_end - trailer);
    const std::size_t place = pdf.size(), new_table = place + object.size() + 7;
    std::array<char, 32> row{};
    std::snprintf(row.data(), row.size(), "%010zu 00000 n \n", place);
    return pdf + object + "endobj\n" + "xref\n0 1\n0000000000 65535 f \n" + std::to_string(catalog) + " 1\n" +
           row.data() + entries + "   /Prev " + std::to_string(old_table) + "\n>>\nstartxref\n" +
           std::to_string(new_table) + "\n%%EOF\n";
}

}  // namespace baitwright
