# SPDX-License-Identifier: Apache-2.0
# How a QML module is made: one flat folder, a static library and its plugin, found under /qt/qml.

set(QT_QML_OUTPUT_DIRECTORY ${CMAKE_BINARY_DIR}/qml)

# snugwalk_qml_module(<target> URI <uri> FILES <qml and js> [SINGLETONS <qml>] [RESOURCES <files>]
#                     [IMPORTS <uris>] [LINKS <targets>])
# Pages are kept as byte code: as C++ they took three times as long to build and started no sooner.
# Singletons need both the pragma in the file and the property set before the module.
function(snugwalk_qml_module target)
    cmake_parse_arguments(arg "" "URI" "FILES;SINGLETONS;RESOURCES;IMPORTS;LINKS" ${ARGN})
    foreach(file IN LISTS arg_SINGLETONS)
        set_source_files_properties(${file} PROPERTIES QT_QML_SINGLETON_TYPE TRUE)
    endforeach()
    qt_add_library(${target} STATIC)
    qt_add_qml_module(${target}
        URI ${arg_URI}
        VERSION 1.0
        RESOURCE_PREFIX /qt/qml
        IMPORT_PATH ${QT_QML_OUTPUT_DIRECTORY}
        QML_FILES ${arg_SINGLETONS} ${arg_FILES}
        RESOURCES ${arg_RESOURCES}
        DEPENDENCIES ${arg_IMPORTS})
    # a file a page would read Qt's headers a hundred times over
    set_target_properties(${target} PROPERTIES
        QT_QMLCACHEGEN_ARGUMENTS --only-bytecode UNITY_BUILD ON UNITY_BUILD_BATCH_SIZE 64)
    target_link_libraries(${target} PUBLIC Qt6::Quick ${arg_LINKS})
endfunction()

# snugwalk_add_translations(<target>)
# Interface strings of every page and model, as :/i18n/snugwalk_<language>.qm. Catalogue texts are data.
# `update_translations` rewrites the .ts files.
function(snugwalk_add_translations target)
    find_package(Qt6 6.4 REQUIRED COMPONENTS LinguistTools)
    file(GLOB sources CONFIGURE_DEPENDS
        ${CMAKE_CURRENT_FUNCTION_LIST_DIR}/*/*.qml
        ${CMAKE_CURRENT_FUNCTION_LIST_DIR}/models/*.cpp
        ${CMAKE_CURRENT_FUNCTION_LIST_DIR}/models/*.hpp
        ${CMAKE_CURRENT_FUNCTION_LIST_DIR}/models/*/*.cpp
        ${CMAKE_CURRENT_FUNCTION_LIST_DIR}/models/*/*.hpp)
    set(folder ${CMAKE_CURRENT_FUNCTION_LIST_DIR}/../translations)
    file(GLOB languages CONFIGURE_DEPENDS ${folder}/snugwalk_*.ts)
    qt_add_translations(${target}
        TS_FILES ${languages}
        SOURCES ${sources}
        LUPDATE_OPTIONS -locations none -no-obsolete)
endfunction()
