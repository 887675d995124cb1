# What the rooms need where Emscripten compiles them for a phone: the libraries' headers alone, for /usr/include as a whole
# would shadow Emscripten's own C library; exceptions by the engine's own means, which are several times faster than by JavaScript.
set(phone_headers ${PROJECT_BINARY_DIR}/include)
file(MAKE_DIRECTORY ${phone_headers})
foreach(library boost fmt nlohmann toml++ utf8proc.h)
    file(CREATE_LINK /usr/include/${library} ${phone_headers}/${library} SYMBOLIC)
endforeach()
target_include_directories(baitwright_flags SYSTEM INTERFACE ${phone_headers})
target_compile_options(baitwright_flags INTERFACE -fwasm-exceptions)
# Nobody there asks for a locale's signs, and the C++ library brings all of them along for one: 60 kB. Nor for numbers of other kinds
# than double. What Boost's functions find amiss is not worded, but goes on as no number, which the answers refuse.
target_compile_definitions(baitwright_flags INTERFACE FMT_STATIC_THOUSANDS_SEPARATOR=44 FMT_USE_FLOAT=0 FMT_USE_LONG_DOUBLE=0)
foreach(kind DOMAIN POLE OVERFLOW EVALUATION ROUNDING INDETERMINATE_RESULT)
    target_compile_definitions(baitwright_flags INTERFACE BOOST_MATH_${kind}_ERROR_POLICY=ignore_error)
endforeach()
target_link_options(baitwright_flags INTERFACE -fwasm-exceptions)
# The same bytes from any folder.
set(CMAKE_CXX_COMPILER_LAUNCHER ${PROJECT_SOURCE_DIR}/src/build/compile_anywhere.py ${PROJECT_SOURCE_DIR} ${PROJECT_BINARY_DIR}
    ${CMAKE_CXX_COMPILER_LAUNCHER} --)

add_library(phone_json INTERFACE)
add_library(nlohmann_json::nlohmann_json ALIAS phone_json)
