// SPDX-License-Identifier: Apache-2.0
// Reading a plan strictly: every member is known, every leg has its place.
#include "round/plan.hpp"

#include <algorithm>
#include <array>
#include <optional>

#include "base/text.hpp"
#include "base/units.hpp"
#include "base/value.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t legsAtMost = 500;
constexpr std::array members = {"from", "until", "lat", "lon", "covered", "distance", "road", "name"};

std::string memberList() { return join({members.begin(), members.end()}, ", "); }

/// One leg being read; keeps the first thing that is wrong with it.
class LegReader {
public:
    LegReader(const Value &value, std::size_t index)
        : m_value(value), m_leg("legs[" + std::to_string(index) + "]")
    {}

    Result<PlanLeg> read()
    {
        PlanLeg leg;
        checkMembers();
        leg.from = date("from");
        leg.until = date("until");
        if (!m_error && leg.until < leg.from)
            refuse("until", "it ends before it begins", "give a last day at or after \"from\"");
        leg.place.latitude = degrees("lat", 90.0);
        leg.place.longitude = degrees("lon", 180.0);
        leg.covered = cover();
        leg.distance = distance();
        leg.road = road();
        leg.name = name();
        if (m_error)
            return *m_error;
        return leg;
    }

private:
    void refuse(const std::string &member, const std::string &what, const std::string &act,
                Errc code = Errc::InvalidInput)
    {
        if (!m_error)
            m_error = Error{code, what, member.empty() ? m_leg : m_leg + "." + member, act};
    }

    void checkMembers()
    {
        if (!m_value.isMap())
            refuse("", "a leg is an object", "write {\"from\": …, \"until\": …, \"lat\": …, \"lon\": …}");
        for (const auto &[key, value] : m_value.map()) {
            if (std::find(members.begin(), members.end(), key) == members.end())
                refuse(key, "not a member of a leg", "use only " + memberList());
        }
    }

    CivilDate date(const std::string &member)
    {
        const auto text = m_value[member].asString();
        const auto read = text ? parseDate(*text) : std::nullopt;
        if (!read)
            refuse(member, text ? "not a day: \"" + *text + "\"" : "the day is missing",
                   "write it as text, such as \"2027-01-05\"");
        return read.value_or(CivilDate{});
    }

    double degrees(const std::string &member, double most)
    {
        const auto read = m_value[member].asDouble();
        if (!read)
            refuse(member, "the place is missing or no number", "write degrees as a number, such as -44.27");
        else if (!(*read >= -most && *read <= most))
            refuse(member, "not a place on earth",
                   "write degrees from -" + fixed(most, 0) + " to " + fixed(most, 0), Errc::OutOfRange);
        return read.value_or(0.0);
    }

    bool cover()
    {
        const Value &value = m_value["covered"];
        if (!value.isNull() && !value.asBool())
            refuse("covered", "neither true nor false", "write true for under a roof, else false");
        return value.asBool().value_or(false);
    }

    Distance distance()
    {
        const Value &value = m_value["distance"];
        if (value.isNull())
            return {};
        const auto text = value.asString();
        const bool bare = text && parseDouble(trim(*text));
        const Result<Distance> read =
            text && !bare ? parseQuantity<Distance>(*text) : Result<Distance>(Error{});
        if (!read)
            refuse("distance", "not a distance with its unit",
                   "write it as text, such as \"4000 km\" or \"2500 mi\"");
        else if (*read < Distance() || *read > kilometres(1e6))
            refuse("distance", "not a distance that is driven", "give one from 0 to 1,000,000 km",
                   Errc::OutOfRange);
        return read ? *read : Distance();
    }

    RoadClass road()
    {
        const Value &value = m_value["road"];
        if (value.isNull())
            return RoadClass::Unknown;
        const auto read = findRoadClass(value.asString().value_or(""));
        if (!read)
            refuse("road", "not a kind of road", "use smooth, broken, gravel, washboard, track or unknown");
        return read.value_or(RoadClass::Unknown);
    }

    std::string name()
    {
        const Value &value = m_value["name"];
        if (!value.isNull() && !value.isString())
            refuse("name", "not a text", "write the name in quotation marks");
        return value.asString().value_or("");
    }

    const Value &m_value;
    std::string m_leg;
    std::optional<Error> m_error;
};

Status checkOrder(const std::vector<PlanLeg> &legs)
{
    for (std::size_t i = 1; i < legs.size(); ++i) {
        if (legs[i].from <= legs[i - 1].until)
            return Error{Errc::InvalidInput, "two legs share " + formatDate(legs[i].from), "legs",
                         "let one end the day before the next begins"};
    }
    if (legs.back().until > addMonths(legs.front().from, 12 * planYearsAtMost))
        return Error{Errc::OutOfRange,
                     "the plan is longer than " + std::to_string(planYearsAtMost) + " years", "legs",
                     "plan a season or a few years"};
    return done();
}

} // namespace

Result<std::vector<PlanLeg>> parsePlan(std::string_view json)
{
    const Result<Value> root = parseJson(json);
    if (!root)
        return root.error();
    const Value &list = (*root)["legs"];
    if (!list.isList() || list.list().empty())
        return Error{Errc::InvalidInput, "the plan has no legs", "legs",
                     "write {\"legs\": [ … ]} with a leg or more"};
    for (const auto &[key, value] : root->map()) {
        if (key != "legs")
            return Error{Errc::InvalidInput, "not a member of a plan", key,
                         "a plan has \"legs\" and nothing else"};
    }
    if (list.list().size() > legsAtMost)
        return Error{Errc::OutOfRange, "more than " + std::to_string(legsAtMost) + " legs", "legs",
                     "join legs at one place"};
    std::vector<PlanLeg> legs;
    for (std::size_t i = 0; i < list.list().size(); ++i) {
        Result<PlanLeg> leg = LegReader(list.list()[i], i + 1).read();
        if (!leg)
            return leg.error();
        legs.push_back(std::move(leg).value());
    }
    std::stable_sort(legs.begin(), legs.end(),
                     [](const PlanLeg &a, const PlanLeg &b) { return a.from < b.from; });
    SNUG_TRY(checkOrder(legs));
    return legs;
}

} // namespace snugwalk
