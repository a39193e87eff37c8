// SPDX-License-Identifier: Apache-2.0
// One day a point.
#include "papers/due_calendar.hpp"

#include <algorithm>

#include "words/due_words.hpp"

namespace snugwalk::papers {

std::vector<CalendarEntry> dueCalendar(const Standing &standing, const Texts &texts, int days)
{
    const CivilDate today = civilDate(standing.now);
    const CivilDate horizon = addDays(today, days);
    std::vector<CalendarEntry> entries;
    for (const DueBand &band : standing.bands) {
        if (!band.likely || !band.early || *band.early > horizon)
            continue;
        entries.push_back({calendarUid(standing.history.rig.id, band.point), std::max(*band.likely, today),
                           std::max(band.alert.value_or(today), today),
                           standing.history.rig.name + ": " + texts.point(band.point).title,
                           bandWords(band, texts)});
    }
    return entries;
}

} // namespace snugwalk::papers
