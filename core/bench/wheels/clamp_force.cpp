// SPDX-License-Identifier: Apache-2.0
// Torque, friction and what is left as clamp.
#include "bench/wheels/clamp_force.hpp"

#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr double scatter = 0.30;
constexpr double poundFoot = 0.45359237 * 9.80665 * 0.3048;
constexpr double lubricatedUnder = 0.19; // table 8-15 has lubricated threads at 0.18

} // namespace

Result<Estimate> clampForce(const Stud &stud, Torque torque, double friction)
{
    if (!(torque.si() >= 40.0 * poundFoot * (1.0 - 1e-12) &&
          torque.si() <= 550.0 * poundFoot * (1.0 + 1e-12)))
        return Error{Errc::OutOfRange, "no wheel nut of a rig gets that torque", "torque",
                     "give the maker's figure with its unit, 40 to 550 lb·ft (54 to 746 N·m)"};
    if (!(friction >= 0.05 && friction <= 0.35))
        return Error{Errc::OutOfRange, "no threads have that friction", "friction",
                     "give the nut factor: 0.20 dry, 0.18 oiled, 0.12 anti-seize"};
    Estimate e;
    e.value = torque.si() / (friction * stud.diameter.si());
    e.low = e.value * (1.0 - scatter);
    e.high = e.value * (1.0 + scatter);
    e.unit = "N";
    e.basis = "computed";
    e.source = "SHIGLEY";
    if (friction < lubricatedUnder)
        e.warnings.emplace_back("lubricated_studs");
    return e;
}

Torque torqueFor(const Stud &stud, Force force, double friction)
{
    return friction * snugwalk::torque(force, stud.diameter);
}

Estimate shareOfProof(const Stud &stud, const Estimate &force, Pressure proof)
{
    Estimate e = force;
    e.unit = "1";
    const double strength = stressArea(stud).si() * proof.si();
    for (double *part : {&e.value, &e.low, &e.high})
        *part /= strength;
    e.warnings.clear();
    if (e.value > 0.9) // common practice, no source
        e.warnings.emplace_back("near_proof");
    return e;
}

} // namespace snugwalk
