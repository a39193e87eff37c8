// SPDX-License-Identifier: Apache-2.0
// The rig under care: what it is, how big, what its plates say, what is fitted.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "base/id.hpp"
#include "base/quantity.hpp"

namespace snugwalk {

enum class RigKind { TravelTrailer, FifthWheel, FoldingTrailer, Teardrop, TruckCamper, Motorhome, Van };

/// Which country's habits hold: lamps, plugs, gas, safety link, which side is kerb side.
enum class Practice { NorthAmerica, Europe, AustraliaNewZealand, Other };

enum class HitchType { Ball, FrictionBall, FifthWheel, Pintle, None };
/// Whether the roof's maker rates it for a person. Unknown counts as no.
enum class RoofWalk { No, Yes, Unknown };
enum class RoofKind { Membrane, Moulded, Metal, Canvas };
enum class BearingKind { Adjustable, Sealed };

/// Faces of the outline. Left and right are seen facing forward.
enum class Face { Top, Left, Right, Front, Rear, Underside };

/// A spot on the rig: metres aft of the front face of the body (negative on the drawbar), metres
/// from the centre line (positive to the right, facing forward), metres above the ground.
struct RigPosition {
    Length aft;
    Length right;
    Length up;
    friend bool operator==(const RigPosition &, const RigPosition &) = default;
};

struct Measures {
    Length length;             ///< body, without the drawbar
    Length width;              ///< body
    Length height;             ///< body, from floor to roof
    Length floorHeight;        ///< underside of the body above the ground
    Length hitchLength;        ///< coupling to the front face; zero without a drawbar
    std::vector<Length> axles; ///< aft of the front face, in order
    friend bool operator==(const Measures &, const Measures &) = default;
};

/// What the plates say; nothing where nobody has read them yet.
struct Ratings {
    std::optional<Mass> gross;             ///< GVWR, ATM or technically permissible maximum
    std::vector<std::optional<Mass>> axle; ///< GAWR, front axle first
    std::optional<Mass> nose;              ///< largest load on the coupling
    friend bool operator==(const Ratings &, const Ratings &) = default;
};

struct Tires {
    std::string size;      ///< as on the sidewall
    std::string loadRange; ///< letter, may be empty
    std::optional<int> loadIndex;
    std::optional<Mass> maxLoad;         ///< one tire, single fitment, from the sidewall
    std::optional<Pressure> maxPressure; ///< cold, from the sidewall
    std::optional<Pressure> placard;     ///< cold, the maker's figure for this rig
    friend bool operator==(const Tires &, const Tires &) = default;
};

struct Wheels {
    std::optional<int> studs;
    std::optional<Torque> torque; ///< the maker's figure; never a common one
    friend bool operator==(const Wheels &, const Wheels &) = default;
};

enum class OpeningKind { Door, Window, Hatch, Vent, Rooflight };

/// Something that can leak or be left open, where its owner placed it: `at` is its centre.
struct Opening {
    std::string name;
    OpeningKind kind = OpeningKind::Window;
    Face face = Face::Left;
    RigPosition at;
    Length width;
    Length height;
    friend bool operator==(const Opening &, const Opening &) = default;
};

struct Rig {
    Id id;
    std::string name;
    RigKind kind = RigKind::TravelTrailer;
    Practice practice = Practice::NorthAmerica;
    Measures measures;
    HitchType hitch = HitchType::Ball;
    RoofWalk roofWalk = RoofWalk::Unknown;
    Ratings ratings;
    Tires tires;
    Wheels wheels;
    RoofKind roof = RoofKind::Membrane;
    BearingKind bearings = BearingKind::Adjustable;
    std::vector<Opening> openings;
    std::set<std::string> fittings; ///< slugs of `knownFittings`
    std::optional<Distance> yearly; ///< distance expected a year, before any trip is logged
    friend bool operator==(const Rig &, const Rig &) = default;
};

/// A fault in one field, for a form that shows all of them at once.
struct Problem {
    std::string field;
    std::string what;
    std::string act;
};

/// Every fault of `rig`; empty when there is none. Limits are of what is built, not of law.
[[nodiscard]] std::vector<Problem> validate(const Rig &rig);

/// Wheels in walking order: "wheel 1L", "wheel 1R", "wheel 2L" … axle 1 is the foremost.
[[nodiscard]] std::vector<std::string> wheelNames(const Rig &rig);

/// The rig's fittings with those that follow: from other fields (two axles, a wide body, the hitch, the
/// roof, openings) and from each other (a heater has its vent, a cassette is a toilet, an engine's base has
/// hydraulic brakes).
[[nodiscard]] std::set<std::string> allFittings(const Rig &rig);
[[nodiscard]] bool isKnownFitting(std::string_view slug);
[[nodiscard]] const std::vector<std::string> &knownFittings();

/// True when kerb side is the left side facing forward.
[[nodiscard]] bool kerbIsLeft(const Rig &rig);
[[nodiscard]] bool isTowed(RigKind kind);

} // namespace snugwalk
