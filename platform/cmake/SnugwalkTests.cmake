# SPDX-License-Identifier: Apache-2.0
# How a test program of the core is made: doctest, fixed locale and zone, the folder as label.

# No bus: a test never writes into the key store of who runs it.
set(SNUGWALK_TEST_ENVIRONMENT "LC_ALL=C.UTF-8;TZ=UTC;DBUS_SESSION_BUS_ADDRESS=unix:path=/nonexistent")

# What is tested is optimised as it ships; a test itself runs once and is compiled more often than that: without
# optimising it compiles in little more than half the time.
add_library(snugwalk_test_options INTERFACE)
target_link_libraries(snugwalk_test_options INTERFACE snugwalk_warnings)
target_compile_options(snugwalk_test_options INTERFACE $<$<CONFIG:Release>:-O0>)
# More of GCC 12's misfires inside std::string: whether the second comes depends on how long the path of the
# checkout is, which tests are given as a literal. Clang and the sanitizer build look for real ones.
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
    target_compile_options(snugwalk_test_options INTERFACE -Wno-array-bounds -Wno-stringop-overflow)
endif()

find_package(doctest REQUIRED)
add_library(snugwalk_doctest_main STATIC
    ${CMAKE_SOURCE_DIR}/tests/unit/doctest_main.cpp ${CMAKE_SOURCE_DIR}/tests/unit/doctest_headers.cpp)
# its own copy of doctest comes with the bodies, which a header read before would keep out
set_source_files_properties(${CMAKE_SOURCE_DIR}/tests/unit/doctest_main.cpp TARGET_DIRECTORY snugwalk_doctest_main
    PROPERTIES SKIP_PRECOMPILE_HEADERS ON)
# -fPIE as every program has it, or they could not take its precompiled headers
set_target_properties(snugwalk_doctest_main PROPERTIES AUTOMOC OFF POSITION_INDEPENDENT_CODE OFF)
target_compile_options(snugwalk_doctest_main PRIVATE -fPIE)
target_link_libraries(snugwalk_doctest_main PUBLIC doctest::doctest PRIVATE snugwalk_test_options snugwalk_base)
snugwalk_precompile(snugwalk_doctest_main
    HEADERS <algorithm> <cmath> <doctest/doctest.h> <fstream> <map> <random> <string> <vector>
        core/catalogue/catalogue.hpp core/logbook/acts.hpp core/logbook/query.hpp core/round/history.hpp)

# The Python that Debian's own packages of libraries are for; another one may come first in the path.
set(SNUGWALK_DEBIAN_PYTHON /usr/bin/python3)

# snugwalk_doctest(<label> <name> SOURCES <files> LINKS <core folders> [LIBS <targets>])
# Program tst_<label>_<name>, test <label>.<name>. A program without a case fails.
function(snugwalk_doctest label name)
    cmake_parse_arguments(arg "" "" "SOURCES;LINKS;LIBS" ${ARGN})
    set(target tst_${label}_${name})
    add_executable(${target} ${arg_SOURCES})
    set_target_properties(${target} PROPERTIES AUTOMOC OFF)
    list(TRANSFORM arg_LINKS PREPEND snugwalk_)
    target_link_libraries(${target} PRIVATE
        ${arg_LINKS} ${arg_LIBS} snugwalk_doctest_main snugwalk_test_options)
    snugwalk_precompile(${target} FROM snugwalk_doctest_main)
    target_compile_definitions(${target} PRIVATE
        SNUGWALK_SOURCE_DIR="${CMAKE_SOURCE_DIR}" SNUGWALK_BINARY_DIR="${CMAKE_BINARY_DIR}")
    add_test(NAME ${label}.${name} COMMAND ${target})
    set_tests_properties(${label}.${name} PROPERTIES
        LABELS ${label}
        ENVIRONMENT "${SNUGWALK_TEST_ENVIRONMENT}"
        FAIL_REGULAR_EXPRESSION "test cases: +0 "
        TIMEOUT 300)
endfunction()

# snugwalk_script_test(<label> <name> COMMAND <command> [LABELS <more>])
# A test that is a script: no program to build. Exit code 77 is a skip, which CI counts as failed.
function(snugwalk_script_test label name)
    cmake_parse_arguments(arg "" "" "COMMAND;LABELS" ${ARGN})
    add_test(NAME ${label}.${name} COMMAND ${arg_COMMAND} WORKING_DIRECTORY ${CMAKE_SOURCE_DIR})
    set_tests_properties(${label}.${name} PROPERTIES
        LABELS "${label};${arg_LABELS}"
        ENVIRONMENT "${SNUGWALK_TEST_ENVIRONMENT}"
        SKIP_RETURN_CODE 77
        TIMEOUT 900)
endfunction()
