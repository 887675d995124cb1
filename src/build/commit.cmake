# BAITWRIGHT_COMMIT: the commit that is built, short; empty where there is no git
# or no repository, as in a packed source. Who builds from such a source may give it: -DBAITWRIGHT_COMMIT=abc1234.
if(DEFINED CACHE{BAITWRIGHT_COMMIT})
    return()
endif()
set(BAITWRIGHT_COMMIT "")
find_program(GIT git)
if(NOT GIT OR NOT EXISTS ${PROJECT_SOURCE_DIR}/.git)
    return()
endif()
execute_process(COMMAND ${GIT} -C ${PROJECT_SOURCE_DIR} rev-parse --short=10 HEAD
    OUTPUT_VARIABLE BAITWRIGHT_COMMIT OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET)
# The next build after a commit asks again.
execute_process(COMMAND ${GIT} -C ${PROJECT_SOURCE_DIR} rev-parse --path-format=absolute --git-path logs/HEAD
    OUTPUT_VARIABLE heads OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET)
if(heads AND EXISTS ${heads})
    set_property(DIRECTORY ${PROJECT_SOURCE_DIR} APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${heads})
endif()
