// SPDX-License-Identifier: Apache-2.0
// From values, as stored or as a person wrote them, to rig and place.
#include "rig/names.hpp"
#include "rig/place.hpp"
#include "rig/rig_value.hpp"

namespace snugwalk {

Result<double> readSi(const Value &value, Dimension dimension, const std::string &field)
{
    const auto refuse = [&](std::string what, std::string act) {
        return Error{Errc::InvalidInput, std::move(what), field, std::move(act)};
    };
    if (const auto text = value.asString()) {
        Result<double> parsed = parseSi(dimension, *text);
        if (!parsed)
            return refuse(parsed.error().what + " " + parsed.error().where, parsed.error().act);
        return parsed;
    }
    const auto number = value["value"].asDouble();
    const auto unitText = value["unit"].asString();
    if (!number || !unitText)
        return refuse("not a " + std::string(dimensionName(dimension)),
                      R"(write text such as "12 m" or {"value": 12, "unit": "m"})");
    const auto unit = findUnit(dimension, *unitText);
    if (!unit && !unitText->empty())
        return refuse("unknown unit \"" + *unitText + "\"", "use " + std::string(siSymbol(dimension)));
    return unit ? toSi(*unit, *number) : *number;
}

namespace {

// Collects the first fault of many reads, so that each read stays one line.
class Reader {
public:
    Reader(const Value &value, std::string prefix) : m_value(value), m_prefix(std::move(prefix)) {}

    void text(const char *key, std::string &out)
    {
        const Value &v = m_value[key];
        if (v.isNull())
            return;
        if (const auto s = v.asString())
            out = *s;
        else
            fault(key, "not text", "write it in quotation marks");
    }

    // The items of a list; a fault for anything else, so that nothing typed is passed over.
    const Value::List &list(const char *key)
    {
        const Value &v = m_value[key];
        if (!v.isNull() && !v.isList())
            fault(key, "not a list", "write it in square brackets");
        return v.list();
    }

    void number(const char *key, std::optional<int> &out)
    {
        const Value &v = m_value[key];
        if (v.isNull())
            return;
        const auto n = v.asInt();
        if (n && *n >= -1000000 && *n <= 1000000)
            out = static_cast<int>(*n);
        else
            fault(key, "not a whole number", "write it without a unit");
    }

    template <typename Choice>
    void choice(const char *key, Choice &out)
    {
        std::string name;
        text(key, name);
        if (name.empty())
            return;
        if (const auto parsed = parseChoice<Choice>(name))
            out = *parsed;
        else
            fault(key, "unknown value \"" + name + "\"", "use one of " + choiceList<Choice>());
    }

    template <typename Q>
    void quantity(const char *key, Q &out)
    {
        std::optional<Q> read;
        quantity(key, read);
        if (read)
            out = *read;
    }

    template <typename Q>
    void quantity(const char *key, std::optional<Q> &out)
    {
        const Value &v = m_value[key];
        if (v.isNull())
            return;
        const Result<Q> q = readQuantity<Q>(v, m_prefix + key);
        if (q)
            out = *q;
        else if (!m_error)
            m_error = q.error();
    }

    void fault(const std::string &key, std::string what, std::string act)
    {
        if (!m_error)
            m_error = Error{Errc::InvalidInput, std::move(what), m_prefix + key, std::move(act)};
    }

    Reader child(const char *key)
    {
        if (!m_value[key].isNull() && !m_value[key].isMap())
            fault(key, "not an object with members", "write it in braces");
        return {m_value[key], m_prefix + key + "."};
    }
    void take(const Reader &other)
    {
        if (!m_error)
            m_error = other.m_error;
    }
    const Value &value() const { return m_value; }
    const std::optional<Error> &error() const { return m_error; }

private:
    const Value &m_value;
    std::string m_prefix;
    std::optional<Error> m_error;
};

void readMeasures(Reader &r, Measures &m)
{
    r.quantity("length", m.length);
    r.quantity("width", m.width);
    r.quantity("height", m.height);
    r.quantity("floor_height", m.floorHeight);
    r.quantity("hitch_length", m.hitchLength);
    if (r.value()["axles"].isNull())
        return;
    m.axles.clear();
    for (const Value &axle : r.list("axles")) {
        const auto q = readQuantity<Length>(axle, "measures.axles");
        if (!q)
            return r.fault("axles", q.error().what, q.error().act);
        m.axles.push_back(*q);
    }
}

void readRatings(Reader &r, Ratings &ratings)
{
    r.quantity("gvwr", ratings.gross);
    r.quantity("nose_max", ratings.nose);
    if (r.value()["gawr"].isNull())
        return;
    ratings.axle.clear();
    for (const Value &axle : r.list("gawr")) {
        if (axle.isNull()) {
            ratings.axle.emplace_back();
            continue;
        }
        const auto q = readQuantity<Mass>(axle, "ratings.gawr");
        if (!q)
            return r.fault("gawr", q.error().what, q.error().act);
        ratings.axle.emplace_back(*q);
    }
}

void readTires(Reader &r, Tires &t)
{
    r.text("size", t.size);
    r.text("load_range", t.loadRange);
    r.number("load_index", t.loadIndex);
    r.quantity("max_load", t.maxLoad);
    r.quantity("max_pressure", t.maxPressure);
    r.quantity("placard", t.placard);
}

void readOpenings(Reader &r, Rig &rig)
{
    if (r.value()["openings"].isNull())
        return;
    rig.openings.clear();
    std::size_t index = 0;
    for (const Value &item : r.list("openings")) {
        Reader one(item, "openings[" + std::to_string(index++) + "].");
        Opening o;
        one.text("name", o.name);
        one.choice("kind", o.kind);
        one.choice("face", o.face);
        one.quantity("x", o.at.aft);
        one.quantity("y", o.at.right);
        one.quantity("z", o.at.up);
        one.quantity("w", o.width);
        one.quantity("h", o.height);
        r.take(one);
        rig.openings.push_back(std::move(o));
    }
}

void readFittings(Reader &r, Rig &rig)
{
    if (r.value()["fittings"].isNull())
        return;
    rig.fittings.clear();
    for (const Value &item : r.list("fittings")) {
        if (const auto name = item.asString())
            rig.fittings.insert(*name);
        else
            r.fault("fittings", "not text", "list the fittings' names");
    }
}

} // namespace

Result<Rig> rigFromValue(const Value &value)
{
    if (!value.isMap())
        return Error{Errc::InvalidInput, "a rig is an object with members", "",
                     "see `snugwalk rig add --help`"};
    Rig rig;
    Reader r(value, "");
    r.text("name", rig.name);
    r.choice("kind", rig.kind);
    r.choice("practice", rig.practice);
    r.choice("hitch", rig.hitch);
    r.choice("roof_walk", rig.roofWalk);
    r.choice("roof", rig.roof);
    r.choice("bearings", rig.bearings);
    r.quantity("annual_distance", rig.yearly);
    readOpenings(r, rig);
    readFittings(r, rig);
    Reader measures = r.child("measures");
    readMeasures(measures, rig.measures);
    Reader ratings = r.child("ratings");
    readRatings(ratings, rig.ratings);
    Reader tires = r.child("tires");
    readTires(tires, rig.tires);
    Reader wheels = r.child("wheels");
    wheels.number("studs", rig.wheels.studs);
    wheels.quantity("torque", rig.wheels.torque);
    for (const Reader *part : {&measures, &ratings, &tires, &wheels})
        r.take(*part);
    if (r.error())
        return *r.error();
    return rig;
}

Result<RigPlace> placeFromValue(const Value &value)
{
    RigPlace place;
    Reader r(value, "place.");
    r.text("named", place.named);
    std::string face;
    r.text("face", face);
    if (!face.empty()) {
        place.face = parseChoice<Face>(face);
        if (!place.face)
            r.fault("face", "unknown face \"" + face + "\"", "use one of " + choiceList<Face>());
    }
    std::optional<Length> x;
    std::optional<Length> y;
    std::optional<Length> z;
    r.quantity("x", x);
    r.quantity("y", y);
    r.quantity("z", z);
    if (x || y || z)
        place.at = RigPosition{x.value_or(Length{}), y.value_or(Length{}), z.value_or(Length{})};
    if (place.at && !place.face)
        r.fault("face", "a coordinate without its face", "use one of " + choiceList<Face>());
    if (r.error())
        return *r.error();
    return place;
}

} // namespace snugwalk
