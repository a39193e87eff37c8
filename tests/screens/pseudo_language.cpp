// SPDX-License-Identifier: Apache-2.0
// Letters with accents, words with padding, marks of direction.
#include "pseudo_language.hpp"

#include <QHash>

namespace snugwalk::screens {
namespace {

constexpr char16_t rightToLeftMark = 0x200F;

QString longer(const QString &source)
{
    static const QHash<QChar, QChar> accents = {{u'a', u'ä'}, {u'e', u'é'}, {u'i', u'î'}, {u'o', u'ø'},
                                                {u'u', u'ü'}, {u'A', u'Å'}, {u'E', u'Ê'}, {u'O', u'Ö'}};
    QString text = source;
    for (QChar &letter : text)
        letter = accents.value(letter, letter);
    // words, not one long one: what breaks lines must be able to
    for (qsizetype left = source.size() * 2 / 5; left > 0; left -= 5)
        text += QStringLiteral(" øver");
    return text;
}

} // namespace

QString PseudoLanguage::translate(const char *, const char *source, const char *, int count) const
{
    const QString text = QString::fromUtf8(source).replace(QStringLiteral("%n"), QString::number(count));
    return m_kind == Kind::Long ? longer(text) : QChar(rightToLeftMark) + text + QChar(rightToLeftMark);
}

} // namespace snugwalk::screens
