// SPDX-License-Identifier: Apache-2.0
// Letters, digits and dashes.
#include "file_names.hpp"

#include <QDir>
#include <QFile>
#include <QUrl>

#include "logbook/files.hpp"

namespace snugwalk {
namespace {

// Only what every file system takes.
QString plainName(const QString &name)
{
    QString out;
    for (const QChar c : name.normalized(QString::NormalizationForm_D).toLower()) {
        if ((c >= u'a' && c <= u'z') || (c >= u'0' && c <= u'9'))
            out += c;
        else if (c.category() != QChar::Mark_NonSpacing && !out.isEmpty() && !out.endsWith(u'-'))
            out += u'-';
    }
    return out;
}

} // namespace

QString homeFile(const QStringList &parts, const QString &ending)
{
    QStringList plain;
    for (const QString &part : parts) {
        if (!plainName(part).isEmpty())
            plain << plainName(part);
    }
    return QUrl::fromLocalFile(QDir::homePath() + u'/' + plain.join(u'-') + u'.' + ending).toString();
}

// A phone's picker gives an address that only Qt can write to, and no way to replace a file whole.
Result<std::string> writeToFile(const QString &file, const std::string &bytes)
{
    const QUrl url(file);
    if (url.scheme() != u"content") {
        const std::filesystem::path path = (url.isLocalFile() ? url.toLocalFile() : file).toStdString();
        SNUG_TRY(replaceFile(path, bytes));
        return path.filename().string();
    }
    QFile out(file);
    const auto size = static_cast<qint64>(bytes.size());
    if (!out.open(QIODevice::WriteOnly | QIODevice::Truncate) || out.write(bytes.data(), size) != size ||
        !out.flush())
        return Error{Errc::Io, "the file cannot be written", url.fileName().toStdString(),
                     "choose another place for it"};
    return url.fileName().toStdString();
}

} // namespace snugwalk
