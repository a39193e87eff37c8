// SPDX-License-Identifier: Apache-2.0
// Parts of a place joined in the reader's language.
#include "words/place_words.hpp"

#include "base/text.hpp"

namespace snugwalk {
namespace {

// Spots are told in metres or feet throughout: "0.3 m", never "300 mm", so that numbers compare.
std::string far(Length length, UnitSystem units)
{
    return formatSi(*findUnit(Dimension::Length, units == UnitSystem::Us ? "ft" : "m"), length.si(), 1);
}

} // namespace

std::string placeName(std::string_view named, const Texts &texts)
{
    for (const std::string_view kind : {"wheel", "axle"}) {
        if (named.starts_with(kind) && named.substr(kind.size()).starts_with(' '))
            return replaceAll(texts.word("places", kind), "%1", std::string(named.substr(kind.size() + 1)));
    }
    return std::string(named);
}

std::string placeWords(const Rig &rig, const RigPlace &place, const Texts &texts, UnitSystem units)
{
    std::vector<std::string> words;
    for (const PlacePart &part : placeParts(rig, place)) {
        if (!part.name.empty())
            words.push_back(placeName(part.name, texts));
        else
            words.push_back(replaceAll(texts.word("places", part.key), "%1",
                                       part.length ? far(*part.length, units) : std::string()));
    }
    return join(words, ", ");
}

} // namespace snugwalk
