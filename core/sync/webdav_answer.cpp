// SPDX-License-Identifier: Apache-2.0
// Status codes, verb by verb.
#include "sync/webdav_answer.hpp"

#include <algorithm>
#include <string>

namespace snugwalk {
namespace {

bool isOwnCode(DavVerb verb, int status)
{
    switch (verb) {
    case DavVerb::List:
        return status == 207;
    case DavVerb::Get:
    case DavVerb::Head:
        return status == 200;
    case DavVerb::Put:
        return status == 200 || status == 201 || status == 204;
    case DavVerb::Move:
        return status == 201 || status == 204;
    case DavVerb::MakeFolder:
        return status == 201;
    case DavVerb::Delete:
        return status == 200 || status == 204;
    }
    return false;
}

std::optional<DavMeaning> meaningForVerb(DavVerb verb, int status)
{
    if (verb == DavVerb::MakeFolder && status == 405)
        return DavMeaning::Taken;
    if (verb == DavVerb::Move && status == 412)
        return DavMeaning::Taken;
    if (verb == DavVerb::Move && (status == 403 || status == 405 || status == 501))
        return DavMeaning::Refused;
    if ((verb == DavVerb::Put || verb == DavVerb::MakeFolder || verb == DavVerb::Move) && status == 409)
        return DavMeaning::Parent;
    return std::nullopt;
}

std::string told(const char *what, int status)
{
    return status > 0 ? std::string(what) + " (it answered " + std::to_string(status) + ")" : what;
}

} // namespace

DavMeaning meaningOf(DavVerb verb, int status)
{
    if (isOwnCode(verb, status))
        return DavMeaning::Done;
    if (const auto special = meaningForVerb(verb, status))
        return *special;
    switch (status) {
    case 401:
    case 403:
    case 407:
        return DavMeaning::StopAuth;
    case 404:
    case 410:
        return DavMeaning::Missing;
    case 409:
        return DavMeaning::Parent;
    case 412:
        return DavMeaning::Taken;
    case 413:
    case 507:
        return DavMeaning::StopFull;
    case 423:
        return DavMeaning::Locked;
    case 408:
    case 425:
    case 429:
        return DavMeaning::Retry;
    default:
        break;
    }
    if (status >= 500)
        return DavMeaning::Retry;
    if (status >= 300 && status < 400)
        return DavMeaning::StopElsewhere;
    if (status >= 200 && status < 300)
        return DavMeaning::StopPortal;
    return DavMeaning::Bug;
}

Error errorOf(DavMeaning meaning, int status, std::string_view where)
{
    const std::string at(where);
    switch (meaning) {
    case DavMeaning::Missing:
        return {Errc::NotFound, told("the store does not have it", status), at,
                "look at the store's address"};
    case DavMeaning::Parent:
        return {Errc::Network, told("the folder above is not there", status), at,
                "look at the store's address"};
    case DavMeaning::Taken:
        return {Errc::Conflict, told("the store has something else under this name", status), at,
                "keep both and ask the owner"};
    case DavMeaning::Locked:
        return {Errc::Network, told("someone holds a lock on it", status), at, "try again in a few minutes"};
    case DavMeaning::Refused:
        return {Errc::Unsupported, told("the server does not do this here", status), at,
                "use a WebDAV folder that can be written"};
    case DavMeaning::StopAuth:
        return {Errc::Network, told("the store does not let you in", status), at,
                "look at the user name, the password and what you may write"};
    case DavMeaning::StopFull:
        return {Errc::Io, told("no room left on the store, or the file is too large for it", status), at,
                "free some space there; nothing was lost here"};
    case DavMeaning::StopTls:
        return {Errc::Network, "the server cannot prove that it is the one you named", at,
                "look at the address, this device's date, and the certificate"};
    case DavMeaning::StopElsewhere:
        return {Errc::Network, told("the address leads somewhere else", status), at,
                "enter the address that it leads to, if you know it"};
    case DavMeaning::StopPortal:
        return {Errc::Network, told("something else than the store answered, perhaps a sign-in page", status),
                at, "open a browser and sign in to this network, then try again"};
    case DavMeaning::Bug:
        return {Errc::Network, told("the server did not understand the request", status), at,
                "look whether the address is a WebDAV folder"};
    case DavMeaning::Done:
    case DavMeaning::Retry:
        break;
    }
    if (status >= 500) // nginx says no more than this when its disk is full
        return {Errc::Network, told("the server failed at it", status), at,
                "look whether there is room on its disk, or try again later; what was sent stays sent"};
    return {Errc::Network, told("the store could not be reached, or broke off", status), at,
            "try again when the connection is better, or look whether the server has room; what was sent "
            "stays sent"};
}

std::chrono::milliseconds waitBefore(int tries, double luck, std::optional<std::chrono::seconds> retryAfter,
                                     std::chrono::milliseconds most)
{
    using std::chrono::milliseconds;
    const int doublings = std::clamp(tries - 1, 0, 20);
    const milliseconds plain = std::min(milliseconds(1000LL << doublings), most);
    const double share = std::clamp(luck, 0.0, 1.0) / 2;
    const auto spread =
        plain + milliseconds(static_cast<long long>(share * static_cast<double>(plain.count())));
    const milliseconds wish = std::clamp(milliseconds(retryAfter.value_or(std::chrono::seconds(0))),
                                         milliseconds(0), milliseconds(std::chrono::minutes(15)));
    return std::max(spread, wish);
}

} // namespace snugwalk
