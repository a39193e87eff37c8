// SPDX-License-Identifier: Apache-2.0
// Tables of slugs, one a choice, in the order of the enum.
#include "rig/names.hpp"

#include <array>

#include "base/contract.hpp"

namespace snugwalk {
namespace {

template <typename Choice>
struct Names;
#define SNUG_NAMES(Choice, ...)                                                                              \
    template <>                                                                                              \
    struct Names<Choice> {                                                                                   \
        static constexpr std::array list = std::to_array<std::string_view>(__VA_ARGS__);                     \
    }
SNUG_NAMES(RigKind, {"travel_trailer", "fifth_wheel", "folding_trailer", "teardrop", "truck_camper",
                     "motorhome", "van"});
SNUG_NAMES(Practice, {"north_america", "europe", "australia_new_zealand", "other"});
SNUG_NAMES(HitchType, {"ball", "friction_ball", "fifth_wheel", "pintle", "none"});
SNUG_NAMES(RoofWalk, {"no", "yes", "unknown"});
SNUG_NAMES(RoofKind, {"membrane", "moulded", "metal", "canvas"});
SNUG_NAMES(BearingKind, {"adjustable", "sealed"});
SNUG_NAMES(Face, {"top", "left", "right", "front", "rear", "underside"});
SNUG_NAMES(OpeningKind, {"door", "window", "hatch", "vent", "rooflight"});
#undef SNUG_NAMES

template <typename Choice>
std::string_view name(Choice v)
{
    const auto index = static_cast<std::size_t>(v);
    SNUG_ASSERT(index < Names<Choice>::list.size());
    return Names<Choice>::list[index];
}

} // namespace

std::string_view slug(RigKind v) { return name(v); }
std::string_view slug(Practice v) { return name(v); }
std::string_view slug(HitchType v) { return name(v); }
std::string_view slug(RoofWalk v) { return name(v); }
std::string_view slug(RoofKind v) { return name(v); }
std::string_view slug(BearingKind v) { return name(v); }
std::string_view slug(Face v) { return name(v); }
std::string_view slug(OpeningKind v) { return name(v); }

template <typename Choice>
std::optional<Choice> parseChoice(std::string_view text)
{
    const auto &list = Names<Choice>::list;
    for (std::size_t i = 0; i < list.size(); ++i) {
        if (list[i] == text)
            return static_cast<Choice>(i);
    }
    return std::nullopt;
}

template <typename Choice>
std::string choiceList()
{
    std::string out;
    for (const std::string_view item : Names<Choice>::list)
        out += (out.empty() ? "" : ", ") + std::string(item);
    return out;
}

#define SNUG_INSTANTIATE(Choice)                                                                             \
    template std::optional<Choice> parseChoice<Choice>(std::string_view);                                    \
    template std::string choiceList<Choice>()
SNUG_INSTANTIATE(RigKind);
SNUG_INSTANTIATE(Practice);
SNUG_INSTANTIATE(HitchType);
SNUG_INSTANTIATE(RoofWalk);
SNUG_INSTANTIATE(RoofKind);
SNUG_INSTANTIATE(BearingKind);
SNUG_INSTANTIATE(Face);
SNUG_INSTANTIATE(OpeningKind);
#undef SNUG_INSTANTIATE

} // namespace snugwalk
