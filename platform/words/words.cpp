// SPDX-License-Identifier: Apache-2.0
// Lines of text for people.
#include "words/words.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "rig/names.hpp"

namespace snugwalk {
namespace {

template <typename Q>
std::string maybe(const std::optional<Q> &value, UnitSystem units)
{
    return value ? format(*value, units) : "maker's figure: not typed in";
}

} // namespace

std::string rigWords(const Rig &rig, UnitSystem units)
{
    const Measures &m = rig.measures;
    std::string out = rig.name + " (" + rig.id.shortText() + "), " +
                      replaceAll(std::string(slug(rig.kind)), "_", " ") + ", practice " +
                      replaceAll(std::string(slug(rig.practice)), "_", " ") + "\n";
    out += "  body " + format(m.length, units) + " long, " + format(m.width, units) + " wide, " +
           format(m.height, units) + " high; floor " + format(m.floorHeight, units) + " up; drawbar " +
           format(m.hitchLength, units) + "\n  axles at";
    for (const Length axle : m.axles)
        out += " " + format(axle, units);
    out += " from the front\n  gross " + maybe(rig.ratings.gross, units) + "; nose at most " +
           maybe(rig.ratings.nose, units) + "\n  tires " +
           (rig.tires.size.empty() ? "size not typed in" : rig.tires.size) + ", placard " +
           maybe(rig.tires.placard, units) + ", sidewall maximum " + maybe(rig.tires.maxPressure, units) +
           "\n  wheel nuts " + maybe(rig.wheels.torque, units) + "\n  roof " + std::string(slug(rig.roof)) +
           ", carries a person: " + std::string(slug(rig.roofWalk)) + "\n  fitted:";
    for (const std::string &fitting : allFittings(rig))
        out += " " + fitting;
    return out + "\n";
}

std::string stateWords(MarkState state, const Texts &texts)
{
    return texts.phrase("state_" + std::string(slug(state)));
}

std::string changeWords(Change change, const Texts &texts)
{
    return texts.phrase("change_" + std::string(slug(change)));
}

std::string countWords(const Counts &c, const Texts &texts)
{
    const auto n = [](int count) { return std::to_string(count); };
    return texts.phrase("counts", {n(c.points), n(c.pass), n(c.attention), n(c.notFitted), n(c.couldNotLook),
                                   n(c.notLooked)});
}

std::string extentWords(const std::optional<Extent> &extent, UnitSystem units)
{
    return extent ? formatFor(extent->dimension, extent->si, units) : "";
}

std::string readingWords(const Reading &reading, const Texts &texts, UnitSystem units)
{
    return texts.word("readings", reading.slug) + " " + formatFor(reading.dimension, reading.si, units) +
           (reading.place.empty() ? "" : " at " + reading.place);
}

std::string padded(const std::string &text, std::size_t width)
{
    const auto characters = static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
    return text + std::string(characters < width ? width - characters : 0, ' ') + "  ";
}

} // namespace snugwalk
