// SPDX-License-Identifier: Apache-2.0
// Qt's network classes with their defaults turned round: they follow redirects with another verb, wait for
// ever, unpack anything, and call a cut body a success with status 200.
#include "webdav/dav_client.hpp"

#include <QDateTime>
#include <QEventLoop>
#include <QNetworkReply>
#include <QNetworkRequest>
#include <QTimer>
#include <memory>

namespace snugwalk {
namespace {

constexpr qint64 errorPageBytes = 65'536; // of what a server writes about an error

QByteArray verbName(DavVerb verb)
{
    switch (verb) {
    case DavVerb::List:
        return "PROPFIND";
    case DavVerb::Get:
        return "GET";
    case DavVerb::Head:
        return "HEAD";
    case DavVerb::Put:
        return "PUT";
    case DavVerb::Move:
        return "MOVE";
    case DavVerb::MakeFolder:
        return "MKCOL";
    case DavVerb::Delete:
        return "DELETE";
    }
    return "GET";
}

QNetworkRequest plainRequest(const DavRequest &asked, const QSslConfiguration &tls, DavTimes times)
{
    QNetworkRequest request(asked.url);
    request.setSslConfiguration(tls);
    request.setTransferTimeout(static_cast<int>(times.idle.count()));
    request.setAttribute(QNetworkRequest::RedirectPolicyAttribute, QNetworkRequest::ManualRedirectPolicy);
    request.setAttribute(QNetworkRequest::Http2AllowedAttribute, false);
    request.setAttribute(QNetworkRequest::CacheLoadControlAttribute, QNetworkRequest::AlwaysNetwork);
    request.setAttribute(QNetworkRequest::CacheSaveControlAttribute, false);
    request.setAttribute(QNetworkRequest::CookieLoadControlAttribute, QNetworkRequest::Manual);
    request.setAttribute(QNetworkRequest::CookieSaveControlAttribute, QNetworkRequest::Manual);
    request.setAttribute(QNetworkRequest::AuthenticationReuseAttribute, QNetworkRequest::Manual);
    request.setRawHeader("User-Agent", "Snugwalk/" SNUGWALK_VERSION);
    request.setRawHeader("Accept-Encoding", "identity"); // what is not packed cannot blow up
    if (!asked.body.isEmpty())
        request.setHeader(QNetworkRequest::ContentLengthHeader, asked.body.size());
    if (asked.verb == DavVerb::Put)
        request.setHeader(QNetworkRequest::ContentTypeHeader, "application/octet-stream");
    for (const auto &[name, value] : asked.headers)
        request.setRawHeader(name, value);
    return request;
}

bool looksLikeAPage(const QNetworkReply &reply, const QByteArray &body)
{
    const QByteArray type = reply.rawHeader("Content-Type").trimmed().toLower();
    const QByteArray start = body.left(64).trimmed().toLower();
    return type.startsWith("text/html") || start.startsWith("<!doctype html") || start.startsWith("<html");
}

// Qt numbers what went wrong below HTTP from 1 to 99, proxies included; HTTP's own codes above.
DavMeaning meaningOfReply(const DavRequest &asked, const QNetworkReply &reply, const DavAnswer &answer,
                          bool isTlsFault)
{
    const auto fault = static_cast<int>(reply.error());
    if (isTlsFault || reply.error() == QNetworkReply::SslHandshakeFailedError)
        return DavMeaning::StopTls;
    if (answer.status >= 300) // what else it says does not matter, nor whether it came whole
        return meaningOf(asked.verb, answer.status);
    if (answer.isTooLong)
        return DavMeaning::Bug;
    if (fault == QNetworkReply::ProxyAuthenticationRequiredError)
        return DavMeaning::StopAuth;
    if ((fault > 0 && fault < 200) || answer.status == 0)
        return DavMeaning::Retry;
    const DavMeaning meaning = meaningOf(asked.verb, answer.status);
    if (meaning != DavMeaning::Done)
        return meaning;
    // a PUT answered 201 may come with a page of the server's own; a sign-in page comes with 200
    if (answer.status == 200 && looksLikeAPage(reply, answer.body))
        return DavMeaning::StopPortal;
    const bool isCut = asked.verb == DavVerb::Get && answer.length && *answer.length != answer.body.size();
    return isCut ? DavMeaning::Retry : DavMeaning::Done;
}

void readHeaders(const QNetworkReply &reply, DavAnswer &answer)
{
    answer.status = reply.attribute(QNetworkRequest::HttpStatusCodeAttribute).toInt();
    bool isNumber = false;
    const qint64 length = reply.rawHeader("Content-Length").trimmed().toLongLong(&isNumber);
    if (isNumber && length >= 0)
        answer.length = length;
    const int seconds = reply.rawHeader("Retry-After").trimmed().toInt(&isNumber);
    if (isNumber && seconds >= 0)
        answer.retryAfter = std::chrono::seconds(seconds);
    const QDateTime date =
        QDateTime::fromString(QString::fromLatin1(reply.rawHeader("Date")), Qt::RFC2822Date);
    if (date.isValid())
        answer.serverSeconds = date.toSecsSinceEpoch();
}

} // namespace

DavClient::DavClient(QSslConfiguration tls, QByteArray authorization, DavTimes times)
    : m_tls(std::move(tls)), m_authorization(std::move(authorization)), m_times(times)
{}

DavAnswer DavClient::send(const DavRequest &asked)
{
    QNetworkRequest request = plainRequest(asked, m_tls, m_times);
    if (!m_authorization.isEmpty())
        request.setRawHeader("Authorization", m_authorization);
    // a HEAD sent as a custom verb would wait for the body that its header announces
    const std::unique_ptr<QNetworkReply> reply(
        asked.verb == DavVerb::Head ? m_network.head(request)
                                    : m_network.sendCustomRequest(request, verbName(asked.verb), asked.body));
    DavAnswer answer;
    bool isTlsFault = false;
    QEventLoop loop;
    QTimer deadline;
    deadline.setSingleShot(true);
    QObject::connect(&deadline, &QTimer::timeout, reply.get(), &QNetworkReply::abort);
    QObject::connect(reply.get(), &QNetworkReply::sslErrors, &loop, [&] { isTlsFault = true; });
    QObject::connect(reply.get(), &QNetworkReply::finished, &loop, &QEventLoop::quit);
    const auto take = [&] {
        const int status = reply->attribute(QNetworkRequest::HttpStatusCodeAttribute).toInt();
        const qint64 limit = status >= 300 ? errorPageBytes : asked.limit;
        if (!answer.isTooLong && reply->isOpen())
            answer.body += reply->read(limit + 1 - answer.body.size());
        answer.isTooLong = answer.isTooLong || answer.body.size() > limit;
    };
    QObject::connect(reply.get(), &QNetworkReply::readyRead, &loop, [&] {
        take();
        if (answer.isTooLong)
            reply->abort();
    });
    deadline.start(m_times.total);
    if (!reply->isFinished())
        loop.exec();
    take();
    readHeaders(*reply, answer);
    answer.meaning = meaningOfReply(asked, *reply, answer, isTlsFault);
    return answer;
}

} // namespace snugwalk
