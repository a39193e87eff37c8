// SPDX-License-Identifier: Apache-2.0
// due jobs and due calendar: dates gathered into days of work, and handed to other calendars.
#include <map>

#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/due_answers.hpp"
#include "logbook/files.hpp"
#include "report/calendar.hpp"
#include "round/jobs.hpp"
#include "words/due_words.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

std::vector<DueBand> bandsOf(const std::vector<const DueBand *> &bands)
{
    std::vector<DueBand> out;
    for (const DueBand *band : bands)
        out.push_back(*band);
    return out;
}

Value jobJson(const Job &job)
{
    return Value::Map{{"stand", job.stand},
                      {"day", formatDate(job.day)},
                      {"early", formatDate(job.early)},
                      {"likely", formatDate(job.likely)},
                      {"late", formatDate(job.late)},
                      {"points", Value::List(job.points.begin(), job.points.end())},
                      {"minutes", job.minutes}};
}

std::string jobTitle(const Job &job, const Texts &texts)
{
    return texts.phrase("due_job", {formatDate(job.day), texts.standName(job.stand), fixed(job.minutes, 0)});
}

std::string pointLines(const Job &job, const Texts &texts)
{
    std::string out;
    for (const std::string &point : job.points)
        out += "  " + texts.point(point).title + "\n";
    return out;
}

Result<Answer> jobs(Session &session, const DueFilter &filter)
{
    const Result<Standing> now = standing(session);
    if (!now)
        return now.error();
    const auto bands = filtered(session, *now, filter);
    if (!bands)
        return bands.error();
    Value::List json;
    std::string text;
    for (const Job &job : jobsOf(session.catalogue(), bandsOf(*bands), now->now)) {
        json.push_back(jobJson(job));
        text += jobTitle(job, session.texts()) + "\n" + pointLines(job, session.texts());
    }
    const std::vector<std::string> warnings = dueWarnings(session, *now);
    if (text.empty())
        text = session.texts().phrase("due_none") + "\n";
    return Answer{Value::Map{{"jobs", json}, {"warnings", warningsJson(warnings)}},
                  text + warningLines(warnings, session.texts())};
}

// What is past stands on today, where somebody still looks.
CalendarEntry pointEntry(const DueEntry &entry, const Standing &now, const Texts &texts)
{
    const CivilDate today = civilDate(now.now);
    const DueBand &band = *entry.band;
    return {calendarUid(now.history.rig.id, band.point), std::max(*band.likely, today),
            std::max(band.alert.value_or(today), today),
            now.history.rig.name + ": " + texts.point(band.point).title,
            bandWords(band, texts) + "\n" + dueSentence(entry, texts)};
}

std::vector<CalendarEntry> jobEntries(Session &session, const Standing &now,
                                      const std::vector<const DueBand *> &bands)
{
    std::map<std::string, int> count;
    std::vector<CalendarEntry> entries;
    for (const Job &job : jobsOf(session.catalogue(), bandsOf(bands), now.now)) {
        const std::string name = "job-" + job.stand + "-" + std::to_string(++count[job.stand]);
        entries.push_back({calendarUid(now.history.rig.id, name), job.day, job.day,
                           now.history.rig.name + ": " + session.texts().standName(job.stand),
                           jobTitle(job, session.texts()) + "\n" + pointLines(job, session.texts())});
    }
    return entries;
}

Result<Answer> calendar(Session &session, const DueFilter &filter, const std::string &file, bool asJobs)
{
    const Result<Standing> now = standing(session);
    if (!now)
        return now.error();
    const auto bands = filtered(session, *now, filter);
    if (!bands)
        return bands.error();
    std::vector<CalendarEntry> entries;
    if (asJobs) {
        entries = jobEntries(session, *now, *bands);
    } else {
        for (const DueEntry &entry : explained(session, *now, *bands)) {
            if (entry.band->likely)
                entries.push_back(pointEntry(entry, *now, session.texts()));
        }
    }
    if (entries.empty())
        return Error{Errc::NotFound, "nothing has a date, and a calendar holds one at least", "due calendar",
                     "take another zone or more months"};
    SNUG_TRY(replaceFile(file, calendarText(entries, now->now)));
    return Answer{Value::Map{{"calendar", file}, {"events", entries.size()}},
                  std::to_string(entries.size()) + " dates written to " + file + "\n"};
}

} // namespace

void addDueJobCommands(CLI::App &due, Registry &registry, const std::shared_ptr<DueFilter> &filter)
{
    CLI::App *together =
        due.add_subcommand("jobs", "due points that go together, stand by stand; minutes without the way");
    registry.add(*together, "  snugwalk due jobs --within 3\n  snugwalk due jobs --zone roof",
                 [filter](Session &s) { return jobs(s, *filter); });
    CLI::App *dates =
        due.add_subcommand("calendar", "dates with alarms for other calendars (iCalendar, RFC 5545)");
    auto file = std::make_shared<std::string>("due.ics");
    auto asJobs = std::make_shared<bool>(false);
    dates->add_option("--out", *file, "where to write it (default: due.ics)");
    dates->add_flag("--jobs", *asJobs, "one date a job instead of one a point");
    registry.add(*dates,
                 "  snugwalk due calendar --within 12 --out heron.ics\n  snugwalk due calendar --jobs",
                 [filter, file, asJobs](Session &s) { return calendar(s, *filter, *file, *asJobs); });
}

} // namespace snugwalk::cli
