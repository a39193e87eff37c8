// SPDX-License-Identifier: Apache-2.0
// Letters, digits and dashes.
#include "file_names.hpp"

#include <QDir>
#include <QUrl>

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

std::filesystem::path pathOfFile(const QString &file)
{
    const QUrl url(file);
    return (url.isLocalFile() ? url.toLocalFile() : file).toStdString();
}

} // namespace snugwalk
