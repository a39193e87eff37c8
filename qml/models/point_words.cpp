// SPDX-License-Identifier: Apache-2.0
// Words of points.
#include "point_words.hpp"

#include <algorithm>

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(PointWords)
};

template <typename T>
const T *chosenFor(const std::vector<T> &choices, const std::string &point)
{
    const auto found =
        std::find_if(choices.rbegin(), choices.rend(), [&](const T &c) { return c.point == point; });
    return found == choices.rend() ? nullptr : &*found;
}

} // namespace

QString intervalWords(const Voice &voice, const Interval &interval)
{
    const QString months = !interval.months ? QString()
                           : *interval.months == 1
                               ? Words::tr("every month", "interval")
                               : Words::tr("every %n month(s)", "interval", *interval.months);
    if (!interval.distance)
        return months.isEmpty() ? Words::tr("before each move, or after what happens") : months;
    const QString far = voice.quantity(*interval.distance);
    return months.isEmpty() ? Words::tr("every %1", "distance").arg(far)
                            : Words::tr("%1 or %2", "every so many months, distance").arg(months, far);
}

PointEntry pointEntry(const Voice &voice, const Point &point, const Catalogue &product, const OwnChoices &own)
{
    PointEntry entry;
    entry.key = Voice::text(point.slug);
    entry.title = voice.point(point.slug);
    entry.zone = voice.word("zones", point.zone);
    entry.every = intervalWords(voice, point.interval);
    entry.isHidden = point.hidden.has_value();
    entry.isOwn = point.own;
    const OwnInterval *every = chosenFor(own.every, point.slug);
    entry.hasOwnInterval = every != nullptr;
    QStringList notes;
    if (point.hidden)
        notes << Words::tr("hidden by %1, %2", "who, date")
                     .arg(Voice::text(point.hidden->by), voice.date(point.hidden->date));
    if (point.own)
        notes << Words::tr("your own");
    if (every != nullptr) {
        if (const Point *before = product.find(point.slug))
            notes
                << Words::tr("the catalogue has %1", "interval").arg(intervalWords(voice, before->interval));
    }
    entry.note = notes.join(QStringLiteral("; "));
    return entry;
}

Result<Interval> readInterval(const QString &months, const QString &distance, const Voice &voice)
{
    Interval interval;
    if (!months.trimmed().isEmpty()) {
        bool isNumber = false;
        const int count = months.trimmed().toInt(&isNumber);
        if (!isNumber)
            return Error{Errc::InvalidInput, "not a whole number of months", months.toStdString(),
                         "type 6 or 12"};
        interval.months = count;
    }
    if (!distance.trimmed().isEmpty()) {
        const auto bare = findUnit(Dimension::Distance, voice.units == UnitSystem::Us ? "mi" : "km");
        const Result<double> si = voice.typed(Dimension::Distance, distance, bare);
        if (!si)
            return si.error();
        interval.distance = Distance::fromSi(*si);
    }
    return interval;
}

QVariantList consequenceChoices()
{
    const auto choice = [](const char *slug, const QString &name) {
        return QVariantMap{{QStringLiteral("slug"), QLatin1String(slug)}, {QStringLiteral("name"), name}};
    };
    return {choice("T", Words::tr("it matters on the road")),
            choice("F", Words::tr("fire, gas or fumes")),
            choice("W", Words::tr("water gets in")),
            choice("H", Words::tr("health")),
            choice("P", Words::tr("someone can be hurt at camp")),
            choice("C", Words::tr("comfort")),
            choice("K", Words::tr("looks only"))};
}

} // namespace snugwalk
