// SPDX-License-Identifier: Apache-2.0
// What cannot be true of a rig, told field by field.
#include <cmath>

#include "base/text.hpp"
#include "base/units.hpp"
#include "rig/names.hpp"
#include "rig/rig.hpp"

namespace snugwalk {
namespace {

class Checker {
public:
    std::vector<Problem> problems;

    void fault(std::string field, std::string what, std::string act)
    {
        problems.push_back({std::move(field), std::move(what), std::move(act)});
    }

    void text(const std::string &field, const std::string &value)
    {
        if (value.size() > 80 || !isUtf8(value))
            fault(field, "over 80 bytes or not UTF-8", "write it shorter, in plain letters");
    }

    template <typename Q>
    void range(const std::string &field, Q value, Q low, Q high)
    {
        // written so that NaN, which fails every comparison, is a fault too
        if (value >= low && value <= high)
            return;
        fault(field, format(value, UnitSystem::Si) + " cannot be right",
              "give a value from " + format(low, UnitSystem::Si) + " to " + format(high, UnitSystem::Si));
    }

    template <typename Q>
    void range(const std::string &field, const std::optional<Q> &value, Q low, Q high)
    {
        if (value)
            range(field, *value, low, high);
    }
};

void checkMeasures(Checker &check, const Rig &rig)
{
    const Measures &m = rig.measures;
    check.range("measures.length", m.length, metres(1.5), metres(20));
    check.range("measures.width", m.width, metres(1), metres(3.2));
    check.range("measures.height", m.height, metres(0.5), metres(4));
    check.range("measures.floor_height", m.floorHeight, metres(0.1), metres(2));
    check.range("measures.hitch_length", m.hitchLength, metres(0), metres(4));
    if (m.axles.empty() && rig.kind != RigKind::TruckCamper)
        check.fault("measures.axles", "no axle",
                    "give each axle's distance from the front face, such as 3.3 m");
    if (m.axles.size() > 4)
        check.fault("measures.axles", "more than four axles", "list each axle once");
    for (std::size_t i = 0; i < m.axles.size(); ++i) {
        const std::string field = "measures.axles[" + std::to_string(i) + "]";
        check.range(field, m.axles[i], metres(-2), m.length);
        if (i > 0 && !(m.axles[i] > m.axles[i - 1]))
            check.fault(field, "axles are not in order from the front", "list the foremost axle first");
    }
}

void checkRatings(Checker &check, const Rig &rig)
{
    check.range("ratings.gvwr", rig.ratings.gross, kilograms(100), kilograms(30000));
    if (rig.ratings.axle.size() > rig.measures.axles.size())
        check.fault("ratings.gawr", "more axle ratings than axles",
                    "give one for each axle, front axle first");
    for (std::size_t i = 0; i < rig.ratings.axle.size(); ++i)
        check.range("ratings.gawr[" + std::to_string(i) + "]", rig.ratings.axle[i], kilograms(50),
                    kilograms(12000));
    check.range("ratings.nose_max", rig.ratings.nose, kilograms(5), kilograms(5000));
    if (rig.ratings.nose && rig.ratings.gross && *rig.ratings.nose > *rig.ratings.gross)
        check.fault("ratings.nose_max", "the nose carries more than the whole rig may weigh",
                    "read both plates again");
}

void checkTiresAndWheels(Checker &check, const Rig &rig)
{
    check.text("tires.size", rig.tires.size);
    check.text("tires.load_range", rig.tires.loadRange);
    check.range("tires.max_load", rig.tires.maxLoad, kilograms(100), kilograms(5000));
    check.range("tires.max_pressure", rig.tires.maxPressure, kilopascals(100), kilopascals(1000));
    check.range("tires.placard", rig.tires.placard, kilopascals(100), kilopascals(1000));
    if (rig.tires.placard && rig.tires.maxPressure && *rig.tires.placard > *rig.tires.maxPressure)
        check.fault("tires.placard", "the placard asks for more than the sidewall allows",
                    "read the placard and the sidewall again; a tire shop decides which tire is wrong");
    if (rig.tires.loadIndex && (*rig.tires.loadIndex < 50 || *rig.tires.loadIndex > 170))
        check.fault("tires.load_index",
                    std::to_string(*rig.tires.loadIndex) + " is no load index of such a tire",
                    "read the number after the size on the sidewall, such as 112");
    if (rig.wheels.studs && (*rig.wheels.studs < 3 || *rig.wheels.studs > 12))
        check.fault("wheels.studs", std::to_string(*rig.wheels.studs) + " studs",
                    "count the nuts of one wheel, 3 to 12");
    // under 10 lb·ft no wheel nut holds, over 550 no such stud lasts (common practice, no source)
    check.range("wheels.torque", rig.wheels.torque, Torque::fromSi(13.6), Torque::fromSi(746));
}

void checkOpenings(Checker &check, const Rig &rig)
{
    // a place is found by its name, so an opening may not be called like a wheel
    const std::vector<std::string> wheels = wheelNames(rig);
    std::set<std::string> names(wheels.begin(), wheels.end());
    for (std::size_t i = 0; i < rig.openings.size(); ++i) {
        const Opening &o = rig.openings[i];
        const std::string field = "openings[" + std::to_string(i) + "]";
        if (o.name.empty() || !names.insert(o.name).second)
            check.fault(field + ".name", o.name.empty() ? "no name" : "two places are called " + o.name,
                        "give each its own name, such as vent 2");
        check.range(field + ".x", o.at.aft, metres(-3), rig.measures.length + metres(0.5));
        check.range(field + ".y", o.at.right, metres(-2), metres(2));
        check.range(field + ".z", o.at.up, metres(-0.2), metres(6));
        check.text(field + ".name", o.name);
        check.range(field + ".w", o.width, metres(0.02), metres(15));
        check.range(field + ".h", o.height, metres(0.02), metres(4));
    }
}

} // namespace

std::vector<Problem> validate(const Rig &rig)
{
    Checker check;
    if (rig.name.empty())
        check.fault("name", "no name", "give the rig a short name");
    check.text("name", rig.name);
    checkMeasures(check, rig);
    checkRatings(check, rig);
    checkTiresAndWheels(check, rig);
    checkOpenings(check, rig);
    if (!isTowed(rig.kind) && rig.hitch != HitchType::None)
        check.fault("hitch", "a " + std::string(slug(rig.kind)) + " is not towed", "set hitch to none");
    if (rig.kind == RigKind::FifthWheel && rig.hitch != HitchType::FifthWheel)
        check.fault("hitch", "a fifth wheel has a fifth-wheel coupling", "set hitch to fifth_wheel");
    for (const std::string &fitting : rig.fittings) {
        if (!isKnownFitting(fitting))
            check.fault("fittings", "unknown fitting \"" + fitting + "\"",
                        "see `snugwalk rig --help` for the list");
    }
    if (rig.yearly && !(*rig.yearly >= kilometres(0) && *rig.yearly <= kilometres(200000)))
        check.fault("annual_distance", "cannot be right", "give 0 to 200,000 km");
    return check.problems;
}

} // namespace snugwalk
