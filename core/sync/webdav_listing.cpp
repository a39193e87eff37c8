// SPDX-License-Identifier: Apache-2.0
// Expat with namespaces, no document type allowed, so that no entity is ever expanded.
#include "sync/webdav_listing.hpp"

#include <expat.h>
#include <memory>
#include <optional>

#include "base/text.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t maxText = 16'384; // of one href or number
constexpr int maxDepth = 64;

Error notAListing(const char *why)
{
    return {Errc::Network, std::string("the server's list of files cannot be used: ") + why, "",
            "look whether the address is a WebDAV folder"};
}

struct Reading {
    XML_Parser parser = nullptr;
    const char *fault = nullptr;
    int depth = 0;
    bool sawRoot = false;
    std::string text;
    // of the response that is open
    std::string href;
    std::int64_t size = 0;
    bool isFolder = false;
    bool hasFailed = false; // its own status, or that of the properties
    // of the propstat that is open: its status comes after its properties
    std::int64_t foundSize = 0;
    bool foundFolder = false;
    bool propsFailed = false;
    bool inPropstat = false;
    std::string folder;
    std::vector<StoreFile> files;

    void stop(const char *why)
    {
        fault = fault == nullptr ? why : fault;
        XML_StopParser(parser, XML_FALSE);
    }
    void start(std::string_view name);
    void end(std::string_view name);
    void finishResponse();
};

// The path of an href that may be a whole address.
std::string_view pathOf(std::string_view href)
{
    const std::size_t scheme = href.find("://");
    if (scheme == std::string_view::npos || href.front() == '/')
        return href;
    const std::size_t slash = href.find('/', scheme + 3);
    return slash == std::string_view::npos ? std::string_view("/") : href.substr(slash);
}

// "HTTP/1.1 404 Not Found" is a failure, anything of 2xx is none.
bool tellsFailure(std::string_view status)
{
    const std::size_t space = status.find(' ');
    return space == std::string_view::npos || status.substr(space + 1, 1) != "2";
}

void Reading::start(std::string_view name)
{
    text.clear();
    if (++depth > maxDepth)
        return stop("nested too deeply");
    if (depth == 1) {
        sawRoot = name == "DAV:|multistatus";
        if (!sawRoot)
            stop("it is something else");
    } else if (name == "DAV:|response" && depth == 2) {
        href.clear();
        size = 0;
        isFolder = hasFailed = false;
    } else if (name == "DAV:|propstat" && depth == 3) {
        foundSize = 0;
        foundFolder = propsFailed = false;
        inPropstat = true;
    } else if (name == "DAV:|collection") {
        foundFolder = true;
    }
}

void Reading::end(std::string_view name)
{
    if (name == "DAV:|href" && depth == 3) {
        href = std::string(trim(text));
    } else if (name == "DAV:|getcontentlength" && inPropstat) {
        foundSize = parseInteger(trim(text)).value_or(-1);
    } else if (name == "DAV:|status" && inPropstat) {
        propsFailed = tellsFailure(trim(text));
    } else if (name == "DAV:|status" && depth == 3) {
        hasFailed = tellsFailure(trim(text));
    } else if (name == "DAV:|propstat" && depth == 3) {
        inPropstat = false;
        if (!propsFailed) {
            size = foundSize != 0 ? foundSize : size;
            isFolder = isFolder || foundFolder;
        }
    } else if (name == "DAV:|response" && depth == 2) {
        finishResponse();
    }
    text.clear();
    --depth;
}

void Reading::finishResponse()
{
    const auto path = href.empty() ? std::nullopt : percentDecoded(pathOf(href));
    if (!path || hasFailed || !path->starts_with(folder) || size < 0)
        return;
    std::string name = path->substr(folder.size());
    if (!name.empty() && name.back() == '/') {
        name.pop_back();
        isFolder = true;
    }
    if (!nameIsFine(name) || name.find('/') != std::string::npos)
        return; // the folder itself, or a stranger's file
    if (files.size() == maxListingItems)
        return stop("over 50,000 files in one folder");
    files.push_back({isFolder ? name + "/" : name, isFolder ? 0 : size});
}

extern "C" {
void XMLCALL listingStart(void *data, const XML_Char *name, const XML_Char **)
{
    static_cast<Reading *>(data)->start(name);
}
void XMLCALL listingEnd(void *data, const XML_Char *name) { static_cast<Reading *>(data)->end(name); }
void XMLCALL listingText(void *data, const XML_Char *bytes, int length)
{
    auto *reading = static_cast<Reading *>(data);
    reading->text.append(bytes, static_cast<std::size_t>(length));
    if (reading->text.size() > maxText)
        reading->stop("a text is too long");
}
void XMLCALL listingDoctype(void *data, const XML_Char *, const XML_Char *, const XML_Char *, int)
{
    static_cast<Reading *>(data)->stop("it has a document type");
}
}

} // namespace

std::optional<std::string> percentDecoded(std::string_view text)
{
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] != '%') {
            out += text[i];
            continue;
        }
        const auto byte = fromHex(lowerAscii(text.substr(i + 1, 2)));
        if (!byte || byte->size() != 1 || byte->front() == '\0')
            return std::nullopt;
        out += *byte;
        i += 2;
    }
    return out;
}

Result<std::vector<StoreFile>> parseListing(std::string_view xml, std::string_view folder)
{
    if (xml.size() > maxListingBytes)
        return notAListing("over 4 MiB");
    const std::unique_ptr<XML_ParserStruct, decltype(&XML_ParserFree)> parser(
        XML_ParserCreateNS("UTF-8", '|'), &XML_ParserFree);
    if (!parser)
        return notAListing("no memory");
    Reading reading;
    reading.parser = parser.get();
    reading.folder = std::string(folder);
    if (reading.folder.empty() || reading.folder.back() != '/')
        reading.folder += '/';
    XML_SetUserData(parser.get(), &reading);
    XML_SetElementHandler(parser.get(), listingStart, listingEnd);
    XML_SetCharacterDataHandler(parser.get(), listingText);
    XML_SetStartDoctypeDeclHandler(parser.get(), listingDoctype);
    const auto parsed = XML_Parse(parser.get(), xml.data(), static_cast<int>(xml.size()), 1);
    if (reading.fault != nullptr)
        return notAListing(reading.fault);
    if (parsed != XML_STATUS_OK || !reading.sawRoot)
        return notAListing("it is broken off or no XML");
    return std::move(reading.files);
}

} // namespace snugwalk
