// SPDX-License-Identifier: Apache-2.0
// Acts of the scenario through the same functions that people's acts go through.
#include "demo/scenario_acts.hpp"

#include "data/embedded.hpp"
#include "logbook/acts_photo.hpp"
#include "logbook/import_photo.hpp"
#include "rig/rig_value.hpp"
#include "trip/make_trip.hpp"
#include "walk/mend_part.hpp"

namespace snugwalk {
namespace {

std::string text(const Value &v) { return v.asString().value_or(""); }

Error broken(const std::string &what, const std::string &where)
{
    return {Errc::InvalidInput, "scenario: " + what, where,
            "correct demo-rig/scenario.json, or rebuild the demo"};
}

Result<LocalTime> timeOf(const Value &v, const std::string &where)
{
    const auto time = parseLocal(text(v));
    if (!time)
        return broken("not a time: \"" + text(v) + "\"", where);
    return *time;
}

std::optional<GeoPoint> placeOf(const Value &act)
{
    const auto lat = act["lat"].asDouble();
    const auto lon = act["lon"].asDouble();
    return lat && lon ? std::optional(GeoPoint{*lat, *lon, act["alt"].asDouble(), std::nullopt})
                      : std::nullopt;
}

} // namespace

Status ScenarioPlayer::addRig(const Value &value)
{
    Result<Rig> rig = rigFromValue(value);
    if (!rig)
        return rig.error();
    const Result<Id> id = saveRig(m_book, *rig, {"demo", std::nullopt, std::nullopt});
    if (!id)
        return id.error();
    m_rig = std::move(rig).value();
    m_rig.id = *id;
    m_report.rig = m_rig.name;
    return done();
}

Status ScenarioPlayer::play(const Value &act)
{
    const std::string kind = text(act["do"]);
    if (kind == "trip")
        return trip(act);
    if (kind == "stay")
        return stay(act);
    if (kind == "walk")
        return walk(act);
    if (kind == "mend")
        return mend(act);
    if (kind == "event")
        return happening(act);
    if (kind == "stock")
        return stock(act);
    return broken("unknown act \"" + kind + "\"", text(act["id"]));
}

Status ScenarioPlayer::trip(const Value &act)
{
    const std::string name = text(act["file"]);
    const Result<std::string> bytes = m_source(name);
    if (!bytes)
        return bytes.error();
    const Result<ParsedTrack> track = parseTrack(*bytes);
    if (!track)
        return track.error();
    const ZoneOffset offset = m_clock.now().offset;
    Result<Trip> trip =
        makeTrip(*track, {text(act["title"]), findRoadClass(text(act["road"])).value_or(RoadClass::Unknown),
                          name.substr(name.rfind('/') + 1), text(act["note"]), offset});
    if (!trip)
        return trip.error();
    trip->rig = m_rig.id;
    m_clock.set(trip->end);
    const Result<Id> id = addTrip(m_book, *trip, {text(act["by"]), std::nullopt, std::nullopt});
    ++m_report.trips;
    return id ? done() : Status(id.error());
}

Status ScenarioPlayer::stay(const Value &act)
{
    const Result<LocalTime> from = timeOf(act["from"], text(act["id"]));
    if (!from)
        return from.error();
    const auto place = placeOf(act);
    if (!place)
        return broken("a stay without its place", text(act["id"]));
    m_clock.set(*from);
    const Stay stay{Id{},
                    m_rig.id,
                    *from,
                    parseLocal(text(act["to"])),
                    *place,
                    act["covered"].asBool().value_or(false),
                    text(act["name"])};
    const Result<Id> id = addStay(m_book, stay, {text(act["by"]), std::nullopt, std::nullopt});
    return id ? done() : Status(id.error());
}

Status ScenarioPlayer::mend(const Value &act)
{
    const Result<LocalTime> at = timeOf(act["at"], text(act["id"]));
    if (!at)
        return at.error();
    m_clock.set(*at);
    Mend mend;
    mend.rig = m_rig.id;
    mend.at = *at;
    mend.by = text(act["by"]);
    mend.action = text(act["action"]);
    mend.what = text(act["what"]);
    mend.cost = text(act["cost"]);
    mend.minutes = act["minutes"].asDouble();
    for (const Value &typed : act["parts"].list()) {
        const Result<MendPart> part = parsePart(text(typed));
        if (!part)
            return part.error();
        mend.parts.push_back(*part);
    }
    for (const Value &point : act["points"].list())
        mend.points.push_back(text(point));
    for (const Value &name : act["closes"].list()) {
        const Result<Id> id = findingNamed(text(name));
        if (!id)
            return id.error();
        mend.findings.push_back(*id);
    }
    const Result<Id> id = addMend(m_book, mend, {mend.by, std::nullopt, std::nullopt});
    ++m_report.mends;
    return id ? done() : Status(id.error());
}

Status ScenarioPlayer::happening(const Value &act)
{
    const Result<LocalTime> at = timeOf(act["at"], text(act["id"]));
    if (!at)
        return at.error();
    m_clock.set(*at);
    const Result<Id> id = addHappening(m_book, {Id{}, m_rig.id, text(act["kind"]), *at, text(act["note"])},
                                       {text(act["by"]), std::nullopt, std::nullopt});
    return id ? done() : Status(id.error());
}

Status ScenarioPlayer::stock(const Value &act)
{
    const Result<LocalTime> at = timeOf(act["at"], text(act["id"]));
    if (!at)
        return at.error();
    m_clock.set(*at);
    for (const auto &[slug, amount] : act["on_hand"].map()) {
        const SupplyItem *item = productSupplies().find(slug);
        const auto si = item == nullptr ? std::nullopt
                                        : amountOf(*item, amount["quantity"].asDouble().value_or(0.0),
                                                   text(amount["unit"]));
        if (!si)
            return broken("no such supply, or not an amount of it: " + slug, text(act["id"]));
        const Stock stock{Id{}, m_rig.id, slug, item->dimension, *si, item->unit, *at, text(act["by"])};
        const Result<Id> id = setStock(m_book, stock, {stock.by, std::nullopt, std::nullopt});
        if (!id)
            return id.error();
    }
    return done();
}

Status ScenarioPlayer::draw(const Id &photo, const Value &drawing, const Doer &doer)
{
    std::vector<DrawnShape> shapes;
    for (const Value &typed : drawing.list()) {
        const auto kind = parseShapeKind(text(typed["kind"]));
        const Result<DrawnShape> shape =
            kind ? parseShape(*kind, text(typed["at"])) : broken("unknown shape", text(typed["kind"]));
        if (!shape)
            return shape.error();
        shapes.push_back(*shape);
    }
    if (shapes.empty())
        return done();
    const Result<Id> id = saveDrawing(m_book, photo, shapes, doer);
    return id ? done() : Status(id.error());
}

Status ScenarioPlayer::walk(const Value &act)
{
    const Result<LocalTime> start = timeOf(act["start"], text(act["id"]));
    const Result<LocalTime> finish = timeOf(act["finish"], text(act["id"]));
    if (!start || !finish)
        return start ? finish.error() : start.error();
    m_clock.set(*start);
    const Doer doer{text(act["by"]), std::nullopt, placeOf(act)};
    std::vector<std::string> sets;
    for (const Value &set : act["sets"].list())
        sets.push_back(text(set));
    const Result<Walk> walk = startWalk(m_book, productCatalogue(), m_rig, text(act["kind"]), sets, {}, doer);
    if (!walk)
        return walk.error();
    std::map<std::string, Value> named;
    for (const Value &item : act["marks"].list())
        named[text(item["point"])] = item;
    // the marks are spread evenly over the time the walk took
    const auto step = (finish->instant - start->instant) / static_cast<long>(walk->tape.size() + 1);
    for (const TapeLine &line : walk->tape) {
        m_clock.advance(step);
        for (const std::string &point : line.points) {
            const auto found = named.find(point);
            const Value &how = found == named.end() ? act["default"] : found->second;
            SNUG_TRY(mark(*walk, point, how, doer));
            named.erase(point);
        }
    }
    if (!named.empty())
        return broken("the walk does not ask for " + named.begin()->first, text(act["id"]));
    m_clock.set(*finish);
    ++m_report.walks;
    return finishWalk(m_book, *walk, doer);
}

Result<Id> ScenarioPlayer::findingNamed(const std::string &name) const
{
    const auto found = m_findings.find(name);
    if (found == m_findings.end())
        return broken("no finding is called \"" + name + "\" yet", name);
    return found->second;
}

Result<MarkDraft> ScenarioPlayer::draft(const std::string &point, const Value &value) const
{
    MarkDraft draft;
    draft.point = point;
    draft.state = parseMarkState(text(value["mark"])).value_or(MarkState::NotLooked);
    draft.how = parseLookedHow(text(value["look"])).value_or(LookedHow::Looked);
    draft.reason = text(value["reason"]);
    draft.note = text(value["note"]);
    for (const Value &r : value["readings"].list())
        draft.readings.push_back({text(r["reading"]), text(r["place"]), text(r["value"])});
    if (draft.state != MarkState::Attention)
        return draft;
    const bool again = value["same"].isString();
    const Value &f = again ? value : value["finding"];
    FindingDraft finding;
    if (again) {
        const Result<Id> id = findingNamed(text(value["same"]));
        if (!id)
            return id.error();
        finding.same = *id;
    }
    finding.defect = text(f["defect"]);
    finding.grade = static_cast<int>(f["grade"].asInt().value_or(0));
    finding.extentText = text(f["extent"]["value"]);
    finding.note = text(f["note"]);
    const Result<RigPlace> place = placeFromValue(f["place"]);
    if (!place)
        return place.error();
    finding.place = *place;
    draft.findings.push_back(finding);
    return draft;
}

Status ScenarioPlayer::mark(const Walk &walk, const std::string &point, const Value &value, const Doer &doer)
{
    const Result<MarkDraft> wanted = draft(point, value);
    if (!wanted)
        return wanted.error();
    const Result<MarkReceipt> receipt = markPoint(m_book, productCatalogue(), m_rig, walk, *wanted, doer);
    if (!receipt)
        return receipt.error();
    const Value &finding = value["same"].isString() ? value : value["finding"];
    if (!receipt->findings.empty() && !value["same"].isString())
        m_findings[text(finding["id"])] = receipt->findings.front();
    return photos(finding, *receipt, doer);
}

Status ScenarioPlayer::photos(const Value &finding, const MarkReceipt &receipt, const Doer &doer)
{
    for (const Value &file : finding["photos"].list()) {
        const PhotoOf of{m_rig.id, receipt.findings.front(), receipt.looks.front(), ""};
        const Result<std::string> bytes = m_source(text(file));
        if (!bytes)
            return bytes.error();
        const Result<Photo> photo = importPhoto(m_book, *bytes, m_codec, of, doer);
        if (!photo)
            return photo.error();
        SNUG_TRY(draw(photo->id, finding["drawings"][text(file)], doer));
        ++m_report.photos;
    }
    return done();
}

} // namespace snugwalk
