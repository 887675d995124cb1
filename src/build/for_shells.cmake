# What a shell and `man` find after an install: completions, and the manual pages that the program writes of itself.

set(completions ${PROJECT_SOURCE_DIR}/src/cli/completions)
install(FILES ${completions}/baitwright.bash DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions
        RENAME baitwright)
install(FILES ${completions}/_baitwright DESTINATION ${CMAKE_INSTALL_DATADIR}/zsh/vendor-completions)
install(FILES ${completions}/baitwright.fish DESTINATION ${CMAKE_INSTALL_DATADIR}/fish/vendor_completions.d)

if(NOT CMAKE_CROSSCOMPILING)
    set(manuals ${PROJECT_BINARY_DIR}/manuals)
    set(write_manuals ${CMAKE_COMMAND} -DPROGRAM=$<TARGET_FILE:baitwright> -DFOLDER=${manuals}
        -DCHANGELOG=${PROJECT_SOURCE_DIR}/docs/changelog.md -P ${PROJECT_SOURCE_DIR}/src/build/write_manuals.cmake)
    add_custom_target(manuals COMMAND ${write_manuals} VERBATIM)
    add_dependencies(manuals baitwright)
    # Preset `release` builds the program alone: an install has it write what it installs.
    list(JOIN write_manuals "\" \"" quoted)
    install(CODE "execute_process(COMMAND \"${quoted}\" COMMAND_ERROR_IS_FATAL ANY)")
    install(DIRECTORY ${manuals}/ DESTINATION ${CMAKE_INSTALL_MANDIR}/man1 FILES_MATCHING PATTERN "baitwright*.1.gz")
endif()
