// SPDX-License-Identifier: Apache-2.0
// Words for what the core names by slug: places, kinds, states.
#include "voice.hpp"

namespace snugwalk {

QString Voice::placeName(const std::string &named) const
{
    for (const std::string_view kind : {"wheel", "axle"}) {
        if (named.starts_with(kind) && named.size() > kind.size() + 1 && named[kind.size()] == ' ')
            return word("places", kind).arg(text(named.substr(kind.size() + 1)));
    }
    return text(named);
}

QString Voice::face(const Rig &rig, Face face) const { return place(rig, {{}, face, std::nullopt}); }

// Spots are told in metres or feet throughout: "0.3 m", never "300 mm", so that numbers compare.
QString Voice::far(Length length) const
{
    const Unit unit = *findUnit(Dimension::Length, units == UnitSystem::Us ? "ft" : "m");
    return localised(formatSi(unit, length.si(), 1));
}

QString Voice::place(const Rig &rig, const RigPlace &place) const
{
    QStringList parts;
    for (const PlacePart &part : placeParts(rig, place)) {
        const QString words = word("places", part.key);
        parts << (part.key == "named" ? placeName(part.name)
                  : part.length       ? words.arg(far(*part.length))
                                      : words);
    }
    return parts.join(QStringLiteral(", "));
}

QString Voice::basis(std::string_view slug) const
{
    if (slug == "maker")
        return tr("maker's figure");
    if (slug == "measured")
        return tr("measured");
    if (slug == "fitted")
        return tr("fitted to what was measured");
    if (slug == "prior")
        return tr("before anything was measured");
    if (slug == "published")
        return tr("published");
    if (slug == "common_practice")
        return tr("common practice");
    if (slug == "computed")
        return tr("computed");
    return text(slug);
}

QString Voice::rigKind(RigKind kind) const
{
    switch (kind) {
    case RigKind::TravelTrailer:
        return tr("travel trailer");
    case RigKind::FifthWheel:
        return tr("fifth wheel");
    case RigKind::FoldingTrailer:
        return tr("folding trailer");
    case RigKind::Teardrop:
        return tr("teardrop");
    case RigKind::TruckCamper:
        return tr("truck camper");
    case RigKind::Motorhome:
        return tr("motorhome");
    case RigKind::Van:
        return tr("camper van");
    }
    return {};
}

QString Voice::findingStatus(std::string_view slug) const
{
    if (slug == "open")
        return tr("open", "a finding");
    if (slug == "mended")
        return tr("mended, waiting for a look that confirms it");
    if (slug == "confirmed")
        return tr("mended, and seen so");
    return tr("gone, without a mend");
}

QString Voice::mendAction(std::string_view slug) const
{
    if (slug == "replace")
        return tr("replaced");
    if (slug == "reseal")
        return tr("sealed again");
    if (slug == "retorque")
        return tr("tightened to the maker's figure");
    if (slug == "clean")
        return tr("cleaned");
    if (slug == "lubricate")
        return tr("lubricated");
    if (slug == "adjust")
        return tr("adjusted");
    return tr("other work");
}

} // namespace snugwalk
