# SPDX-License-Identifier: Apache-2.0
# Photos and durable files of the logbook; included by CMakeLists.txt beside it.
set(SNUGWALK_PHOTO_SOURCES
    files.cpp
    photo_copy.cpp
    photo_exif.cpp
    photo_exif_time.cpp
    photo_facts.cpp
    photo_parts.cpp
    photo_store.cpp)
