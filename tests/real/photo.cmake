# SPDX-License-Identifier: Apache-2.0
# Real photos; the folder comes from fetch_photos.sh before any test runs.
set(SNUGWALK_REAL_DATA "${CMAKE_SOURCE_DIR}/build/real-data" CACHE PATH "Where the fetch scripts of tests/real put files")

snugwalk_doctest(real photos
    LINKS logbook
    LIBS snugwalk_image snugwalk_test_pictures
    SOURCES tst_real_photos.cpp)
set_tests_properties(real.photos PROPERTIES
    ENVIRONMENT "${SNUGWALK_TEST_ENVIRONMENT};SNUGWALK_REAL_DATA=${SNUGWALK_REAL_DATA}"
    SKIP_RETURN_CODE 77)
