# cmake -DPROGRAM=baitwright -DFOLDER=manuals -DCHANGELOG=docs/changelog.md -P write_manuals.cmake
# has the program write its manual pages, and packs them as Debian Policy 12.1 asks. They bear the newest day of the changelog, so that a build comes out alike on any day.

file(STRINGS "${CHANGELOG}" headings REGEX "^##.*20[0-9][0-9]-[0-1][0-9]-[0-3][0-9]" LIMIT_COUNT 1)
string(REGEX MATCH "20[0-9][0-9]-[0-1][0-9]-[0-3][0-9]" day "${headings}")
if(day STREQUAL "")
    message(FATAL_ERROR "${CHANGELOG}: no heading has a day, as in 2026-03-01, which the manual pages are to bear")
endif()
file(GLOB pages_before "${FOLDER}/baitwright*.1*")
if(pages_before)
    file(REMOVE ${pages_before})
endif()
file(MAKE_DIRECTORY "${FOLDER}")
execute_process(COMMAND "${PROGRAM}" manual --to "${FOLDER}" --date "${day}" COMMAND_ERROR_IS_FATAL ANY)
file(GLOB pages "${FOLDER}/baitwright*.1")
execute_process(COMMAND gzip -9n ${pages} COMMAND_ERROR_IS_FATAL ANY)
