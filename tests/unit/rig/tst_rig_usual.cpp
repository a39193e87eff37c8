// SPDX-License-Identifier: Apache-2.0
// The measures a form begins with: whatever kind and country, they are a rig that could be built.
#include <doctest/doctest.h>

#include "base/units.hpp"
#include "rig/names.hpp"
#include "rig/usual_measures.hpp"

using namespace snugwalk;

namespace {

constexpr RigKind kinds[] = {RigKind::TravelTrailer,
                             RigKind::FifthWheel,
                             RigKind::FoldingTrailer,
                             RigKind::Teardrop,
                             RigKind::TruckCamper,
                             RigKind::Motorhome,
                             RigKind::Van};
constexpr Practice practices[] = {Practice::NorthAmerica, Practice::Europe, Practice::AustraliaNewZealand,
                                  Practice::Other};

template <typename Check>
void forEach(const Check &check)
{
    for (const RigKind kind : kinds) {
        for (const Practice practice : practices) {
            INFO(slug(kind), " ", slug(practice));
            check(kind, practice);
        }
    }
}

} // namespace

TEST_CASE("every usual rig passes the check that a typed one must pass")
{
    forEach([](RigKind kind, Practice practice) {
        Rig rig = usualRig(kind, practice);
        rig.name = "Kea";
        for (const Problem &problem : validate(rig))
            FAIL_CHECK(problem.field, ": ", problem.what);
    });
}

TEST_CASE("usual measures keep to what may drive on a road")
{
    forEach([](RigKind kind, Practice practice) {
        const Measures m = usualMeasures(kind, practice);
        // widest body: 102 in in the United States (23 CFR 658.15), 2.55 m in Europe (96/53/EC); from memory
        CHECK(m.width.si() <= (practice == Practice::NorthAmerica ? 102 * 0.0254 : 2.55));
        // highest: 4 m in Europe (96/53/EC), 4.3 m in Australia (ADR 43); from memory
        CHECK((m.floorHeight.si() + m.height.si()) <= 4.0);
        // longest alone: 12 m for a motor vehicle or a trailer (96/53/EC); from memory
        CHECK((m.length.si() + m.hitchLength.si()) <= 12.0);
        CHECK(m.floorHeight.si() < m.height.si());
        CHECK(m.width.si() < m.length.si());
    });
}

TEST_CASE("a drawbar only where there is one, axles under the body")
{
    forEach([](RigKind kind, Practice practice) {
        const Measures m = usualMeasures(kind, practice);
        const bool drawbar = isTowed(kind) && kind != RigKind::FifthWheel;
        CHECK((m.hitchLength.si() > 0) == drawbar);
        CHECK(m.axles.empty() == (kind == RigKind::TruckCamper));
        if (isTowed(kind)) // ahead of the middle the nose would lift (common practice, no source)
            CHECK(m.axles.back().si() > m.length.si() / 2);
    });
}

TEST_CASE("axles follow a body of any length and stay in order within it")
{
    for (const RigKind kind : kinds) {
        for (double length = 1.5; length <= 20.0; length += 0.5) {
            for (int count = 0; count <= 4; ++count) {
                INFO(slug(kind), " ", length, " m, ", count);
                const auto axles = usualAxles(kind, metres(length), count);
                CHECK(axles.size() == static_cast<std::size_t>(count));
                for (std::size_t i = 0; i < axles.size(); ++i) {
                    CHECK(axles[i] <= metres(length));
                    CHECK(axles[i] >= metres(-2));
                    if (i > 0)
                        CHECK(axles[i] > axles[i - 1]);
                }
            }
        }
    }
    CHECK(usualAxles(RigKind::Van, metres(6), 9).size() == 4);
    CHECK(usualAxles(RigKind::Van, metres(6), -1).empty());
}

TEST_CASE("what is built on a van is not asked for a roof membrane or for packed hubs")
{
    forEach([](RigKind kind, Practice practice) {
        if (kind != RigKind::Van)
            return;
        CHECK(usualRoof(kind, practice) == RoofKind::Metal);
        CHECK(usualBearings(kind, practice) == BearingKind::Sealed);
    });
    CHECK(usualBearings(RigKind::TravelTrailer, Practice::NorthAmerica) == BearingKind::Adjustable);
}
