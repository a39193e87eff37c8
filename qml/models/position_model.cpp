// SPDX-License-Identifier: Apache-2.0
// The last fix, and reading coordinates that were typed.
#include "position_model.hpp"

namespace snugwalk {
namespace {

// Ten minutes without a word: by then one has walked round the whole rig and away from it.
constexpr std::chrono::minutes silence{10};

std::optional<double> parseAngle(QString text, QChar negative, QChar positive)
{
    text = text.trimmed().toUpper().replace(u',', u'.').replace(u'\u2212', u'-');
    double sign = 1.0;
    if (text.endsWith(negative) || text.endsWith(positive)) {
        sign = text.endsWith(negative) ? -1.0 : 1.0;
        text.chop(1);
    }
    text.remove(u'\u00b0');
    bool isNumber = false;
    const double value = text.trimmed().toDouble(&isNumber);
    if (!isNumber)
        return std::nullopt;
    return sign * value;
}

} // namespace

PositionModel::PositionModel(PositionSource *source, const Clock &clock, QObject *parent)
    : QObject(parent), m_clock(clock)
{
    if (source == nullptr)
        return;
    connect(source, &PositionSource::fixed, this,
            [this, source](const Fix &fix) { take(fix, source->kind()); });
    connect(source, &PositionSource::lost, this, [this] {
        if (m_source == QStringLiteral("typed"))
            return;
        m_point.reset();
        Q_EMIT changed();
    });
    source->start();
}

void PositionModel::take(const Fix &fix, const QString &source)
{
    if (!isValid(fix.point))
        return;
    m_point = fix.point;
    m_at = m_clock.now().instant;
    m_source = source;
    Q_EMIT changed();
}

std::optional<GeoPoint> PositionModel::where() const
{
    const bool isOld = m_source == QStringLiteral("receiver") && m_clock.now().instant - m_at > silence;
    return isOld ? std::nullopt : m_point;
}

QString PositionModel::words() const
{
    const auto point = where();
    return point ? m_voice->position(*point) : tr("no position");
}

bool PositionModel::type(const QString &latitude, const QString &longitude)
{
    const auto north = parseAngle(latitude, u'S', u'N');
    QString lon = longitude.trimmed().toUpper();
    if (lon.endsWith(u'O')) // oeste
        lon.replace(lon.size() - 1, 1, u'W');
    const auto east = parseAngle(lon, u'W', u'E');
    if (!north || !east)
        return false;
    const GeoPoint point{*north, *east, std::nullopt, std::nullopt};
    if (!isValid(point))
        return false;
    take({m_clock.now().instant, point, std::nullopt, std::nullopt}, QStringLiteral("typed"));
    return true;
}

void PositionModel::speak(std::shared_ptr<const Voice> voice)
{
    m_voice = std::move(voice);
    Q_EMIT changed();
}

} // namespace snugwalk
