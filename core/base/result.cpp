// SPDX-License-Identifier: Apache-2.0
// The two names of an error code: a number for shells, a word for JSON.
#include "base/result.hpp"

namespace snugwalk {

int exitCode(Errc code)
{
    switch (code) {
    case Errc::Usage:
        return 2;
    case Errc::InvalidInput:
    case Errc::OutOfRange:
    case Errc::Unsupported:
        return 3;
    case Errc::NotFound:
        return 4;
    case Errc::Io:
    case Errc::Corrupt:
        return 5;
    case Errc::Conflict:
        return 6;
    case Errc::Network:
        return 7;
    }
    return 70;
}

const char *codeName(Errc code)
{
    switch (code) {
    case Errc::Usage:
        return "usage";
    case Errc::InvalidInput:
        return "invalid_input";
    case Errc::OutOfRange:
        return "out_of_range";
    case Errc::Unsupported:
        return "unsupported";
    case Errc::NotFound:
        return "not_found";
    case Errc::Conflict:
        return "conflict";
    case Errc::Io:
        return "storage";
    case Errc::Corrupt:
        return "corrupt";
    case Errc::Network:
        return "network";
    }
    return "bug";
}

} // namespace snugwalk
