# SPDX-License-Identifier: Apache-2.0
# The sun by libraries that others wrote; the folder comes from fetch_sun_libraries.sh before any test runs.
set(SNUGWALK_REAL_DATA "${CMAKE_SOURCE_DIR}/build/real-data" CACHE PATH "Where the fetch scripts of tests/real put files")
snugwalk_script_test(real sun_libraries
    COMMAND Python3::Interpreter ${CMAKE_CURRENT_SOURCE_DIR}/sun_libraries.py $<TARGET_FILE:snugwalk>
        ${SNUGWALK_REAL_DATA}/sun-libraries)
