// SPDX-License-Identifier: Apache-2.0
// Words for what the core names by slug: places, kinds, states.
#include "voice.hpp"

#include <cmath>

#include "rig/names.hpp"

namespace snugwalk {

QString Voice::placeName(const std::string &named) const
{
    if (named.starts_with("wheel "))
        return tr("wheel %1", "axle number and L or R").arg(text(named.substr(6)));
    return text(named);
}

QString Voice::face(const Rig &rig, Face face) const
{
    const bool isKerb = (face == Face::Left) == kerbIsLeft(rig);
    switch (face) {
    case Face::Top:
        return tr("roof");
    case Face::Left:
    case Face::Right:
        return isKerb ? tr("kerb side") : tr("road side");
    case Face::Front:
        return tr("front");
    case Face::Rear:
        return tr("rear");
    case Face::Underside:
        return tr("underside");
    }
    return {};
}

// Spots are told in metres or feet throughout: "0.3 m", never "300 mm", so that numbers compare.
QString Voice::far(Length length) const
{
    const Unit unit = *findUnit(Dimension::Length, units == UnitSystem::Us ? "ft" : "m");
    return localised(formatSi(unit, std::abs(length.si()), 1));
}

QString Voice::along(Length aft) const
{
    const QString far = this->far(aft);
    return aft.si() < 0.0 ? tr("%1 ahead of the front").arg(far) : tr("%1 from the front").arg(far);
}

QString Voice::across(const Rig &rig, Length right) const
{
    if (std::abs(right.si()) < 0.05)
        return tr("on the centre line");
    const QString far = this->far(right);
    const bool isKerb = (right.si() < 0.0) == kerbIsLeft(rig);
    return isKerb ? tr("%1 to the kerb side").arg(far) : tr("%1 to the road side").arg(far);
}

QString Voice::place(const Rig &rig, const RigPlace &place) const
{
    if (!place.named.empty())
        return placeName(place.named);
    if (!place.face)
        return {};
    QStringList parts{face(rig, *place.face)};
    if (place.at) {
        const bool ends = *place.face == Face::Front || *place.face == Face::Rear;
        const bool flat = *place.face == Face::Top || *place.face == Face::Underside;
        if (!ends)
            parts << along(place.at->aft);
        if (ends || flat)
            parts << across(rig, place.at->right);
        if (!flat)
            parts << tr("%1 up").arg(far(place.at->up));
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
