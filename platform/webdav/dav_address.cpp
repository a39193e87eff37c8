// SPDX-License-Identifier: Apache-2.0
// Addresses, refused early and in words.
#include "webdav/dav_address.hpp"

#include <QHostAddress>

namespace snugwalk {
namespace {

Error refused(const char *what, const char *act) { return {Errc::InvalidInput, what, "", act}; }

bool isThisMachine(const QString &host)
{
    return host.compare(QLatin1String("localhost"), Qt::CaseInsensitive) == 0 ||
           QHostAddress(host).isLoopback();
}

} // namespace

Result<QUrl> davAddress(const std::string &text, bool withPassword)
{
    QUrl url(QString::fromStdString(text), QUrl::StrictMode);
    if (!url.isValid() || url.host().isEmpty())
        return refused("this is no address of a WebDAV folder", "write it like https://host/folder/");
    if (!url.userInfo().isEmpty())
        return refused("a name or password does not belong in the address", "give them by themselves");
    if (url.hasQuery() || url.hasFragment())
        return refused("the address of a folder has no ? or #", "write it like https://host/folder/");
    const bool isSecure = url.scheme() == QLatin1String("https");
    if (!isSecure && url.scheme() != QLatin1String("http"))
        return refused("only https addresses are used", "write it like https://host/folder/");
    if (!isSecure && !isThisMachine(url.host()))
        return refused("without https anyone on the way could read and change what is sent",
                       "use the https address of the folder");
    if (!isSecure && withPassword)
        return refused("a password is only sent over https", "use the https address of the folder");
    if (!url.path().endsWith(QLatin1Char('/')))
        url.setPath(url.path() + QLatin1Char('/'));
    return url;
}

QUrl davChild(const QUrl &root, std::string_view name)
{
    QUrl url = root;
    url.setPath(root.path(QUrl::FullyDecoded) +
                    QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size())),
                QUrl::DecodedMode);
    return url;
}

} // namespace snugwalk
