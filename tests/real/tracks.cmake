# SPDX-License-Identifier: Apache-2.0
# Real tracks; the folder comes from fetch_tracks.sh before any test runs.
set(SNUGWALK_REAL_DATA "${CMAKE_SOURCE_DIR}/build/real-data" CACHE PATH "Where the fetch scripts of tests/real put files")
find_program(GEOD geod REQUIRED)

snugwalk_doctest(real tracks
    LINKS base trip
    SOURCES tst_real_tracks.cpp)
target_compile_definitions(tst_real_tracks PRIVATE SNUGWALK_GEOD="${GEOD}")
set_tests_properties(real.tracks PROPERTIES
    ENVIRONMENT "${SNUGWALK_TEST_ENVIRONMENT};SNUGWALK_REAL_DATA=${SNUGWALK_REAL_DATA}"
    SKIP_RETURN_CODE 77)
