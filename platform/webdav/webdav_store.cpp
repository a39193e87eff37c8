// SPDX-License-Identifier: Apache-2.0
// Publishing: folders first, a temporary name, its length looked at, then a move that overwrites nothing.
#include "webdav/webdav_store.hpp"

#include <QCoreApplication>
#include <QSslCertificate>
#include <QSslSocket>
#include <QThread>
#include <algorithm>
#include <random>
#include <set>

#include "base/text.hpp"
#include "keys/hash.hpp"
#include "sync/webdav_listing.hpp"
#include "webdav/dav_address.hpp"
#include "webdav/dav_client.hpp"

namespace snugwalk {
namespace {

constexpr qint64 smallAnswer = 65'536;
const QByteArray propertiesAsked =
    "<?xml version=\"1.0\" encoding=\"utf-8\"?><propfind xmlns=\"DAV:\"><prop><getcontentlength/><getetag/>"
    "<resourcetype/></prop></propfind>";

Result<QSslConfiguration> tlsOf(const WebdavSettings &settings)
{
    QSslConfiguration tls = QSslConfiguration::defaultConfiguration();
    tls.setProtocol(QSsl::TlsV1_2OrLater);
    tls.setPeerVerifyMode(QSslSocket::VerifyPeer);
    if (settings.authority.empty())
        return tls;
    const QList<QSslCertificate> authorities =
        QSslCertificate::fromData(QByteArray::fromStdString(settings.authority), QSsl::Pem);
    if (authorities.isEmpty())
        return Error{Errc::InvalidInput, "the authority is no certificate in PEM form", "",
                     "export it as PEM"};
    tls.setCaCertificates(authorities);
    return tls;
}

// Qt's network classes need an application object; a command line may have none.
void needApplication()
{
    static int count = 1;
    static char name[] = "snugwalk";
    static char *names[] = {name, nullptr};
    if (QCoreApplication::instance() == nullptr)
        static QCoreApplication application(count, names);
}

QByteArray toBytes(std::string_view text) { return {text.data(), static_cast<qsizetype>(text.size())}; }

double luck()
{
    static thread_local std::minstd_rand random(std::random_device{}());
    return std::uniform_real_distribution<double>(0, 1)(random);
}

std::string folderOf(std::string_view name)
{
    const std::size_t slash = name.rfind('/');
    return std::string(slash == std::string_view::npos ? std::string_view() : name.substr(0, slash));
}

} // namespace

struct WebdavStore::Inside {
    WebdavSettings settings;
    QUrl root;
    DavClient client;
    std::set<std::string> folders; ///< known to be there
    std::optional<qint64> serverSeconds;

    Inside(WebdavSettings from, QUrl url, const QSslConfiguration &tls, const QByteArray &authorization)
        : settings(std::move(from)),
          root(std::move(url)),
          client(tls, authorization, {settings.idle, settings.total})
    {}

    DavAnswer send(DavVerb verb, std::string_view name, const QByteArray &body = {},
                   qint64 limit = smallAnswer, std::vector<std::pair<QByteArray, QByteArray>> headers = {})
    {
        DavAnswer answer = client.send({verb, davChild(root, name), std::move(headers), body, limit});
        if (answer.serverSeconds)
            serverSeconds = answer.serverSeconds;
        return answer;
    }

    bool mayTryAgain(int tries, const DavAnswer &answer) const
    {
        const bool mayPass = answer.meaning == DavMeaning::Retry || answer.meaning == DavMeaning::Locked ||
                             answer.meaning == DavMeaning::Parent;
        if (!mayPass || tries >= settings.tries)
            return false;
        const auto pause = waitBefore(tries, luck(), answer.retryAfter, settings.longestWait);
        if (settings.wait)
            return settings.wait(pause);
        QThread::msleep(static_cast<unsigned long>(pause.count()));
        return true;
    }

    DavAnswer sendPatiently(DavVerb verb, std::string_view name, const QByteArray &body, qint64 limit,
                            const std::vector<std::pair<QByteArray, QByteArray>> &headers = {})
    {
        for (int tries = 1;; ++tries) {
            DavAnswer answer = send(verb, name, body, limit, headers);
            if (!mayTryAgain(tries, answer))
                return answer;
        }
    }

    DavAnswer ensureFolder(const std::string &folder);
    DavAnswer tryPublish(const std::string &name, const QByteArray &bytes, bool &isThere);
    DavAnswer lookedAt(const std::string &name, const QByteArray &bytes);
    DavAnswer upload(const std::string &part, const QByteArray &bytes);
    DavAnswer putInPlace(const std::string &name, const QByteArray &bytes);
    Status settle(const std::string &name, std::string_view bytes);
};

// From the top down: one server answers 500, not 409, to a file whose folder is missing.
DavAnswer WebdavStore::Inside::ensureFolder(const std::string &folder)
{
    DavAnswer answer;
    answer.meaning = DavMeaning::Done;
    std::string path;
    for (const std::string_view part : split(folder, '/')) {
        if (part.empty())
            continue;
        path += std::string(part);
        if (folders.count(path) == 0) {
            answer = send(DavVerb::MakeFolder, path + "/");
            if (answer.meaning == DavMeaning::Parent && path.find('/') == std::string::npos) {
                const DavAnswer above = send(DavVerb::MakeFolder, ""); // the store's own folder
                if (above.meaning == DavMeaning::Done || above.meaning == DavMeaning::Taken)
                    answer = send(DavVerb::MakeFolder, path + "/");
            }
            if (answer.meaning != DavMeaning::Done && answer.meaning != DavMeaning::Taken)
                return answer;
            answer.meaning = DavMeaning::Done;
            folders.insert(path);
        }
        path += "/";
    }
    return answer;
}

// Whether all of it arrived: an answer of success alone may come from anyone on the way.
DavAnswer WebdavStore::Inside::lookedAt(const std::string &name, const QByteArray &bytes)
{
    DavAnswer answer = send(DavVerb::Head, name);
    const bool isCut = answer.meaning == DavMeaning::Done && answer.length != bytes.size();
    if (isCut || answer.meaning == DavMeaning::Missing)
        answer.meaning = DavMeaning::Retry;
    return answer;
}

DavAnswer WebdavStore::Inside::upload(const std::string &part, const QByteArray &bytes)
{
    const DavAnswer answer = send(DavVerb::Put, part, bytes);
    return answer.meaning == DavMeaning::Done ? lookedAt(part, bytes) : answer;
}

// Where a server does not move files: readers verify hashes, so a cut file harms nobody and is sent again.
DavAnswer WebdavStore::Inside::putInPlace(const std::string &name, const QByteArray &bytes)
{
    const DavAnswer answer = send(DavVerb::Put, name, bytes, smallAnswer, {{"If-None-Match", "*"}});
    return answer.meaning == DavMeaning::Done ? lookedAt(name, bytes) : answer;
}

// One try from the start; a lost reply of the last one shows as a file that is there.
DavAnswer WebdavStore::Inside::tryPublish(const std::string &name, const QByteArray &bytes, bool &isThere)
{
    DavAnswer answer = send(DavVerb::Head, name);
    isThere = answer.meaning == DavMeaning::Done;
    if (answer.meaning != DavMeaning::Missing && answer.meaning != DavMeaning::Parent)
        return answer;
    const std::string top = name.substr(0, name.find('/') == std::string::npos ? 0 : name.find('/') + 1);
    const std::string part = top + "tmp/" + toHex(randomBytes(12)) + ".part";
    for (const std::string &folder : {folderOf(name), folderOf(part)}) {
        answer = ensureFolder(folder);
        if (answer.meaning != DavMeaning::Done)
            return answer;
    }
    answer = upload(part, bytes);
    if (answer.meaning == DavMeaning::Done) {
        const QByteArray target = davChild(root, name).toEncoded();
        answer = send(DavVerb::Move, part, {}, smallAnswer, {{"Destination", target}, {"Overwrite", "F"}});
        if (answer.meaning == DavMeaning::Done)
            return lookedAt(name, bytes);
        if (answer.meaning == DavMeaning::Refused)
            answer = putInPlace(name, bytes);
        isThere = answer.meaning == DavMeaning::Taken;
    }
    if (answer.meaning == DavMeaning::Missing) // what we had just written: someone tidied up
        answer.meaning = DavMeaning::Retry;
    if (answer.status != 0) // a left-over harms nobody, so it is not worth waiting for a dead server
        static_cast<void>(send(DavVerb::Delete, part));
    return answer;
}

// Something has the name: our own file after a lost reply, or another.
Status WebdavStore::Inside::settle(const std::string &name, std::string_view bytes)
{
    const auto size = static_cast<qint64>(bytes.size());
    const DavAnswer answer = sendPatiently(DavVerb::Get, name, {}, size);
    if (answer.isTooLong)
        return errorOf(DavMeaning::Taken, 0, name);
    if (answer.meaning != DavMeaning::Done)
        return errorOf(answer.meaning, answer.status, name);
    const bool isSame = answer.body == QByteArrayView(bytes.data(), size);
    return isSame ? done() : Status(errorOf(DavMeaning::Taken, 0, name));
}

WebdavStore::WebdavStore(std::unique_ptr<Inside> inside) : m_inside(std::move(inside)) {}
WebdavStore::~WebdavStore() = default;

Result<std::unique_ptr<WebdavStore>> WebdavStore::open(const WebdavSettings &settings)
{
    const bool withPassword = !settings.user.empty() || !settings.password.empty();
    const Result<QUrl> root = davAddress(settings.address, withPassword);
    if (!root)
        return root.error();
    needApplication();
    if (root->scheme() == QLatin1String("https") && !QSslSocket::supportsSsl())
        return Error{Errc::Unsupported, "this machine has no TLS library that Qt can use", "",
                     "install OpenSSL"};
    const Result<QSslConfiguration> tls = tlsOf(settings);
    if (!tls)
        return tls.error();
    QByteArray authorization;
    if (withPassword) // RFC 7617; sent at once, since an answer to a challenge has lost bodies elsewhere
        authorization = "Basic " + toBytes(settings.user + ":" + settings.password).toBase64();
    return std::unique_ptr<WebdavStore>(
        new WebdavStore(std::make_unique<Inside>(settings, *root, *tls, authorization)));
}

Status WebdavStore::publish(std::string_view name, std::string_view bytes)
{
    const std::string file(name);
    if (!nameIsFine(name))
        return Error{Errc::InvalidInput, "not a name that a store keeps", file, ""};
    const QByteArray body = QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
    for (int tries = 1;; ++tries) {
        bool isThere = false;
        const DavAnswer answer = m_inside->tryPublish(file, body, isThere);
        if (isThere)
            return m_inside->settle(file, bytes);
        if (answer.meaning == DavMeaning::Done)
            return done();
        m_inside->folders.clear(); // whoever tidied up may have taken folders too
        if (!m_inside->mayTryAgain(tries, answer))
            return errorOf(answer.meaning, answer.status, file);
    }
}

Result<std::string> WebdavStore::read(std::string_view name, std::int64_t limit)
{
    const std::string file(name);
    if (!nameIsFine(name))
        return Error{Errc::InvalidInput, "not a name that a store keeps", file, ""};
    const DavAnswer answer = m_inside->sendPatiently(DavVerb::Get, file, {}, limit);
    if (answer.isTooLong)
        return Error{Errc::OutOfRange, "larger than such a file can be", file, "ask who keeps this store"};
    if (answer.meaning != DavMeaning::Done)
        return errorOf(answer.meaning, answer.status, file);
    return answer.body.toStdString();
}

Result<std::vector<StoreFile>> WebdavStore::list(std::string_view folder)
{
    if (!folder.empty() && !nameIsFine(folder))
        return Error{Errc::InvalidInput, "not a name that a store keeps", std::string(folder), ""};
    const std::string path = folder.empty() ? "" : std::string(folder) + "/";
    for (int tries = 1;; ++tries) {
        DavAnswer answer =
            m_inside->send(DavVerb::List, path, propertiesAsked, maxListingBytes,
                           {{"Depth", "1"}, {"Content-Type", "application/xml; charset=utf-8"}});
        if (answer.meaning == DavMeaning::Missing)
            return std::vector<StoreFile>();
        Result<std::vector<StoreFile>> files = errorOf(answer.meaning, answer.status, folder);
        if (answer.meaning == DavMeaning::Done) {
            files = parseListing(answer.body.toStdString(),
                                 davChild(m_inside->root, path).path(QUrl::FullyDecoded).toStdString());
            if (files)
                return files;
            answer.meaning = DavMeaning::Retry; // cut on the way, or no list at all
        }
        if (!m_inside->mayTryAgain(tries, answer))
            return files;
    }
}

Status WebdavStore::probe()
{
    const std::string name = "snugwalk1/tmp/probe-" + toHex(randomBytes(8));
    const std::string bytes = randomBytes(64);
    SNUG_TRY(publish(name, bytes));
    const Result<std::string> back = read(name, 64);
    static_cast<void>(m_inside->send(DavVerb::Delete, name));
    if (!back)
        return back.error();
    if (*back != bytes)
        return Error{Errc::Network, "the store gives back other bytes than were written",
                     m_inside->settings.address, "use another store"};
    return done();
}

std::optional<Instant> WebdavStore::serverTime() const
{
    if (!m_inside->serverSeconds)
        return std::nullopt;
    return fromMillis(*m_inside->serverSeconds * 1000);
}

} // namespace snugwalk
