// SPDX-License-Identifier: Apache-2.0
// One HTTP request and its answer, bounded in time and size, never believing more than it must.
#pragma once

#include <QByteArray>
#include <QNetworkAccessManager>
#include <QSslConfiguration>
#include <QUrl>
#include <chrono>
#include <optional>
#include <utility>
#include <vector>

#include "sync/webdav_answer.hpp"

namespace snugwalk {

struct DavTimes {
    std::chrono::milliseconds idle{30'000};   ///< without a byte moving
    std::chrono::milliseconds total{600'000}; ///< of one request, whatever moves
};

struct DavRequest {
    DavVerb verb = DavVerb::Get;
    QUrl url;
    std::vector<std::pair<QByteArray, QByteArray>> headers;
    QByteArray body;
    qint64 limit = 65'536; ///< bytes of the answer that are read at most
};

struct DavAnswer {
    DavMeaning meaning = DavMeaning::Retry;
    int status = 0; ///< 0 when there was none
    QByteArray body;
    std::optional<qint64> length; ///< as the header says
    std::optional<std::chrono::seconds> retryAfter;
    std::optional<qint64> serverSeconds; ///< the server's clock, seconds since 1970
    bool isTooLong = false;
};

/// Blocks; for one thread. Redirects are never followed, cookies never kept, TLS faults never ignored.
class DavClient {
public:
    DavClient(QSslConfiguration tls, QByteArray authorization, DavTimes times);
    [[nodiscard]] DavAnswer send(const DavRequest &request);

private:
    QSslConfiguration m_tls;
    QByteArray m_authorization; ///< the header's value; empty for none
    DavTimes m_times;
    QNetworkAccessManager m_network;
};

} // namespace snugwalk
