// SPDX-License-Identifier: Apache-2.0
// The hold list's sentences and the defects that fire them.
#include "concern/holds.hpp"

#include <algorithm>
#include <array>

#include "due/severity.hpp"

namespace snugwalk {
namespace {

constexpr std::string_view common = "common practice, no source";

constexpr auto rules = std::to_array<HoldRule>({
    {"1", "A tire shows cord, a bulge or separation, has tread under 1.6 mm, or is flat or hissing.", "move",
     "49 CFR 570.62"},
    {"2", "The load is over a rating of tire, axle, rig, coupling or combination.", "move",
     "rating labels of the rig"},
    {"3", "A wheel nut is missing or loose, a stud is broken, a hole is egg-shaped, or a wheel is cracked.",
     "move", "49 CFR 570.62 and 393.205 (the latter restated)"},
    {"4", "A hub is over 93 degC, or over 77 degC and 14 degC above its mates.", "move", common},
    {"5",
     "A brake does not apply or release, a lining is under 1.6 mm, brake fluid leaks, or the parking brake "
     "does not hold.",
     "move", "49 CFR 570.59"},
    {"6", "Lanyard, breakaway, breakaway cable or chains are missing, frayed or on the wrong point.", "move",
     "49 CFR 393.70 (from memory); S.D. Codified Laws 32-18-17"},
    {"7",
     "The coupling is not latched and pinned, the ball is wrong or worn, or fifth-wheel slack is over 12.7 "
     "mm.",
     "move", "Utah Admin. Code R714-162-10"},
    {"8",
     "A coupler, drawbar, frame, hanger, main leaf or U-bolt is cracked or broken, or an axle has shifted.",
     "move", "49 CFR 570.61 and 393.201"},
    {"9", "A stop, turn or tail lamp is out.", "move", "49 CFR 393.11 (restated)"},
    {"10", "Nose weight is over a rating, or was measured under the low end set for this rig.", "move",
     common},
    {"11", "A slide-out, awning, step, door, jack, steady, rooflight, ramp, rack or load is not held.",
     "move", common},
    {"12", "There is a smell or drip of fuel, a smell of gas, or a loose cylinder.", "move", common},
    {"13", "Exhaust gets into the cabin.", "move", common},
    {"14", "Steering, brakes, view through the windscreen or wipers of a motorized rig have a fault.", "move",
     common},
    {"15", "The points of a blow-out, kerb strike, flood or collision have not been looked at since.", "move",
     common},
    {"sleep",
     "An alarm is missing, silent or past its date, there is no extinguisher, or an exit is blocked.",
     "sleep", "NFPA 72 ch. 29 (restated); NFPA 1192 (from memory)"},
    {"plug", "The skin tingles, a trip switch does not trip, a blade is brown, or the rig stood in a flood.",
     "plug", common},
    {"light", "There is a smell of gas, a leak check failed, or a cylinder is out of date or damaged.",
     "light", "49 CFR 180.205 and 180.209"},
});

// Least grades: 1 where the word alone says it (missing, dead), 3 open, 4 through or moving.
constexpr auto defects = std::to_array<DefectHold>({
    {"1", "tire-bulges", "delaminated"},
    {"1", "tire-bulges", "crack", 4},
    {"1", "tire-bulges", "worn", 4},
    {"1", "tire-pressure", "leaking"},
    {"1", "tire-pressure", "dead"},
    {"1", "valve-stems", "leaking"},
    {"1", "valve-stems", "missing"},
    {"3", "wheel-nut-torque", "loose"},
    {"3", "wheel-nut-torque", "missing"},
    {"3", "wheel-nut-torque", "crack"},
    {"3", "studs-and-seats", "loose"},
    {"3", "studs-and-seats", "missing"},
    {"3", "studs-and-seats", "crack"},
    {"3", "studs-and-seats", "worn", 4},
    {"3", "wheel-rims", "crack"},
    {"4", "bearing-play", "leaking", 4},
    {"4", "bearing-play", "play", 4},
    {"4", "hub-temperature", "seized"},
    {"5", "rolling-brake-test", "dead"},
    {"5", "rolling-brake-test", "seized"},
    {"5", "brake-linings", "leaking", 3},
    {"5", "brake-linings", "loose", 3},
    {"5", "brake-current", "dead"},
    {"5", "brake-controller", "dead"},
    {"5", "overrun-parking-brake", "seized", 3},
    {"5", "overrun-parking-brake", "loose", 4},
    {"6", "breakaway-lanyard", "missing"},
    {"6", "breakaway-lanyard", "dead"},
    {"6", "breakaway-lanyard", "seized"},
    {"6", "breakaway-lanyard", "worn", 3},
    {"6", "breakaway-battery", "dead"},
    {"6", "breakaway-cable", "missing"},
    {"6", "breakaway-cable", "worn", 3},
    {"6", "chains-condition", "missing"},
    {"6", "chains-condition", "crack"},
    {"6", "chains-condition", "worn", 4},
    {"6", "chains-run", "loose", 3},
    {"7", "ball-coupling-latched", "loose"},
    {"7", "ball-coupling-latched", "gap"},
    {"7", "ball-coupling-latched", "missing"},
    {"7", "ball-mount-pin", "missing"},
    {"7", "ball-mount-pin", "loose"},
    {"7", "ball-size", "loose"},
    {"7", "ball-size", "worn", 4},
    {"7", "fifth-wheel-head", "gap"},
    {"7", "fifth-wheel-head", "missing"},
    {"7", "fifth-wheel-head", "crack"},
    {"7", "fifth-wheel-head", "loose", 3},
    {"7", "friction-coupling", "loose", 3},
    {"7", "flat-tow-bar", "missing"},
    {"7", "flat-tow-bar", "crack"},
    {"8", "main-rails", "crack"},
    {"8", "spring-hangers", "crack"},
    {"8", "leaf-springs", "crack"},
    {"8", "u-bolts", "crack"},
    {"8", "u-bolts", "missing"},
    {"8", "equalizers-and-shackles", "crack"},
    {"8", "equalizers-and-shackles", "missing"},
    {"8", "spring-bars", "crack"},
    {"9", "tail-lamps", "dead"},
    {"9", "tail-lamps", "missing"},
    {"9", "stop-lamps", "dead"},
    {"9", "stop-lamps", "missing"},
    {"9", "turn-lamps", "dead"},
    {"9", "turn-lamps", "missing"},
    {"9", "lamps-outside-north-america", "dead"},
    {"9", "lamps-outside-north-america", "missing"},
    {"11", "hold:11", "loose", 4},
    {"11", "hold:11", "missing", 4},
    {"11", "hold:11", "gap", 4},
    {"12", "gas-cylinder-mount", "loose"},
    {"12", "gas-cylinder-mount", "missing"},
    {"12", "gas-shut-for-road", "leaking"},
    {"12", "motor-fluids", "leaking", 4},
    {"14", "wipers-and-mirrors", "missing"},
    {"14", "wipers-and-mirrors", "crack", 4},
    {"sleep", "smoke-alarm", "dead"},
    {"sleep", "smoke-alarm", "missing"},
    {"sleep", "smoke-alarm", "expired"},
    {"sleep", "co-alarm", "dead"},
    {"sleep", "co-alarm", "missing"},
    {"sleep", "co-alarm", "expired"},
    {"sleep", "gas-alarm", "dead"},
    {"sleep", "gas-alarm", "missing"},
    {"sleep", "gas-alarm", "expired"},
    {"sleep", "extinguisher", "missing"},
    {"sleep", "extinguisher", "dead"},
    {"sleep", "exits-clear", "seized"},
    {"plug", "live-skin-check", "leaking"},
    {"plug", "outlets-and-trip-switch", "dead"},
    {"light", "gas-cylinder-date", "expired"},
    {"light", "gas-cylinder-date", "corroded", 4},
    {"light", "gas-hoses", "leaking"},
});

bool matches(const DefectHold &hold, const Point &point)
{
    if (hold.point == point.slug)
        return true;
    return point.hold && hold.point == "hold:" + std::to_string(*point.hold);
}

} // namespace

std::span<const HoldRule> holdRules() { return rules; }
std::span<const DefectHold> defectHolds() { return defects; }

const HoldRule *findHoldRule(std::string_view key)
{
    const auto found =
        std::find_if(rules.begin(), rules.end(), [&](const HoldRule &r) { return r.key == key; });
    return found == rules.end() ? nullptr : &*found;
}

std::vector<HoldHit> holdsByDefect(const Point &point, std::string_view defect, int grade)
{
    std::vector<HoldHit> hits;
    const auto add = [&](std::string_view rule, std::string_view forbids) {
        const bool numbered = !rule.empty() && rule.front() >= '0' && rule.front() <= '9';
        const int number = numbered ? std::stoi(std::string(rule)) : point.hold.value_or(0);
        hits.push_back({number,
                        std::string(rule),
                        point.slug,
                        {},
                        std::string(forbids),
                        std::nullopt,
                        Dimension::Count});
    };
    for (const DefectHold &hold : defects) {
        if (grade >= hold.leastGrade && hold.defect == defect && matches(hold, point))
            add(hold.rule, findHoldRule(hold.rule)->forbids);
    }
    if (hits.empty() && grade >= 5 && isOnHoldList(point))
        add("grade_5", point.forbids.empty() ? "move" : point.forbids);
    return hits;
}

} // namespace snugwalk
