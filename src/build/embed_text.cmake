# cmake -DOUTPUT=file.cpp -DHEADER=room/name.h -DFUNCTION=name -DTEXT=file -P embed_text.cmake: a text as a C++ raw string.
file(READ ${TEXT} text)
file(WRITE ${OUTPUT} "#include \"${HEADER}\"

namespace baitwright {

std::string_view ${FUNCTION}() { return R\"text~(${text})text~\"; }

}  // namespace baitwright
")
