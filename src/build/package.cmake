# What `cmake --install` lays beside the program and its modules, and the Debian package of it all (preset `package`).
include(GNUInstallDirs)
install(FILES README.md DEVELOPERS.md DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(DIRECTORY docs recipes DESTINATION ${CMAKE_INSTALL_DOCDIR}
        FILES_MATCHING PATTERN *.md PATTERN *.svg PATTERN *.png PATTERN *.toml)

# The licence, and those of what is compiled in, as the packages that it comes from tell them.
file(READ LICENSE licence)
string(REGEX MATCH "Copyright \\(c\\) ([^\n]+)" BAITWRIGHT_COPYRIGHT "${licence}")
set(BAITWRIGHT_COPYRIGHT ${CMAKE_MATCH_1})
string(REGEX REPLACE "^.*Copyright [^\n]+\n+" "" licence "${licence}")
string(REGEX REPLACE "\n+$" "" licence "${licence}")
string(REPLACE "\n\n" "\n.\n" licence "${licence}")
string(REPLACE "\n" "\n " BAITWRIGHT_LICENCE " ${licence}")
configure_file(src/build/copyright.in ${PROJECT_BINARY_DIR}/copyright @ONLY)
install(FILES ${PROJECT_BINARY_DIR}/copyright DESTINATION ${CMAKE_INSTALL_DOCDIR})
foreach(library libboost-dev libcli11-dev libeigen3-dev libfmt-dev libsqlite3-dev libsqlitecpp-dev libstdc++-12-dev libtomlplusplus-dev
                libutf8proc-dev nlohmann-json3-dev zlib1g-dev)
    if(EXISTS /usr/share/doc/${library}/copyright)
        install(FILES /usr/share/doc/${library}/copyright DESTINATION ${CMAKE_INSTALL_DOCDIR}/compiled-in RENAME ${library})
    endif()
endforeach()

# docs/changelog.md in Debian's form.
set(BAITWRIGHT_MAINTAINER "The baitwright authors <baitwright@example.org>" CACHE STRING "Who answers for the package")
set(changelog ${PROJECT_BINARY_DIR}/changelog)
install(CODE "execute_process(
    COMMAND \"${CMAKE_COMMAND}\" \"-DTEXT=${PROJECT_SOURCE_DIR}/docs/changelog.md\" \"-DOUTPUT=${changelog}\" -DPACKAGE=baitwright
            \"-DMAINTAINER=${BAITWRIGHT_MAINTAINER}\" -P \"${PROJECT_SOURCE_DIR}/src/build/debian_changelog.cmake\"
    COMMAND_ERROR_IS_FATAL ANY)")
set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS LICENSE)
install(FILES ${changelog}.gz DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(FILES src/build/lintian_overrides DESTINATION ${CMAKE_INSTALL_DATADIR}/lintian/overrides RENAME baitwright)

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME baitwright)
set(CPACK_PACKAGE_VENDOR "")
set(CPACK_PACKAGE_CONTACT "${BAITWRIGHT_MAINTAINER}")
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "arithmetic and physics of an angler's bait")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION "Name a mix and say how much of it you want, and baitwright tells what to weigh,
how much water to pour in first, how long to let it rest, how far to go after
that, what it comes to, what it costs, and how sure it is of all this.

It also soaks and pumps pellets, says what a ball does on its way down, plans a
session, keeps the shed and the log, learns from them, and makes a page for the
phone that needs no signal.")
# What the modules need is needed: a command that is there should work. Drawing wants one of the fonts that it is laid out for.
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS fonts-dejavu-extra)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
set(CPACK_STRIP_FILES ON)
set(CPACK_POST_BUILD_SCRIPTS ${PROJECT_SOURCE_DIR}/src/build/settle_package.cmake)
set(CPACK_PROJECT_CONFIG_FILE ${PROJECT_SOURCE_DIR}/src/build/package_day.cmake)
set(CPACK_BAITWRIGHT_CHANGELOG ${PROJECT_SOURCE_DIR}/docs/changelog.md)
include(CPack)
