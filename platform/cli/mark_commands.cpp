// SPDX-License-Identifier: Apache-2.0
// walk mark and walk unseen: what a point got, with readings, a finding and photos.
#include <algorithm>

#include "base/text.hpp"
#include "cli/commands.hpp"
#include "logbook/import_photo.hpp"
#include "logbook/query.hpp"
#include "rig/names.hpp"
#include "walk/walk_value.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

struct MarkOptions {
    std::string point;
    std::string state;
    std::string how = "looked";
    std::string reason;
    std::string note;
    std::vector<std::string> readings;
    std::string tool;
    std::string same;
    bool isNew = false;
    bool gone = false;
    std::string defect;
    int grade = 0;
    std::string place;
    std::string face, x, y, z;
    std::string extent;
    std::vector<std::string> photos;
};

// "pressure@wheel 1L=65 psi" or "nose_weight=180 kg".
Result<TypedReading> readingFrom(const std::string &typed)
{
    const auto equals = typed.find('=');
    if (equals == std::string::npos)
        return Error{Errc::Usage, "not a reading: \"" + typed + "\"", "--reading",
                     "write it as \"pressure@wheel 1L=65 psi\""};
    const std::string left = typed.substr(0, equals);
    const auto at = left.find('@');
    return TypedReading{std::string(trim(left.substr(0, at))),
                        at == std::string::npos ? "" : std::string(trim(left.substr(at + 1))),
                        typed.substr(equals + 1)};
}

Result<RigPlace> placeFrom(const MarkOptions &o)
{
    Value::Map value;
    const auto put = [&](const char *key, const std::string &text) {
        if (!text.empty())
            value[key] = text;
    };
    put("named", o.place);
    put("face", o.face);
    put("x", o.x);
    put("y", o.y);
    put("z", o.z);
    return placeFromValue(value);
}

// Two attentions on one point are one finding only if the person says so.
Status askWhichFinding(Logbook &book, const Rig &rig, const MarkOptions &o)
{
    if (!o.same.empty() || o.isNew)
        return done();
    const auto histories = findingHistories(book, rig.id);
    if (!histories)
        return histories.error();
    std::vector<std::string> open;
    for (const FindingHistory &h : *histories) {
        if (h.finding.point == o.point && statusOf(h) == FindingStatus::Open)
            open.push_back(h.finding.id.shortText() + " (" + h.finding.defect + ")");
    }
    if (open.empty())
        return done();
    return Error{Errc::Conflict, "this point has an open finding already: " + join(open, ", "), o.point,
                 "say --same ID when it is that one, or --new when it is another"};
}

Result<FindingDraft> findingFrom(Logbook &book, const MarkOptions &o)
{
    FindingDraft draft;
    if (!o.same.empty()) {
        const Result<Id> id = idOf(book, "finding", o.same);
        if (!id)
            return id.error();
        draft.same = *id;
    }
    if (o.gone && o.same.empty())
        return Error{Errc::Usage, "gone, but which finding?", "--gone", "name it with --same ID"};
    draft.defect = o.defect;
    draft.grade = o.gone ? 0 : o.grade;
    draft.extentText = o.extent;
    draft.note = o.note;
    const Result<RigPlace> place = placeFrom(o);
    if (!place)
        return place.error();
    draft.place = *place;
    return draft;
}

Result<MarkDraft> draftFrom(Logbook &book, const Rig &rig, const MarkOptions &o)
{
    MarkDraft draft;
    draft.point = o.point;
    const auto state = parseMarkState(replaceAll(o.state, "-", "_"));
    draft.state = state.value_or(MarkState::NotLooked);
    draft.how = parseLookedHow(o.how).value_or(LookedHow::Looked);
    draft.reason = replaceAll(o.reason, "-", "_");
    draft.note = o.note;
    for (const std::string &typed : o.readings) {
        const Result<TypedReading> reading = readingFrom(typed);
        if (!reading)
            return reading.error();
        draft.readings.push_back(*reading);
        draft.readings.back().tool = o.tool;
    }
    if (draft.state != MarkState::Attention && !o.gone)
        return draft;
    SNUG_TRY(askWhichFinding(book, rig, o));
    const Result<FindingDraft> finding = findingFrom(book, o);
    if (!finding)
        return finding.error();
    draft.findings.push_back(*finding);
    return draft;
}

Value warningJson(const LimitWarning &w)
{
    return Value::Map{{"reading", w.reading},
                      {"place", w.place},
                      {"value", w.si},
                      {"unit", siSymbol(w.dimension)},
                      {"low", Value(w.limits.lowSi)},
                      {"high", Value(w.limits.highSi)},
                      {"basis", w.limits.basis}};
}

// "Cold pressure 300 kPa at wheel 1L; at least 380 kPa, at most 450 kPa (maker)".
std::string warningWords(const LimitWarning &w, const Texts &texts, UnitSystem units)
{
    std::vector<std::string> limits;
    if (w.limits.lowSi)
        limits.push_back("at least " + formatFor(w.dimension, *w.limits.lowSi, units));
    if (w.limits.highSi)
        limits.push_back("at most " + formatFor(w.dimension, *w.limits.highSi, units));
    return readingWords({w.reading, w.place, w.dimension, w.si, ""}, texts, units) + "; " +
           join(limits, ", ") + " (" + replaceAll(w.limits.basis, "_", " ") + ")";
}

Result<Answer> answer(Session &session, const MarkDraft &draft, const MarkReceipt &receipt,
                      const std::vector<Photo> &photos)
{
    Value::List findings;
    std::string text = draft.point + ": " + stateWords(draft.state, session.texts()) + "\n";
    for (const Id &id : receipt.findings) {
        findings.push_back(id.text());
        text += "finding " + id.shortText() + "\n";
    }
    Value::List warnings;
    for (const LimitWarning &warning : receipt.warnings) {
        warnings.push_back(warningJson(warning));
        text += "look again: " + warningWords(warning, session.texts(), session.units()) + "\n";
    }
    Value::List photoIds;
    for (const Photo &photo : photos)
        photoIds.push_back(photo.id.text());
    return Answer{Value::Map{{"mark", receipt.mark.text()},
                             {"point", draft.point},
                             {"state", slug(draft.state)},
                             {"findings", findings},
                             {"photos", photoIds},
                             {"warnings", warnings}},
                  text};
}

// Passing a tape line of several points marks each that has no mark yet.
Result<Answer> wholeLine(Session &session, const Walk &walk, const TapeLine &line, const MarkDraft &draft,
                         const Doer &doer)
{
    SNUG_TRY(markLine(**session.book(), walk, line, draft.state, draft.how, draft.reason, doer));
    Value::List points(line.points.begin(), line.points.end());
    return Answer{Value::Map{{"line", line.slug}, {"points", points}, {"state", slug(draft.state)}},
                  line.slug + " (" + join(line.points, ", ") +
                      "): " + stateWords(draft.state, session.texts()) + "\n"};
}

const TapeLine *groupedLine(const Walk &walk, const std::string &slug)
{
    const auto found = std::find_if(walk.tape.begin(), walk.tape.end(), [&](const TapeLine &line) {
        return line.slug == slug && (line.points.size() > 1 || line.points.front() != slug);
    });
    return found == walk.tape.end() ? nullptr : &*found;
}

Result<std::vector<Photo>> importAll(Session &session, const MarkOptions &o, const Rig &rig,
                                     const MarkReceipt &receipt, const Doer &doer)
{
    std::vector<Photo> photos;
    for (const std::string &file : o.photos) {
        const PhotoOf of{rig.id, receipt.findings.empty() ? Id{} : receipt.findings.front(),
                         receipt.looks.empty() ? Id{} : receipt.looks.front(), ""};
        Result<Photo> photo = importPhotoFile(**session.book(), file, session.codec(), of, doer);
        if (!photo) {
            Error error = photo.error();
            error.act += " (the mark itself is written; add the photo with `snugwalk photo add`)";
            return error;
        }
        photos.push_back(std::move(photo).value());
    }
    return photos;
}

Result<Answer> mark(Session &session, const MarkOptions &o)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    const Result<Walk> walk = session.openWalk();
    const Result<Doer> doer = session.doer();
    if (!walk || !doer)
        return walk ? doer.error() : walk.error();
    Logbook &book = **session.book();
    const Result<MarkDraft> draft = draftFrom(book, *rig, o);
    if (!draft)
        return draft.error();
    if (const TapeLine *line = groupedLine(*walk, o.point); line != nullptr) {
        if (draft->state == MarkState::Attention || !draft->readings.empty())
            return Error{Errc::Usage, "this line holds several points", o.point,
                         "mark one of: " + join(line->points, ", ")};
        return wholeLine(session, *walk, *line, *draft, *doer);
    }
    const Result<MarkReceipt> receipt = markPoint(book, session.catalogue(), *rig, *walk, *draft, *doer);
    if (!receipt)
        return receipt.error();
    const auto photos = importAll(session, o, *rig, *receipt, *doer);
    if (!photos)
        return photos.error();
    return answer(session, *draft, *receipt, *photos);
}

void addFindingOptions(CLI::App &sub, MarkOptions &o)
{
    sub.add_option("--defect", o.defect,
                   "what is wrong, one of the point's defects (`snugwalk points POINT`)");
    sub.add_option("--grade", o.grade,
                   "1 dulled, 2 hairline, 3 open or loose, 4 through or moving, 5 a hold");
    sub.add_option("--place", o.place, "a named place: \"wheel 2R\", \"vent 3\"");
    sub.add_option("--face", o.face,
                   "top, left, right, front, rear or underside (left and right facing forward)");
    sub.add_option("--x", o.x, "aft of the front face, such as \"4.5 m\"");
    sub.add_option("--y", o.y, "right of the centre line; negative to the left");
    sub.add_option("--z", o.z, "above the ground");
    sub.add_option("--extent", o.extent, "how much: \"14 mm\", \"1/2 in\" or a count");
    sub.add_option("--photo", o.photos, "a photo of it, JPEG or PNG; may be repeated");
    sub.add_option("--same", o.same, "it is this finding, looked at again");
    sub.add_flag("--new", o.isNew, "it is another finding than those open on this point");
    sub.add_flag("--gone", o.gone, "with --same: it is not there any more, without a mend");
}

} // namespace

void addMarkCommands(CLI::App &walk, Registry &registry)
{
    auto o = std::make_shared<MarkOptions>();
    CLI::App *marking = walk.add_subcommand("mark", "mark a point, or a whole tape line");
    marking->add_option("point", o->point, "a point's or a line's slug")->required();
    marking->add_option("state", o->state, "pass, attention or not_fitted")
        ->required()
        ->check(CLI::IsMember({"pass", "attention", "not_fitted", "not-fitted"}));
    marking->add_option("--how", o->how, "how a pass was looked at")
        ->check(CLI::IsMember({"glance", "looked", "measured"}));
    marking->add_option("--note", o->note, "in your words");
    marking->add_option("--reading", o->readings, "\"pressure@wheel 1L=65 psi\"; may be repeated");
    marking->add_option("--tool", o->tool, "what the readings were taken with, such as \"pencil gauge\"");
    addFindingOptions(*marking, *o);
    registry.add(*marking,
                 "  snugwalk walk mark tread-depth pass --how measured --reading \"tread@wheel 1L=7/32 in\"\n"
                 "  snugwalk walk mark belly-pan-sheet attention --defect loose --grade 3 --face underside "
                 "--x \"4.5 m\" \\\n"
                 "    --y \"-0.6 m\" --extent \"14 mm\" --photo rivet.jpg --note \"third rivet aft of the "
                 "rear axle\"\n"
                 "  snugwalk walk mark belly-pan-sheet attention --same 3f2a90bc --grade 4",
                 [o](Session &s) { return mark(s, *o); });
    CLI::App *unseen = walk.add_subcommand("unseen", "say that a point could not be looked at, and why");
    unseen->add_option("point", o->point, "a point's or a line's slug")->required();
    unseen->add_option("reason", o->reason, join(reasons(), ", "))->required();
    unseen->add_option("--note", o->note, "in your words");
    registry.add(*unseen, "  snugwalk walk unseen roof-membrane wet_or_icy", [o](Session &s) {
        o->state = "could_not_look";
        return mark(s, *o);
    });
}

} // namespace snugwalk::cli
