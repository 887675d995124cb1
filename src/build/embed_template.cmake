# cmake -DOUTPUT=file.cpp [-DPAGE=bank.template.html] -P embed_template.cmake: the page as a C++ raw string; an empty one without PAGE.
set(page "")
if(PAGE)
    file(READ ${PAGE} page)
endif()
file(WRITE ${OUTPUT} "#include \"page/bank_page.h\"

namespace baitwright {

std::string_view bank_template() { return R\"bank~(${page})bank~\"; }

}  // namespace baitwright
")
