// SPDX-License-Identifier: Apache-2.0
// Looking back along the walks, newest first.
#include "last_time.hpp"

#include <algorithm>
#include <map>

#include <QCoreApplication>

#include "tape_model.hpp"
#include "walk/draft.hpp"

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(LastTime)
public:
    static QString how(const Mark &mark);
    static QString state(MarkState state);
};

QString Words::how(const Mark &mark)
{
    if (mark.state != MarkState::Pass)
        return {};
    switch (mark.how) {
    case LookedHow::Glance:
        return tr("at a glance", "how it was looked at");
    case LookedHow::Measured:
        return tr("measured", "how it was looked at");
    case LookedHow::Looked:
        break;
    }
    return tr("looked", "how it was looked at");
}

QString Words::state(MarkState state)
{
    switch (state) {
    case MarkState::Pass:
        return tr("pass", "what a point got");
    case MarkState::Attention:
        return tr("attention", "what a point got");
    case MarkState::NotFitted:
        return tr("not fitted", "what a point got");
    case MarkState::CouldNotLook:
        return tr("could not look", "what a point got");
    case MarkState::NotLooked:
        break;
    }
    return {};
}

bool isAmong(const std::vector<std::string> &points, const std::string &point)
{
    return std::find(points.begin(), points.end(), point) != points.end();
}

// Worse marks are told before better ones of the same walk.
int weight(MarkState state)
{
    switch (state) {
    case MarkState::Attention:
        return 4;
    case MarkState::CouldNotLook:
        return 3;
    case MarkState::Pass:
        return 2;
    case MarkState::NotFitted:
        return 1;
    case MarkState::NotLooked:
        break;
    }
    return 0;
}

const Mark *worstOf(const WalkRecord &record, const std::vector<std::string> &points)
{
    const Mark *worst = nullptr;
    for (const Mark &mark : record.marks) {
        const bool isHere = isAmong(points, mark.point) && weight(mark.state) > 0;
        if (isHere && (worst == nullptr || weight(mark.state) > weight(worst->state)))
            worst = &mark;
    }
    return worst;
}

const Mark *lastMark(const RigHistory &history, const std::vector<std::string> &points, const Id &walk)
{
    for (auto record = history.walks.rbegin(); record != history.walks.rend(); ++record) {
        if (record->walk.id == walk)
            continue;
        if (const Mark *mark = worstOf(*record, points))
            return mark;
    }
    return nullptr;
}

QString lastPhoto(const RigHistory &history, const std::vector<std::string> &points)
{
    const Photo *last = nullptr;
    for (const FindingHistory &finding : history.findings) {
        if (!isAmong(points, finding.finding.point))
            continue;
        for (const Photo &photo : finding.photos) {
            if (last == nullptr || photo.taken.value_or(photo.added) > last->taken.value_or(last->added))
                last = &photo;
        }
    }
    return last == nullptr ? QString() : Voice::text(last->hash);
}

} // namespace

QVariantMap lastTime(const Shown &shown, const std::vector<std::string> &points, const Id &walk)
{
    const RigHistory *history = shown.history();
    const Mark *mark = history == nullptr ? nullptr : lastMark(*history, points, walk);
    if (mark == nullptr)
        return {};
    const Voice &voice = *shown.voice;
    QStringList parts;
    if (points.size() > 1)
        parts << voice.point(mark->point);
    for (const QString &part :
         {Words::how(*mark), Words::state(mark->state), voice.date(mark->at), Voice::text(mark->by)}) {
        if (!part.isEmpty())
            parts << part;
    }
    QString words =
        Words::tr("last: %1", "a mark: how, what, when, who").arg(parts.join(QStringLiteral(", ")));
    const QString more = markSummary(voice, *mark, false);
    if (!more.isEmpty())
        words += QStringLiteral("; ") + more;
    return {{QStringLiteral("mark"), Voice::text(slug(mark->state))},
            {QStringLiteral("words"), words},
            {QStringLiteral("photo"), lastPhoto(*history, points)}};
}

QVariantList usualReasons(const Shown &shown, const std::vector<std::string> &points, int most)
{
    std::map<std::string, int> said;
    if (const RigHistory *history = shown.history()) {
        for (const WalkRecord &record : history->walks) {
            for (const Mark &mark : record.marks) {
                if (mark.state == MarkState::CouldNotLook)
                    said[mark.reason] += isAmong(points, mark.point) ? 1000 : 1;
            }
        }
    }
    said["risky_to_reach"] += 500; // first, unless these points had another reason before
    said.erase("other");           // it wants words, which one press cannot give
    std::vector<std::string> list;
    for (const std::string &reason : reasons()) {
        if (reason != "other")
            list.push_back(reason);
    }
    std::stable_sort(list.begin(), list.end(),
                     [&](const std::string &a, const std::string &b) { return said[a] > said[b]; });
    QVariantList shownReasons;
    for (const std::string &reason : list) {
        if (shownReasons.size() < most)
            shownReasons << QVariantMap{{QStringLiteral("slug"), Voice::text(reason)},
                                        {QStringLiteral("text"), shown.voice->word("reasons", reason)}};
    }
    return shownReasons;
}

} // namespace snugwalk
