// SPDX-License-Identifier: Apache-2.0
// From options to drafts, and from receipts to answers.
#include "cli/finding_options.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "logbook/import_photo.hpp"
#include "logbook/query.hpp"
#include "walk/offer.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

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

Result<RigPlace> placeFrom(const FindingOptions &o)
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

// "3f2a90bc (loose, 0.12 m away)".
std::string offerWords(const OfferedFinding &offer, const std::vector<FindingHistory> &histories)
{
    const auto history = std::find_if(histories.begin(), histories.end(),
                                      [&](const FindingHistory &h) { return h.finding.id == offer.finding; });
    std::string out = offer.finding.shortText() + " (" + history->finding.defect;
    if (offer.away)
        out += ", " + fixed(offer.away->si(), 2) + " m away";
    if (offer.status == FindingStatus::Mended)
        out += ", mended, waits for a pass";
    return out + ")";
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

} // namespace

void addSpotOptions(CLI::App &sub, FindingOptions &o)
{
    sub.add_option("--defect", o.defect,
                   "what is wrong, one of the point's defects (`snugwalk points POINT`)");
    sub.add_option("--place", o.place, "a named place: \"wheel 2R\", \"vent 3\"");
    sub.add_option("--face", o.face,
                   "top, left, right, front, rear or underside (left and right facing forward)");
    sub.add_option("--x", o.x, "aft of the front face, such as \"4.5 m\"");
    sub.add_option("--y", o.y, "right of the centre line; negative to the left");
    sub.add_option("--z", o.z, "above the ground");
}

void addLookOptions(CLI::App &sub, FindingOptions &o)
{
    sub.add_option("--extent", o.extent, "how much: \"14 mm\", \"20 cm2\", \"24 %\" or a count");
    sub.add_option("--reading", o.readings, "\"cold-pressure@wheel 1L=65 psi\"; may be repeated");
    sub.add_option("--tool", o.tool, "what the readings were taken with, such as \"pencil gauge\"");
    sub.add_option("--note", o.note, "in your words");
    sub.add_option("--photo", o.photos, "a photo of it, JPEG or PNG; may be repeated");
}

Result<std::vector<TypedReading>> readingsFrom(const FindingOptions &o)
{
    std::vector<TypedReading> readings;
    for (const std::string &typed : o.readings) {
        const Result<TypedReading> reading = readingFrom(typed);
        if (!reading)
            return reading.error();
        readings.push_back(*reading);
        readings.back().tool = o.tool;
    }
    return readings;
}

Result<FindingDraft> findingFrom(Logbook &book, const FindingOptions &o)
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

Status askWhichFinding(Logbook &book, const Rig &rig, const std::string &point, const FindingOptions &o)
{
    if (!o.same.empty() || o.isNew)
        return done();
    const Result<RigPlace> place = placeFrom(o);
    if (!place)
        return place.error();
    const auto histories = findingHistories(book, rig.id);
    if (!histories)
        return histories.error();
    const auto offers = offerFor(*histories, point, rig, *place);
    if (offers.empty())
        return done();
    std::vector<std::string> open;
    for (const OfferedFinding &offer : offers)
        open.push_back(offerWords(offer, *histories));
    return Error{Errc::Conflict, "this point has an open finding already: " + join(open, ", "), point,
                 "say --same ID when it is that one, or --new when it is another"};
}

Result<std::vector<Photo>> importAll(Session &session, const std::vector<std::string> &files, const Rig &rig,
                                     const MarkReceipt &receipt, const Doer &doer)
{
    std::vector<Photo> photos;
    for (const std::string &file : files) {
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

void tellReceipt(Session &session, const MarkReceipt &receipt, const std::vector<Photo> &photos,
                 Answer &answer)
{
    Value::List findings;
    for (const Id &id : receipt.findings) {
        findings.push_back(id.text());
        answer.text += "finding " + id.shortText() + "\n";
    }
    Value::List warnings;
    for (const LimitWarning &warning : receipt.warnings) {
        warnings.push_back(warningJson(warning));
        answer.text += "look again: " + warningWords(warning, session.texts(), session.units()) + "\n";
    }
    Value::List photoIds;
    for (const Photo &photo : photos)
        photoIds.push_back(photo.id.text());
    const auto idOrNull = [](const Id &id) { return id.isNull() ? Value() : Value(id.text()); };
    answer.json.member("mark") = idOrNull(receipt.mark);
    answer.json.member("walk") = idOrNull(receipt.walk);
    answer.json.member("findings") = findings;
    answer.json.member("photos") = photoIds;
    answer.json.member("warnings") = warnings;
}

} // namespace snugwalk::cli
