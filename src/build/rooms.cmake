# How a room of src/ is built, and the flags that all of them share.

add_library(baitwright_flags INTERFACE)
target_include_directories(baitwright_flags INTERFACE ${PROJECT_SOURCE_DIR}/src)
# Who only runs the program is told nothing of what might be wrong in it, which takes a seventh of the time: the tests' build is.
if(CMAKE_BUILD_TYPE STREQUAL Release AND NOT BAITWRIGHT_STRICT AND NOT EMSCRIPTEN)
    target_compile_options(baitwright_flags INTERFACE -w)
    # And its format strings are held against their values by that build alone.
    target_compile_definitions(baitwright_flags INTERFACE FMT_CONSTEVAL=)
else()
    target_compile_options(baitwright_flags INTERFACE -Wall -Wextra -Wpedantic -Wconversion -Wnon-virtual-dtor)
endif()
if(CMAKE_UNITY_BUILD AND CMAKE_CXX_COMPILER_ID STREQUAL GNU)
    # In a batch the file-local names of its neighbours are no names of one's own to shadow; `dev`, file by file, tells of all.
    # And where so much is inlined, g++ 12 takes an optional that is asked first for unset (GCC bug 80635).
    target_compile_options(baitwright_flags INTERFACE -Wshadow=local -Wno-maybe-uninitialized)
else()
    target_compile_options(baitwright_flags INTERFACE -Wshadow)
endif()
if(CMAKE_CXX_COMPILER_ID STREQUAL GNU)
    # g++ 12 warns wrongly of std::string in operator+ (GCC bug 105651).
    target_compile_options(baitwright_flags INTERFACE -Wno-restrict)
endif()
if(BAITWRIGHT_STRICT)
    target_compile_options(baitwright_flags INTERFACE -Werror)
endif()
if(BAITWRIGHT_SANITIZE)
    target_compile_options(baitwright_flags INTERFACE -fsanitize=${BAITWRIGHT_SANITIZE} -fno-sanitize-recover=all -fno-omit-frame-pointer)
    target_link_options(baitwright_flags INTERFACE -fsanitize=${BAITWRIGHT_SANITIZE})
endif()
if(NOT EMSCRIPTEN)
    # A slip of ours in memory ends the program instead of doing what a file wants (tests/cli/hardened_program_test.cpp).
    target_compile_options(baitwright_flags INTERFACE -fstack-protector-strong)
    target_link_options(baitwright_flags INTERFACE -Wl,-z,relro,-z,now)
    # Thousands of addresses, set right in one pass over a bit map.
    include(CheckLinkerFlag)
    check_linker_flag(CXX -Wl,-z,pack-relative-relocs BAITWRIGHT_PACKS_RELOCATIONS)
    if(BAITWRIGHT_PACKS_RELOCATIONS)
        target_link_options(baitwright_flags INTERFACE -Wl,-z,pack-relative-relocs)
    endif()
    string(TOUPPER "${CMAKE_BUILD_TYPE}" build_type)
    if(NOT BAITWRIGHT_SANITIZE AND "${CMAKE_CXX_FLAGS_${build_type}}" MATCHES "-O[123s]")
        # Without optimisation the first does nothing but warn.
        set(BAITWRIGHT_CHECKED ON)
        target_compile_definitions(baitwright_flags INTERFACE _FORTIFY_SOURCE=2 _GLIBCXX_ASSERTIONS)
    endif()
endif()
if(CMAKE_BUILD_TYPE STREQUAL Release)
    # What people are given says nothing of the folder that it was built in: the same bytes from any (tests/package/run).
    target_compile_options(baitwright_flags INTERFACE -ffile-prefix-map=${PROJECT_BINARY_DIR}=build
        -ffile-prefix-map=${PROJECT_SOURCE_DIR}=.)
endif()
if(BAITWRIGHT_COVERAGE)
    target_compile_options(baitwright_flags INTERFACE --coverage -O0)
    target_link_options(baitwright_flags INTERFACE --coverage)
endif()

if(EMSCRIPTEN)
    include(phone)
endif()

# Where speed is wanted (`Release`), the equations are compiled for it; the rooms of words, which wait for a person or a
# disk, as soon as they are good: more would take half as long again to compile and bring nothing (docs/decisions.md).
# So are the tests, and the same rooms where the tests are built in batches.
set(as_soon_as_good $<$<CONFIG:Release>:-Og>)
if(CMAKE_UNITY_BUILD AND NOT BAITWRIGHT_SANITIZE AND NOT BAITWRIGHT_COVERAGE)
    list(APPEND as_soon_as_good $<$<CONFIG:Debug>:-Og>)
endif()
if(CMAKE_CXX_COMPILER_ID STREQUAL GNU)
    # The compiler may use half a gigabyte before it tidies up: less time, the same program.
    target_compile_options(baitwright_flags INTERFACE "SHELL:--param ggc-min-heapsize=500000")
endif()

# The standard library is most of what is read file by file: without this a change of one header takes half as long again
# (docs/decisions.md). A batch reads it once anyway.
function(read_standard_library_once target)
    if(NOT EMSCRIPTEN AND NOT CMAKE_UNITY_BUILD)
        target_precompile_headers(${target} PRIVATE <algorithm> <array> <chrono> <cmath> <cstdint> <filesystem> <functional>
            <limits> <map> <memory> <numeric> <optional> <span> <string> <string_view> <utility> <variant> <vector>)
        if(CMAKE_CXX_COMPILER_ID STREQUAL GNU)
            target_compile_options(${target} PRIVATE -fpch-preprocess)  # for ccache
        endif()
    endif()
endfunction()

# In `dev` nothing else is optimised: the tests by random cases of the rooms above take half as long for it.
function(reckon_in_dev target)
    if(NOT EMSCRIPTEN AND NOT CMAKE_UNITY_BUILD AND NOT BAITWRIGHT_COVERAGE)
        target_compile_options(${target} PRIVATE $<$<CONFIG:Debug>:-O1>)
    endif()
endfunction()

# add_sums(NAME OPTIONS SOURCES file... ROOMS room...)
# makes of the files of a room that reckon a batch of their own, compiled with these options in a release; the room takes in its objects.
function(add_sums name options)
    cmake_parse_arguments(sums "" "" "SOURCES;ROOMS" ${ARGN})
    add_library(baitwright_${name} OBJECT ${sums_SOURCES})
    list(TRANSFORM sums_ROOMS PREPEND baitwright_)
    target_link_libraries(baitwright_${name} PRIVATE baitwright_flags ${sums_ROOMS})
    read_standard_library_once(baitwright_${name})
    reckon_in_dev(baitwright_${name})
    if(NOT EMSCRIPTEN)
        target_compile_options(baitwright_${name} PRIVATE "$<$<CONFIG:Release>:${options}>")
    endif()
endfunction()

# add_room(NAME SOURCES file... [ROOMS room...] [LIBRARIES library...])
# makes the static library `baitwright_NAME` of src/NAME, which may include the rooms named and links the libraries.
function(add_room name)
    cmake_parse_arguments(room "" "" "SOURCES;ROOMS;LIBRARIES" ${ARGN})
    add_library(baitwright_${name} STATIC ${room_SOURCES})
    set(below ${room_ROOMS})
    list(TRANSFORM below PREPEND baitwright_)
    target_link_libraries(baitwright_${name} PUBLIC baitwright_flags ${below} PRIVATE ${room_LIBRARIES})
    read_standard_library_once(baitwright_${name})
    if(name STREQUAL physics)
        reckon_in_dev(baitwright_${name})
    elseif(NOT EMSCRIPTEN)
        target_compile_options(baitwright_${name} PRIVATE ${as_soon_as_good})
    endif()
endfunction()
