// SPDX-License-Identifier: Apache-2.0
// due why: one point's date opened up.
#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/due_answers.hpp"
#include "due/history_index.hpp"
#include "due/usage.hpp"
#include "report/why_words.hpp"
#include "round/why.hpp"
#include "words/due_words.hpp"
#include "words/reason_words.hpp"
#include "words/rule_words.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

/// All that is told of one point.
struct PointWhy {
    const Point &point;
    DueEntry entry;
    UsageForecast usage;
    PointHistory history;
    std::vector<std::string> sources;
    std::vector<std::string> warnings;
};

Value daysValue(double days) { return Value::Map{{"value", days}, {"unit", "day"}}; }

Value looksJson(const PointHistory &history)
{
    Value::List looks;
    for (const MarkOnWalk &look : history.marks)
        looks.push_back(Value::Map{{"at", formatLocal(look.mark->at)},
                                   {"state", slug(look.mark->state)},
                                   {"how", slug(look.mark->how)},
                                   {"by", look.mark->by},
                                   {"walk", look.walk->id.text()}});
    return looks;
}

Value mendsJson(const PointHistory &history)
{
    Value::List mends;
    for (const Mend *mend : history.work)
        mends.push_back(
            Value::Map{{"at", formatLocal(mend->at)}, {"action", mend->action}, {"by", mend->by}});
    return mends;
}

Value whyJson(const PointWhy &why, const Texts &texts)
{
    Value out = dueJson(why.entry, texts);
    const auto &shift = why.entry.shift;
    out.member("since") = shift ? Value(formatDate(shift->since)) : Value();
    out.member("days") = shift ? daysValue(shift->days) : Value();
    out.member("aged") = shift ? daysValue(shift->agedDays) : Value();
    out.member("usage") = Value::Map{{"level", slug(why.usage.level)},
                                     {"yearly", Value::Map{{"value", why.usage.yearly.si()}, {"unit", "m"}}}};
    out.member("looks") = looksJson(why.history);
    out.member("mends") = mendsJson(why.history);
    out.member("sources") = Value::List(why.sources.begin(), why.sources.end());
    out.member("warnings") = warningsJson(why.warnings);
    return out;
}

std::string shiftLines(const DueEntry &entry, const Texts &texts)
{
    if (!entry.shift)
        return {};
    std::string out = "  " + texts.phrase("due_nominal", {formatDate(entry.shift->nominal)}) + "\n";
    for (const WhyPart &part : partsInMonths(*entry.shift))
        out += "    " + whyPartWords(part, whyLimit(*entry.band), texts) + "\n";
    return out + "  " + agedWords(*entry.shift, texts) + "\n";
}

std::string lookLine(const MarkOnWalk &look, const Texts &texts)
{
    const Mark &mark = *look.mark;
    const std::string how =
        isLook(mark.state) ? ", " + texts.phrase("how_" + std::string(slug(mark.how))) : "";
    return "    " + formatLocalShort(mark.at) + "  " + stateWords(mark.state, texts) + how +
           (mark.by.empty() ? "" : ", " + texts.phrase("by", {mark.by})) + "\n";
}

std::string whyText(const PointWhy &why, const Texts &texts, UnitSystem units)
{
    const DueBand &band = *why.entry.band;
    std::string out = texts.point(band.point).title + " (" + band.point + ")\n  " + whenWords(band, texts) +
                      "; " + bandWords(band, texts) + "\n  " + dueSentence(why.entry, texts) + "\n" +
                      shiftLines(why.entry, texts);
    for (const Reason &reason : band.reasons)
        out += "  " + reasonWords(reason, texts, units) + "\n";
    if (why.point.interval.distance)
        out += "  " + usageWords(why.usage, texts, units) + "\n";
    for (const MarkOnWalk &look : why.history.marks)
        out += lookLine(look, texts);
    const std::string sources = why.sources.empty() ? "-" : join(why.sources, "; ");
    out += "  " + texts.phrase("basis_line", {texts.phrase("basis_" + band.basis), sources}) + "\n";
    return out + warningLines(why.warnings, texts);
}

Result<Answer> why(Session &session, const std::string &slug)
{
    const Result<Standing> now = standing(session);
    if (!now)
        return now.error();
    const Point *point = session.catalogue().find(slug);
    if (point == nullptr)
        return Error{Errc::NotFound, "no such point", slug, "see `snugwalk points`"};
    const DueBand *band = findBand(now->bands, slug);
    if (band == nullptr)
        return Error{Errc::NotFound, "this rig has no date for the point", slug,
                     "it is not fitted, hidden, or due only when something happens; see `snugwalk points " +
                         slug + "`"};
    const HistoryIndex index(now->history, now->now);
    const PointWhy told{*point,
                        explained(session, *now, {band}).front(),
                        forecastUsage(now->history, now->now),
                        index.of(slug),
                        fullSources(point->sourceKeys, session.catalogue()),
                        dueWarnings(session, *now)};
    return Answer{whyJson(told, session.texts()), whyText(told, session.texts(), session.units())};
}

} // namespace

void addDueWhyCommand(CLI::App &due, Registry &registry)
{
    CLI::App *sub = due.add_subcommand("why", "why a point is due when it is: months moved by each cause");
    auto point = std::make_shared<std::string>();
    sub->add_option("point", *point, "slug of the point, such as roof-membrane")->required();
    registry.add(*sub, "  snugwalk due why roof-membrane\n  snugwalk due why bearing-repack --json",
                 [point](Session &s) { return why(s, *point); });
}

} // namespace snugwalk::cli
