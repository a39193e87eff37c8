// SPDX-License-Identifier: Apache-2.0
// Copying a logbook file with what SQLite keeps beside it.
#include "scratch_book.hpp"

#include <QFile>
#include <QFileInfo>

namespace snugwalk {

Result<ScratchBook> ScratchBook::copyOf(const QString &book)
{
    ScratchBook scratch;
    if (!scratch.m_folder->isValid())
        return Error{Errc::Io, "no temporary folder can be made", QDir::tempPath().toStdString(),
                     "make room there"};
    if (book.isEmpty())
        return scratch;
    if (!QFile::exists(book))
        return scratch; // a new one begins empty, in the window as in its pictures
    for (const char *ending : {"", "-wal"}) {
        const QString from = book + QLatin1String(ending);
        if (QFile::exists(from) && !QFile::copy(from, scratch.file() + QLatin1String(ending)))
            return Error{Errc::Io, "the logbook cannot be copied", from.toStdString(),
                         "make room, or close other programs"};
    }
    const QString photos = book + QStringLiteral(".photos");
    if (QFile::exists(photos))
        QFile::link(QFileInfo(photos).absoluteFilePath(), scratch.file() + QStringLiteral(".photos"));
    return scratch;
}

} // namespace snugwalk
