// SPDX-License-Identifier: Apache-2.0
// Words that are read from one screen or paper and typed into another.
#pragma once

#include <QStringList>

namespace snugwalk {

/// "  1  babad babad …", five a line, so that a word named by its number is found again.
[[nodiscard]] inline QString numberedWords(const QString &words)
{
    constexpr int wordsALine = 5;
    QStringList lines;
    const QStringList list = words.split(u' ', Qt::SkipEmptyParts);
    for (int at = 0; at < list.size(); at += wordsALine)
        lines << QStringLiteral("%1  %2").arg(at + 1, 3).arg(list.mid(at, wordsALine).join(u' '));
    return lines.join(u'\n');
}

} // namespace snugwalk
