// SPDX-License-Identifier: Apache-2.0
// Sentences about files.
#include "intake_words.hpp"

#include <QRegularExpression>
#include <QVariantMap>

namespace snugwalk {
namespace {

constexpr double bytesPerMegabyte = 1e6;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Intake)
public:
    static QString act(Errc code);
    static QString where(const QString &where);
};

QString Words::act(Errc code)
{
    switch (code) {
    case Errc::Usage:
        return tr("Say what is asked for above, and take it in once more.");
    case Errc::InvalidInput:
    case Errc::Corrupt:
        return tr("Put it right in the file, or export it once more from where it came from.");
    case Errc::OutOfRange:
        return tr("Check the number and its unit, or export the file in smaller parts.");
    case Errc::Conflict:
        return tr("It is in the logbook already: nothing has to be done.");
    case Errc::NotFound:
        return tr("It may have been moved. Choose it again.");
    case Errc::Io:
        return tr("See that the disk is there, has room and may be read.");
    case Errc::Unsupported:
    case Errc::Network:
        break;
    }
    return tr("Install the newest version, or use another file.");
}

// The readers say "line 12, column 3"; anything else is a name and stays.
QString Words::where(const QString &where)
{
    static const QRegularExpression form(QStringLiteral("^(.*?)\\bline (\\d+)(?:, column (\\d+))?(.*)$"));
    const QRegularExpressionMatch match = form.match(where);
    if (!match.hasMatch())
        return where;
    const QString line = match.captured(3).isEmpty()
                             ? tr("line %1").arg(match.captured(2))
                             : tr("line %1, column %2").arg(match.captured(2), match.captured(3));
    return match.captured(1) + line + match.captured(4);
}

long long dropped(const std::vector<Drop> &drops)
{
    long long count = 0;
    for (const Drop &drop : drops)
        count += drop.count;
    return count;
}

} // namespace

QStringList intakeOutcome(const Voice &voice, const IntakeFound &found)
{
    QStringList list;
    const auto left = static_cast<int>(dropped(found.drops));
    if (found.weather) {
        const std::vector<WeatherDay> &days = found.weather->days;
        list << Words::tr("%n day(s) of weather were added.", nullptr, static_cast<int>(days.size()));
        if (!days.empty())
            list << Words::tr("From %1 to %2, at %3.", "dates, place")
                        .arg(voice.date(days.front().date), voice.date(days.back().date),
                             voice.position(found.weather->place));
        if (left > 0)
            list << Words::tr("%n reading(s) were left out.", nullptr, left);
    } else if (found.shake) {
        const RoadMeasure &m = *found.trip->measured;
        list << Words::tr("The road of the trip was measured over %1: middle %2 m/km, roughest tenth from %3 "
                          "m/km on.",
                          "distance, roughness")
                    .arg(voice.quantity(m.analysed), voice.number(m.medianRoughness, 1),
                         voice.number(m.p90, 1));
        if (found.speedAssumed)
            list << Words::tr("Nothing told the speed: the mean of the trip was taken.");
        if (m.sensorLocation != "rig")
            list << Words::tr("The sensor was not on the rig: what it felt is not what the rig felt.");
    } else if (found.trip) {
        list << Words::tr("%1 on %2 was added.", "distance, date")
                    .arg(voice.quantity(found.trip->summary.length), voice.date(found.trip->start));
        if (left > 0)
            list << Words::tr("%n position(s) were left out.", nullptr, left);
    }
    if (found.gaps > 0)
        list << Words::tr("%n gap(s) in it.", nullptr, found.gaps);
    return list;
}

QVariantMap intakeFault(const Error &error, const QString &fileName)
{
    const QString what = error.code == Errc::Conflict ? Words::tr("%1 is there already.").arg(fileName)
                         : error.code == Errc::Usage
                             ? Words::tr("Something is missing for %1.").arg(fileName)
                             : Words::tr("%1 could not be taken in. Nothing was written.").arg(fileName);
    return {{QStringLiteral("what"), what},
            {QStringLiteral("where"), Words::where(Voice::text(error.where))},
            {QStringLiteral("reason"), Voice::text(error.what)},
            {QStringLiteral("act"), Words::act(error.code)}};
}

QString bytesText(const Voice &voice, long long read, long long size)
{
    const auto megabytes = [&](long long bytes) {
        return voice.number(static_cast<double>(bytes) / bytesPerMegabyte, 1);
    };
    return size > 0 ? Words::tr("%1 of %2 MB").arg(megabytes(read), megabytes(size))
                    : Words::tr("%1 MB").arg(megabytes(read));
}

} // namespace snugwalk
