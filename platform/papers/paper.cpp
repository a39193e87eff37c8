// SPDX-License-Identifier: Apache-2.0
// Blocks put one after another.
#include "papers/paper.hpp"

#include <algorithm>
#include <cstdlib>

#include "base/text.hpp"

namespace snugwalk::papers {

Paper::Paper(const PaperSource &source, const PaperOptions &options)
    : m_source(source), m_options(options), m_report(makeReport(source.catalogue, source.standing))
{}

std::string Paper::say(std::string_view slug, const std::vector<std::string> &arguments) const
{
    return texts().phrase("paper_" + std::string(slug), arguments);
}

std::string Paper::titles(const std::vector<std::string> &points) const
{
    std::vector<std::string> out;
    out.reserve(points.size());
    for (const std::string &point : points)
        out.push_back(title(point));
    return join(out, ", ");
}

std::string Paper::amount(Dimension dimension, double si) const
{
    return formatFor(dimension, si, m_options.units);
}

void Paper::text(std::string words, TextTone tone)
{
    if (!words.empty())
        add(TextBlock{std::move(words), tone});
}

bool Paper::table(std::vector<std::string> head, std::vector<std::vector<std::string>> rows,
                  std::vector<bool> numeric)
{
    if (rows.empty())
        return false;
    numeric.resize(head.size(), false);
    add(TableBlock{std::move(head), std::move(numeric), std::move(rows)});
    return true;
}

void Paper::lookedBy(const std::string &name)
{
    if (!name.empty() && std::find(m_lookers.begin(), m_lookers.end(), name) == m_lookers.end())
        m_lookers.push_back(name);
}

void Paper::lookedBy(const WalkRecord &record)
{
    if (!record.marks.empty())
        lookedBy(record.walk.by);
    for (const Mark &mark : record.marks)
        lookedBy(mark.by);
}

void Paper::lookedBy(const FindingHistory &finding)
{
    for (const Look &look : finding.looks)
        lookedBy(look.by);
}

std::string Paper::takenWords(const Photo &photo) const
{
    if (photo.taken)
        return dayOf(*photo.taken);
    return photo.takenText.empty() ? say("photo_added", {dayOf(photo.added)}) : photo.takenText;
}

PhotoPicture Paper::picture(const Photo &photo, const std::string &before) const
{
    PhotoPicture picture{photo, std::nullopt, before};
    picture.photo.where = placeToTell(photo.where, m_options.place);
    if (const FindingHistory *of = findHistory(history(), photo.finding)) {
        if (const Drawing *drawing = drawingOf(*of, photo.id))
            picture.drawing = *drawing;
    }
    picture.caption += (before.empty() ? "" : ", ") + takenWords(photo) +
                       (photo.caption.empty() ? "" : ", " + photo.caption);
    return picture;
}

Document Paper::finish(std::string title) &&
{
    m_document.language = m_options.language;
    m_document.title = std::move(title);
    m_document.subtitle = rig().name + ", " + timeWithZone(m_source.standing.now);
    if (!m_options.by.empty())
        m_document.subtitle += ", " + texts().phrase("made_by", {m_options.by});
    if (m_lookers.empty() && m_report.lastWalk) // what it lists as not looked at goes by the walks
        lookedBy(*m_report.lastWalk);
    const std::string who = m_lookers.empty() ? say("nobody_named") : join(m_lookers, ", ");
    m_document.footer = replaceAll(texts().text("report_footer"), "{who}", who);
    return std::move(m_document);
}

std::string timeWithZone(const LocalTime &time)
{
    const int minutes = std::abs(time.offset.minutes);
    std::string zone = "UTC";
    if (minutes > 0)
        zone += (time.offset.minutes < 0 ? "\u2212" : "+") + std::to_string(minutes / 60);
    if (minutes % 60 != 0)
        zone += (minutes % 60 < 10 ? ":0" : ":") + std::to_string(minutes % 60);
    return formatLocalShort(time) + " (" + zone + ")";
}

std::string dayOf(const LocalTime &time) { return formatDate(civilDate(time)); }

} // namespace snugwalk::papers
