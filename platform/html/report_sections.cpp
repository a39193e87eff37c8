// SPDX-License-Identifier: Apache-2.0
// The parts of the report's page.
#include "html/report_sections.hpp"

#include "base/text.hpp"
#include "html/drawing_svg.hpp"
#include "html/html_text.hpp"
#include "html/photo_svg.hpp"
#include "words/finding_words.hpp"
#include "words/reason_words.hpp"
#include "words/rule_words.hpp"
#include "words/state_words.hpp"
#include "words/words.hpp"

namespace snugwalk::html {
namespace {

std::string cell(std::string_view text) { return "<td>" + escape(text) + "</td>"; }

std::string heading(const PageContext &c, const char *phrase)
{
    return element("h2", c.texts.phrase(phrase));
}

std::string figure(const PageContext &c, const Photo &photo, const Drawing *drawing,
                   const std::string &caption)
{
    const auto bytes = c.thumbnails(photo);
    if (!bytes)
        return {};
    const std::string over =
        drawing == nullptr ? std::string() : drawnSvg(*drawing, sizeOf(photo), c.options.units);
    return "<figure><div class='photo'><img alt='" + escape(caption) + "' src='data:image/jpeg;base64," +
           base64(*bytes) + "'>" + over + "</div>" + element("figcaption", caption) + "</figure>\n";
}

std::string photoDate(const Photo &photo)
{
    if (photo.taken)
        return formatLocalShort(*photo.taken);
    return photo.takenText.empty() ? formatLocalShort(photo.added) : photo.takenText;
}

std::string photoWords(const Photo &photo)
{
    return photoDate(photo) + (photo.caption.empty() ? "" : ", " + photo.caption);
}

// A drawing is of a finding's photo: pairs look it up in the finding they belong to.
const Drawing *drawingIn(const PageContext &c, const Id &finding, const Photo &photo)
{
    const FindingHistory *history = findHistory(c.report.standing.history, finding);
    return history == nullptr ? nullptr : drawingOf(*history, photo.id);
}

std::string titles(const Texts &texts, const std::vector<std::string> &points)
{
    std::vector<std::string> out;
    out.reserve(points.size());
    for (const std::string &point : points)
        out.push_back(texts.point(point).title);
    return join(out, ", ");
}

std::string findingRow(const PageContext &c, const ReportFinding &f)
{
    const Rig &rig = c.report.standing.history.rig;
    std::string story;
    for (const Look &look : f.history.looks)
        story += "<br><span class='quiet'>" +
                 escape(formatLocalShort(look.at) + (look.by.empty() ? "" : ", " + look.by) + ": " +
                        lookWords(f.history, look, c.texts, c.options.units)) +
                 "</span>";
    for (const Mend &mend : f.history.mends)
        story += "<br><span class='quiet'>" +
                 escape(c.texts.phrase("mended_on", {formatLocalShort(mend.at)}) +
                        (mend.by.empty() ? "" : ", " + mend.by) + ": " + mendWords(mend)) +
                 "</span>";
    const bool waits = f.open.status == FindingStatus::Mended;
    const std::string call = waits ? c.texts.phrase("waits") : callWords(f.open.concern, c.texts);
    std::string out = "<tr><td class='no'>" + std::to_string(f.number) + "</td><td>" +
                      glyphSvg(f.open.concern.call) + "</td><td>" +
                      escape(findingWords(rig, f.history, c.texts, c.options.units)) + story + "<br>";
    for (const Photo &photo : f.history.photos)
        out += figure(c, photo, drawingOf(f.history, photo.id), photoWords(photo));
    return out + "</td>" + cell(call) + "</tr>\n";
}

} // namespace

std::string stateSection(const PageContext &c)
{
    std::string out = "<p class='state'>" + escape(stateSentence(c.report.standing, c.texts)) + "</p>\n";
    for (const StateHold &hold : c.report.standing.state.holds)
        out += "<p>" + glyphSvg(Call::Hold) + " " + escape(holdWords(hold, c.texts)) + "</p>\n";
    for (const HiddenInSight &hidden : c.report.standing.state.hidden)
        out += element("p", c.texts.point(hidden.point).title + ": " +
                                c.texts.phrase("hidden_by", {hidden.by.by, formatDate(hidden.by.date)}));
    return out;
}

std::string findingsSection(const PageContext &c)
{
    std::string out = heading(c, "findings");
    if (c.report.findings.empty())
        return out + element("p", c.texts.phrase("no_finding"));
    out += "<table>\n";
    for (const ReportFinding &finding : c.report.findings)
        out += findingRow(c, finding);
    return out + "</table>\n";
}

std::string changesSection(const PageContext &c)
{
    if (!c.report.comparison)
        return {};
    std::vector<std::string> counts;
    for (const Change change : allChanges) {
        if (const int count = c.report.comparison->pointCounts.of(change); count > 0)
            counts.push_back(std::to_string(count) + " " + changeWords(change, c.texts));
    }
    std::string out = heading(c, "changes") + element("p", join(counts, ", ") + ".") + "<table>\n";
    for (const PointChange &p : c.report.comparison->points) {
        if (p.change == Change::Same || p.change == Change::FirstLook)
            continue;
        out += "<tr>" + cell(c.texts.point(p.point).title) + cell(stateWords(p.then, c.texts)) +
               cell(stateWords(p.now, c.texts)) + cell(changeWords(p.change, c.texts)) + "</tr>\n";
    }
    out += "</table>\n";
    for (const ReportPhotoPair &pair : c.report.pairs) {
        if (pair.then)
            out += figure(c, *pair.then, drawingIn(c, pair.finding, *pair.then),
                          c.texts.phrase("photo_then") + ", " + photoDate(*pair.then));
        if (pair.now)
            out += figure(c, *pair.now, drawingIn(c, pair.finding, *pair.now),
                          c.texts.phrase("photo_now") + ", " + photoDate(*pair.now));
    }
    return out;
}

std::string dueSection(const PageContext &c)
{
    std::string out = heading(c, "due");
    if (c.report.due.empty())
        return out + element("p", c.texts.phrase("no_due"));
    out += "<table>\n";
    for (const DueBand &band : c.report.due) {
        std::vector<std::string> why;
        for (const Reason &reason : band.reasons)
            why.push_back(reasonWords(reason, c.texts, c.options.units));
        out += "<tr>" + cell(c.texts.point(band.point).title) + cell(whenWords(band, c.texts)) +
               cell(join(why, "; ")) + "</tr>\n";
    }
    return out + "</table>\n";
}

std::string walkSection(const PageContext &c)
{
    if (!c.report.lastWalk)
        return {};
    const WalkRecord &last = *c.report.lastWalk;
    std::string out = heading(c, "walk");
    out += element("p", c.texts.kindName(last.walk.kind) + ", " + formatLocalShort(last.walk.started) +
                            (last.walk.by.empty() ? "" : ", " + last.walk.by) + ": " +
                            countWords(countMarks(last.walk, last.marks), c.texts) + ".");
    std::vector<std::string> unseen;
    for (const Mark &mark : last.marks) {
        if (mark.state == MarkState::CouldNotLook)
            unseen.push_back(c.texts.point(mark.point).title + " (" + c.texts.word("reasons", mark.reason) +
                             ")");
    }
    if (!unseen.empty())
        out += element("p", c.texts.phrase("unseen_list", {join(unseen, ", ")}));
    if (!c.report.notLooked.empty())
        out += element("p", c.texts.phrase("not_looked_list", {titles(c.texts, c.report.notLooked)}));
    return out;
}

} // namespace snugwalk::html
