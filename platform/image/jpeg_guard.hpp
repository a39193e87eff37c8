// SPDX-License-Identifier: Apache-2.0
// libjpeg's errors without ending the process: a jump back to where the work began.
#pragma once

#include <csetjmp>
#include <cstdio>
#include <string>

#include <jpeglib.h>

namespace snugwalk {

/// Put into the `err` of a codec object. Between `setjmp` and the jump no C++ object with a destructor may
/// be made, so the work is done by functions over one struct that lives outside.
struct JpegErrors {
    JpegErrors();
    JpegErrors(const JpegErrors &) = delete;
    JpegErrors &operator=(const JpegErrors &) = delete;

    jpeg_error_mgr manager{}; // first: libjpeg hands back a pointer to it
    std::jmp_buf back{};
    char message[JMSG_LENGTH_MAX] = {};
};

/// Leaves the work at hand with a message of our own; only under `setjmp`.
[[noreturn]] void leaveJpeg(j_common_ptr codec, const char *message);

} // namespace snugwalk
