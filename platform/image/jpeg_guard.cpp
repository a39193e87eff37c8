// SPDX-License-Identifier: Apache-2.0
// Which of libjpeg's complaints end the work.
#include "image/jpeg_guard.hpp"

#include <jerror.h>

namespace snugwalk {
namespace {

JpegErrors &errorsOf(j_common_ptr codec)
{
    return *reinterpret_cast<JpegErrors *>(codec->err); // the manager is the first member
}

[[noreturn]] void onError(j_common_ptr codec)
{
    codec->err->format_message(codec, errorsOf(codec).message);
    std::longjmp(errorsOf(codec).back, 1);
}

// Warnings are how libjpeg says that it invents pixels. Three of them lose none and are let pass: odd
// version and colour marks, and padding before the end mark, which whole makes of cameras write.
bool losesPixels(const jpeg_error_mgr &manager)
{
    constexpr int endOfImage = 0xd9;
    switch (manager.msg_code) {
    case JWRN_ADOBE_XFORM:
    case JWRN_JFIF_MAJOR:
        return false;
    case JWRN_EXTRANEOUS_DATA:
        return manager.msg_parm.i[1] != endOfImage;
    default:
        return true;
    }
}

void onMessage(j_common_ptr codec, int level)
{
    if (level < 0 && losesPixels(*codec->err))
        onError(codec);
}

void onOutput(j_common_ptr) {} // nothing is printed by a library

} // namespace

JpegErrors::JpegErrors()
{
    jpeg_std_error(&manager);
    manager.error_exit = onError;
    manager.emit_message = onMessage;
    manager.output_message = onOutput;
}

void leaveJpeg(j_common_ptr codec, const char *message)
{
    std::snprintf(errorsOf(codec).message, JMSG_LENGTH_MAX, "%s", message);
    std::longjmp(errorsOf(codec).back, 1);
}

} // namespace snugwalk
