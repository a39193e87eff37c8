// SPDX-License-Identifier: Apache-2.0
// From the parts of a shift to sentences.
#include "shift_words.hpp"

#include <cmath>
#include <map>

#include "report/why_words.hpp"

namespace snugwalk {
namespace {

constexpr double leastMonths = 0.05; // less is told as 0.0
constexpr std::size_t causesTold = 2;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Shift)
};

// The parts that moved it, largest first as they come, and no more than a sentence holds.
std::vector<ShiftPart> largest(const DueShift &shift)
{
    std::vector<ShiftPart> list;
    for (const ShiftPart &part : shift.parts) {
        if (isMoved(part.days) && list.size() < causesTold)
            list.push_back(part);
    }
    return list;
}

} // namespace

bool isMoved(double days) { return std::abs(days) / daysPerMonth >= leastMonths; }

QString monthsText(const Voice &voice, double days)
{
    return Words::tr("%1 months", "with one decimal").arg(voice.number(std::abs(days) / daysPerMonth, 1));
}

QString movedText(const Voice &voice, double days)
{
    const QString months = monthsText(voice, days);
    return days < 0.0 ? Words::tr("%1 sooner", "months").arg(months)
                      : Words::tr("%1 later", "months").arg(months);
}

QString causeText(const Voice &voice, const std::string &cause)
{
    const std::map<std::string, QString> own = {
        {"shake", Words::tr("shaking on the road")},
        {"use", Words::tr("how far you drive")},
        {"history", Words::tr("earlier looks and mends")},
        {"limit", Words::tr("a limit that nothing may lengthen")},
    };
    const auto found = own.find(cause);
    return found == own.end() ? voice.word("drivers", cause) : found->second;
}

double daysMoved(const DueShift &shift)
{
    double sum = 0.0;
    for (const ShiftPart &part : shift.parts)
        sum += part.days;
    return sum;
}

QString shiftSentence(const Voice &voice, const DueBand &band, const std::optional<DueShift> &shift)
{
    const WhyWriting writing{
        [&voice](CivilDate date) { return voice.date(date).toStdString(); },
        [&voice](double value, int decimals) { return voice.number(value, decimals).toStdString(); }};
    return Voice::text(shift ? whyDueWords(whySentence(band, *shift), voice.texts, writing)
                             : whyUnshiftedWords(band, voice.texts, writing));
}

QString shiftShort(const Voice &voice, const DueShift &shift)
{
    const double moved = daysMoved(shift);
    if (!isMoved(moved))
        return {};
    QStringList causes;
    for (const ShiftPart &part : largest(shift))
        causes << causeText(voice, part.cause);
    return Words::tr("%1: %2", "1.3 months sooner, causes")
        .arg(movedText(voice, moved), causes.join(QStringLiteral(", ")));
}

QString agedSentence(const Voice &voice, const DueShift &shift)
{
    if (shift.days < 1.0)
        return {};
    return Words::tr("The %n day(s) since %1 aged it like %2.", nullptr,
                     static_cast<int>(std::lround(shift.days)))
        .arg(voice.date(shift.since), voice.number(shift.agedDays, 0));
}

} // namespace snugwalk
