// SPDX-License-Identifier: Apache-2.0
// From a band to words.
#include "due_words.hpp"

#include "due_model.hpp"
#include "reason_text.hpp"

namespace snugwalk {

QString dueWhen(const Voice &voice, const DueBand &band, CivilDate today)
{
    if (!band.likely)
        return DueModel::tr("before each move");
    if (band.rule == "never_looked")
        return DueModel::tr("not looked at yet");
    if (band.pastDue)
        return DueModel::tr("past due %n days", nullptr, static_cast<int>(daysBetween(*band.late, today)));
    if (band.dueNow)
        return DueModel::tr("due now, at the latest %1").arg(voice.date(*band.late));
    if (*band.early == *band.late)
        return voice.date(*band.likely);
    return DueModel::tr("likely %1, from %2 to %3")
        .arg(voice.date(*band.likely), voice.date(*band.early), voice.date(*band.late));
}

QStringList dueWhy(const Voice &voice, const DueBand &band)
{
    QStringList why;
    for (const Reason &reason : band.reasons) {
        const QString sentence = reasonText(voice, reason);
        if (!sentence.isEmpty())
            why << sentence;
    }
    return why;
}

} // namespace snugwalk
