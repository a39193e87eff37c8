// SPDX-License-Identifier: Apache-2.0
// Numbers, units and dates as the person reads them.
#include "voice.hpp"

#include <cmath>

#include <QDateTime>

namespace snugwalk {

QString Voice::line(const TapeLine &line) const
{
    const bool isPoint = line.points.size() == 1 && line.points.front() == line.slug;
    return isPoint ? point(line.slug) : word("lines", line.slug);
}

// The core prints "448.2 kPa" with a point; the number's part becomes the locale's.
QString Voice::localised(const std::string &formatted) const
{
    const QString whole = text(formatted);
    qsizetype end = 0;
    while (end < whole.size() && (whole[end].isDigit() || whole[end] == u'.' || whole[end] == u'-'))
        ++end;
    const QString digits = whole.left(end);
    const qsizetype point = digits.indexOf(u'.');
    const int decimals = point < 0 ? 0 : static_cast<int>(digits.size() - point - 1);
    bool isNumber = false;
    const double value = digits.toDouble(&isNumber);
    return isNumber ? locale.toString(value, 'f', decimals) + whole.mid(end) : whole;
}

QString Voice::quantity(Dimension dimension, double si) const
{
    return localised(formatFor(dimension, si, units));
}

QString Voice::roughly(Dimension dimension, double si) const
{
    const Unit unit = displayUnit(dimension, units, si);
    const double shown = fromSi(unit, si);
    if (shown == 0.0)
        return quantity(dimension, si);
    const int whole =
        static_cast<int>(std::floor(std::log10(std::abs(shown)))); // digits before the mark, less one
    const double step = std::pow(10.0, whole - 1);
    return localised(formatSi(unit, toSi(unit, std::round(shown / step) * step), std::max(0, 1 - whole)));
}

QString Voice::inUnit(Dimension dimension, double si, std::string_view unit) const
{
    const auto known = findUnit(dimension, unit);
    if (!known)
        return quantity(dimension, si);
    const double shown = std::abs(fromSi(*known, si));
    const bool isWhole = std::abs(shown - std::round(shown)) < 0.005;
    const int decimals = known->symbol == "in" ? 2 : 1; // a 32nd of an inch has to show
    return localised(formatSi(*known, si, isWhole || shown >= 1000.0 ? 0 : decimals));
}

QString Voice::extent(const std::optional<Extent> &extent) const
{
    if (!extent)
        return {};
    if (extent->dimension == Dimension::Count)
        return number(extent->si, 0);
    const bool asRead = units == UnitSystem::Si && !extent->unit.empty();
    return asRead ? inUnit(extent->dimension, extent->si, extent->unit)
                  : quantity(extent->dimension, extent->si);
}

QString Voice::number(double value, int decimals) const { return locale.toString(value, 'f', decimals); }

NumberStyle Voice::numberStyle() const
{
    const auto mark = [](const QString &written, char usual) {
        if (written == u"." || written == u",")
            return static_cast<char>(written[0].unicode());
        return written.isEmpty() || !written[0].isSpace() ? usual : ' ';
    };
    const char decimal = mark(locale.decimalPoint(), '.');
    // an apostrophe groups in some places; ours takes it in all
    return {decimal, mark(locale.groupSeparator(), decimal == '.' ? ',' : '.')};
}

Result<std::string> Voice::plain(const QString &typed) const
{
    PlainNumbers plain = plainNumbers(typed.toStdString(), numberStyle());
    if (plain.doubtful)
        return Error{Errc::InvalidInput, "a number that can be read two ways",
                     "\"" + plain.doubtful->typed + "\"",
                     "write " + plain.doubtful->taken + " or " + plain.doubtful->other};
    return std::move(plain.text);
}

QString Voice::twoWays(const DoubtfulNumber &number) const
{
    return tr("%1 can be read two ways. Write %2 or %3.")
        .arg(text(number.typed), text(number.taken), text(number.other));
}

Result<double> Voice::typed(Dimension dimension, const QString &text, std::optional<Unit> bare) const
{
    const Result<std::string> plain = this->plain(text.trimmed());
    if (!plain)
        return plain.error();
    return parseSi(dimension, *plain, bare);
}

QVariantMap Voice::plainTexts(QVariantMap form, const QStringList &keys) const
{
    const auto rewritten = [this](const QString &typed) {
        const PlainNumbers plain = plainNumbers(typed.toStdString(), numberStyle());
        if (!plain.doubtful)
            return text(plain.text);
        const QString number = text(plain.doubtful->typed);
        return QString(typed).replace(number, number + u'?');
    };
    for (const QString &key : keys) {
        if (!form.contains(key))
            continue;
        QVariant &value = form[key];
        if (value.typeId() == QMetaType::QString) {
            value = rewritten(value.toString());
            continue;
        }
        QStringList list;
        for (const QString &typed : value.toStringList())
            list << rewritten(typed);
        value = list;
    }
    return form;
}

QString Voice::date(CivilDate date) const
{
    const QDate day(static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
                    static_cast<int>(static_cast<unsigned>(date.day())));
    return locale.toString(day, QStringLiteral("d MMM yyyy"));
}

QString Voice::time(const LocalTime &time) const
{
    const auto at =
        QDateTime::fromMSecsSinceEpoch(toMillis(time.instant), Qt::OffsetFromUTC, time.offset.minutes * 60);
    return at.toString(QStringLiteral("HH:mm"));
}

QString Voice::dateTime(const LocalTime &time) const
{
    return tr("%1, %2", "date, time").arg(date(time), this->time(time));
}

QString Voice::position(const GeoPoint &point) const
{
    const QString north = point.latitude < 0 ? tr("S", "south latitude") : tr("N", "north latitude");
    const QString east = point.longitude < 0 ? tr("W", "west longitude") : tr("E", "east longitude");
    QStringList parts;
    parts << QStringLiteral("%1\u00a0%2").arg(number(std::abs(point.latitude), 4), north)
          << QStringLiteral("%1\u00a0%2").arg(number(std::abs(point.longitude), 4), east);
    if (point.altitude)
        parts << quantity(Dimension::Length, *point.altitude);
    if (point.accuracy)
        parts << QStringLiteral("\u00b1\u00a0") + quantity(*point.accuracy);
    return parts.join(QStringLiteral(", "));
}

} // namespace snugwalk
