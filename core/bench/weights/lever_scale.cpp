// SPDX-License-Identifier: Apache-2.0
// One lever.
#include "bench/weights/lever_scale.hpp"

#include <cmath>

#include "bench/make_estimate.hpp"

namespace snugwalk {
namespace {

constexpr double readingDoubt = 0.02; // common practice, no source
constexpr double lengthDoubt = 0.006; // m, common practice, no source
constexpr double rounding = 1e-9;

} // namespace

Result<Estimate> tongueByLever(const LeverScale &l)
{
    if (l.fifthWheel)
        return Error{Errc::Unsupported, "a pin box is not weighed with a beam", "kind",
                     "weigh it on a platform scale, coupled and alone"};
    SNUG_TRY(within(0.0, l.reading.si(), 300.0,
                    {Errc::OutOfRange, "no small scale shows that", "reading", "give it with its unit"}));
    SNUG_TRY(within(
        0.0, l.tare.si(), 50.0,
        {Errc::OutOfRange, "no beam weighs that", "tare", "give what the scale shows under the bare beam"}));
    SNUG_TRY(within(0.1, l.toTongue.si(), 5.0,
                    {Errc::OutOfRange, "no such beam", "to-tongue", "give 0.1 to 5 m from the pivot"}));
    SNUG_TRY(within(0.1, l.toScale.si(), 5.0,
                    {Errc::OutOfRange, "no such beam", "to-scale", "give 0.1 to 5 m from the pivot"}));
    if (l.toScale < l.toTongue)
        return Error{Errc::InvalidInput, "the scale stands nearer to the pivot than the tongue", "to-scale",
                     "measure both from the fixed pivot; the tongue stands between it and the scale"};
    if (l.reading < l.tare)
        return Error{Errc::InvalidInput, "the scale shows less than the bare beam", "tare",
                     "give what the scale shows with nothing on the beam"};
    const double net = (l.reading - l.tare).si();
    const double tongue = net * (l.toScale / l.toTongue);
    if (!(tongue <= mostByLever.si() + rounding))
        return Error{Errc::OutOfRange, "over 140 kg (about 300 lb), too much for a beam", "reading",
                     "take the tongue down on its jack and weigh on a platform scale"};
    const double spread =
        std::sqrt(readingDoubt * readingDoubt + std::pow(lengthDoubt / l.toTongue.si(), 2.0) +
                  std::pow(lengthDoubt / l.toScale.si(), 2.0));
    return around(tongue, tongue * spread, {"kg", "measured", "CP"});
}

} // namespace snugwalk
