# SPDX-License-Identifier: Apache-2.0
# How every target of the project is made: warnings, sanitizers, and the core's include root.

add_library(snugwalk_warnings INTERFACE)
target_compile_options(snugwalk_warnings INTERFACE
    -Wall -Wextra -Wpedantic -Wconversion -Wshadow -Wnon-virtual-dtor -Wold-style-cast -Werror)
# GCC 12 misfires on std::string, std::variant and std::optional once it optimises (its bugs 105651
# and 80635). Clang and the sanitizer build still look for what these two would find.
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
    target_compile_options(snugwalk_warnings INTERFACE -Wno-restrict -Wno-maybe-uninitialized)
endif()

# What puts words and pages together waits for people: quick to build counts for more than quick to run.
set(SNUGWALK_FACE_OPTIONS $<$<CONFIG:Release>:-O1>)

foreach(sanitizer IN LISTS SNUGWALK_SANITIZE)
    add_compile_options(-fsanitize=${sanitizer} -fno-omit-frame-pointer -fno-sanitize-recover=all)
    add_link_options(-fsanitize=${sanitizer})
endforeach()
if(SNUGWALK_COVERAGE)
    add_compile_options(--coverage -O0)
    add_link_options(--coverage)
endif()
if(SNUGWALK_FUZZ)
    add_compile_options(-fsanitize=fuzzer-no-link,address,undefined)
    add_link_options(-fsanitize=address,undefined)
endif()

# snugwalk_precompile(<owner> HEADERS <files>): with SNUGWALK_PCH, reads these headers once for all its files.
# snugwalk_precompile(<target> FROM <owner>): takes those of another target, made with the same options.
# GCC 12 warns inside std::string where it optimises fully what came precompiled, so with it the core has none;
# Clang, which makes the sanitized build, takes them everywhere.
function(snugwalk_precompile target)
    cmake_parse_arguments(arg "" "FROM" "HEADERS" ${ARGN})
    if(NOT SNUGWALK_PCH)
        return()
    endif()
    if(arg_FROM)
        target_precompile_headers(${target} REUSE_FROM ${arg_FROM})
        return()
    endif()
    list(TRANSFORM arg_HEADERS REPLACE "^([^<].+)" "${CMAKE_SOURCE_DIR}/\\1")
    target_precompile_headers(${target} PRIVATE ${arg_HEADERS})
endfunction()

# snugwalk_precompile_core(<target>): what nearly every file of the core and the command line reads, Clang only.
function(snugwalk_precompile_core target)
    if(NOT CMAKE_CXX_COMPILER_ID STREQUAL "Clang")
        return()
    endif()
    if(target STREQUAL "snugwalk_base")
        snugwalk_precompile(${target} HEADERS <algorithm> <chrono> <cmath> <filesystem> <fstream> <functional> <map>
            <memory> <optional> <string> <variant> <vector> core/base/estimate.hpp core/base/result.hpp
            core/base/time.hpp core/base/units.hpp core/base/value.hpp)
    else()
        snugwalk_precompile(${target} FROM snugwalk_base)
    endif()
endfunction()

# snugwalk_core_library(<folder> LINKS <folders> SOURCES <files>)
# One static library a core folder; LINKS are the arrows it may follow.
function(snugwalk_core_library folder)
    cmake_parse_arguments(arg "" "" "LINKS;SOURCES;PUBLIC_LIBS;PRIVATE_LIBS" ${ARGN})
    add_library(snugwalk_${folder} STATIC ${arg_SOURCES})
    set_target_properties(snugwalk_${folder} PROPERTIES AUTOMOC OFF)
    target_include_directories(snugwalk_${folder} PUBLIC ${CMAKE_SOURCE_DIR}/core)
    # results must agree between processors, so no fused multiply-add
    target_compile_options(snugwalk_${folder} PRIVATE -ffp-contract=off)
    # sanitized tests spend their time in the core, their build in the tests: only the core is optimised
    if(SNUGWALK_SANITIZE)
        target_compile_options(snugwalk_${folder} PRIVATE -O1)
    endif()
    list(TRANSFORM arg_LINKS PREPEND snugwalk_)
    target_link_libraries(snugwalk_${folder} PUBLIC ${arg_LINKS} ${arg_PUBLIC_LIBS}
        PRIVATE snugwalk_warnings ${arg_PRIVATE_LIBS})
    snugwalk_precompile_core(snugwalk_${folder})
endfunction()
