// SPDX-License-Identifier: Apache-2.0
// Facts of one point for its why page.
#include "why_facts.hpp"

#include <algorithm>

#include "point_words.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t looksTold = 6;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(WhyFacts)
public:
    static QString mark(const Voice &voice, const Mark &mark);
    static QString rule(const Voice &voice, const std::string &rule);
};

QString Words::mark(const Voice &voice, const Mark &mark)
{
    switch (mark.state) {
    case MarkState::Pass:
        return mark.how == LookedHow::Glance     ? tr("pass, at a glance")
               : mark.how == LookedHow::Measured ? tr("pass, measured")
                                                 : tr("pass, looked at");
    case MarkState::Attention:
        return tr("attention");
    case MarkState::NotFitted:
        return tr("not fitted");
    case MarkState::CouldNotLook:
        return tr("could not look: %1", "reason").arg(voice.word("reasons", mark.reason));
    case MarkState::NotLooked:
        break;
    }
    return {};
}

QString Words::rule(const Voice &voice, const std::string &rule)
{
    if (rule == "months")
        return tr("time, as it ages it");
    if (rule == "distance")
        return tr("distance, as the road uses it up");
    if (rule.starts_with("event:"))
        return voice.word("events", rule.substr(6));
    if (rule == "never_looked")
        return tr("nobody has looked at it yet");
    if (rule.starts_with("reading:"))
        return tr("its readings, on their way to a limit");
    return tr("each move");
}

} // namespace

QVariantList whyFacts(const Shown &shown, const Catalogue &catalogue, const DueBand &band)
{
    const Voice &voice = *shown.voice;
    QVariantList facts;
    const auto add = [&](const QString &label, const QString &value) {
        if (!value.isEmpty())
            facts << QVariantMap{{QStringLiteral("label"), label}, {QStringLiteral("value"), value}};
    };
    if (const Point *point = catalogue.find(band.point))
        add(Words::tr("Interval"), intervalWords(voice, point->interval));
    add(Words::tr("What makes it due"), Words::rule(voice, band.rule));
    add(Words::tr("Rests on", "what a figure rests on"), voice.basis(band.basis));
    if (band.alert && band.alert != band.likely)
        add(Words::tr("Time to look from"), voice.date(*band.alert));
    return facts;
}

QVariantList lastLooks(const Shown &shown, const std::string &point)
{
    std::vector<std::pair<LocalTime, QString>> found;
    if (shown.history() == nullptr)
        return {};
    const Voice &voice = *shown.voice;
    const auto by = [](const QString &what, const std::string &who) {
        return who.empty() ? what : Words::tr("%1, by %2", "what, who").arg(what, Voice::text(who));
    };
    for (const WalkRecord &record : shown.history()->walks) {
        for (const Mark &mark : record.marks) {
            if (mark.point == point && mark.state != MarkState::NotLooked)
                found.emplace_back(mark.at, by(Words::mark(voice, mark), mark.by));
        }
    }
    for (const Mend &mend : shown.history()->mends) {
        if (std::find(mend.points.begin(), mend.points.end(), point) != mend.points.end())
            found.emplace_back(mend.at, by(voice.mendAction(mend.action), mend.by));
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto &a, const auto &b) { return a.first > b.first; });
    QVariantList list;
    for (std::size_t i = 0; i < std::min(found.size(), looksTold); ++i)
        list << QVariantMap{{QStringLiteral("date"), voice.date(found[i].first)},
                            {QStringLiteral("text"), found[i].second}};
    return list;
}

QStringList sourceTitles(const Catalogue &catalogue, const std::string &slug)
{
    QStringList titles;
    const Point *point = catalogue.find(slug);
    if (point == nullptr)
        return titles;
    for (const std::string &key : point->sourceKeys) {
        const auto source = catalogue.sources().find(key);
        titles << Voice::text(source == catalogue.sources().end() ? key : source->second.full);
    }
    return titles;
}

bool hasReadings(const RigHistory &history, const std::string &point)
{
    return std::any_of(history.walks.begin(), history.walks.end(), [&](const WalkRecord &record) {
        return std::any_of(record.marks.begin(), record.marks.end(),
                           [&](const Mark &mark) { return mark.point == point && !mark.readings.empty(); });
    });
}

} // namespace snugwalk
