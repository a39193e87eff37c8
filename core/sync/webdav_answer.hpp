// SPDX-License-Identifier: Apache-2.0
// What a WebDAV server's answer means for each request: done, again later, plan anew, or tell a person.
#pragma once

#include <chrono>
#include <optional>
#include <string_view>

#include "base/result.hpp"

namespace snugwalk {

enum class DavVerb { List, Get, Head, Put, Move, MakeFolder, Delete };

/// What to do now. A 2xx that is not the verb's own code is no success: a captive portal answers 200 to all.
enum class DavMeaning {
    Done,
    Missing,       ///< 404, 410
    Parent,        ///< 409: the folder above is not there (or 500 to a PUT, as one server answers)
    Taken,         ///< 412 to a MOVE, 405 to a MKCOL: something has this name
    Locked,        ///< 423
    Refused,       ///< 403, 405, 501 to a MOVE: the server does not do this here, another way may work
    Retry,         ///< 408, 429, 5xx but 507, a broken connection, a timeout, a cut body
    StopAuth,      ///< 401, 403, 407
    StopFull,      ///< 413, 507
    StopTls,       ///< certificate or handshake
    StopElsewhere, ///< 3xx: the address is another one
    StopPortal,    ///< a page instead of an answer
    Bug            ///< 400, 415, 422 and what no server should say
};

/// Source [RFC4918] sections 9 and 11, [RFC9110] section 15; 500 for a missing parent was seen of one server.
[[nodiscard]] DavMeaning meaningOf(DavVerb verb, int status);

/// `Network` for what may pass, with what a person does about it; `NotFound`, `Conflict`, `Io` for a full
/// store.
[[nodiscard]] Error errorOf(DavMeaning meaning, int status, std::string_view where);

/// How long to wait before try `tries` (1 is the first repeat): 1 s doubled up to `most`, and up to half
/// more by `luck` (0 to 1), so that devices do not come back all at once. `retryAfter` is the server's wish.
[[nodiscard]] std::chrono::milliseconds waitBefore(int tries, double luck,
                                                   std::optional<std::chrono::seconds> retryAfter,
                                                   std::chrono::milliseconds most);

} // namespace snugwalk
