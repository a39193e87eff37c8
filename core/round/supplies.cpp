// SPDX-License-Identifier: Apache-2.0
// Amounts by rule, summed an item at a time.
#include "round/supplies.hpp"

#include <algorithm>
#include <cmath>

#include "bench/joints/sealant.hpp"
#include "due/ordered.hpp"

namespace snugwalk {
namespace {

constexpr Length lapEachSide = millimetres(25.0); // methods 10: common practice

bool contains(const std::vector<std::string> &list, const std::string &item)
{
    return std::find(list.begin(), list.end(), item) != list.end();
}

// The perimeter of the opening that a place names.
std::optional<Length> perimeterOf(const Rig &rig, const RigPlace &place)
{
    for (const Opening &opening : rig.openings) {
        if (!place.named.empty() && opening.name == place.named && opening.width > Length())
            return (opening.width + opening.height) * 2.0;
    }
    return std::nullopt;
}

struct Joint {
    Length length;
    bool assumed = false;
};

Joint jointOf(const SupplyNeed &need, const Rig &rig, const Finding &finding, const Look &look)
{
    if (look.extent && look.extent->dimension == Dimension::Length && look.extent->si > 0.0)
        return {Length::fromSi(look.extent->si) + lapEachSide * 2.0, false};
    if (need.whole == WholeJoint::RigWidth && rig.measures.width > Length())
        return {rig.measures.width, true};
    if (need.whole == WholeJoint::Opening) {
        if (const auto perimeter = perimeterOf(rig, finding.place))
            return {*perimeter, true};
    }
    return {need.wholeM, true};
}

// Whole pieces: a fifth to spare of two rivets is one more, not two fifths of one.
double pieces(const SupplyItem &item, double si)
{
    return item.dimension == Dimension::Count ? std::ceil(si - 1e-9) : si;
}

SupplyUse joined(const SupplyNeed &need, const Joint &joint)
{
    SupplyUse use;
    use.assumed = joint.assumed;
    const BeadShape shape = parseBeadShape(need.beadShape).value_or(BeadShape::Fillet);
    if (need.rule == SupplyRule::ByLength) {
        use.si = joint.length.si() * (1.0 + need.waste);
    } else if (const auto volume =
                   beadVolume({shape, need.beadWidth, need.beadHeight, joint.length, need.waste})) {
        use.si = volume->value;
    }
    return use;
}

SupplyUse useOf(const SupplyNeed &need, const SupplyItem &item, const Rig &rig, const Finding &finding,
                const Look &look)
{
    SupplyUse use;
    const bool counted = look.extent && look.extent->dimension == Dimension::Count && look.extent->si >= 1.0;
    switch (need.rule) {
    case SupplyRule::ByBead:
    case SupplyRule::ByLength:
        use = joined(need, jointOf(need, rig, finding, look));
        break;
    case SupplyRule::ByCount:
        use.si = need.eachSi * (counted ? look.extent->si : 1.0) * (1.0 + need.waste);
        break;
    case SupplyRule::ByWheel: // a finding is on the wheel it names
        use.si = need.eachSi * (1.0 + need.waste) + need.spareSi;
        break;
    case SupplyRule::Fixed:
        use.si = need.eachSi;
        break;
    }
    use.si = pieces(item, use.si);
    use.finding = finding.id;
    use.point = finding.point;
    return use;
}

// The first need of an item that a finding answers to: the data's order decides.
void addFindings(const SupplyItem &item, const SupplyList &list, const RigHistory &history, LocalTime now,
                 SupplyLine &line)
{
    for (const FindingHistory &f : history.findings) {
        const Look *look = lastLook(f, now.instant);
        if (look == nullptr || statusAt(f, now.instant) != FindingStatus::Open)
            continue;
        for (const SupplyNeed &need : list.needs()) {
            if (need.due || need.item != item.slug || look->grade < need.fromGrade ||
                !contains(need.points, f.finding.point) || !contains(need.defects, f.finding.defect))
                continue;
            line.uses.push_back(useOf(need, item, history.rig, f.finding, *look));
            break;
        }
    }
}

void addDue(const SupplyItem &item, const SupplyList &list, const RigHistory &history,
            const std::vector<DueBand> &bands, CivilDate horizon, SupplyLine &line)
{
    const auto wheels = static_cast<double>(wheelNames(history.rig).size());
    for (const SupplyNeed &need : list.needs()) {
        if (!need.due || need.item != item.slug)
            continue;
        for (const std::string &point : need.points) {
            const DueBand *band = findBand(bands, point);
            const bool due = band != nullptr &&
                             (band->dueNow || band->pastDue || (band->early && *band->early <= horizon));
            if (!due)
                continue;
            const double n = need.rule == SupplyRule::ByWheel ? wheels : 1.0;
            const double si = need.eachSi * n * (1.0 + need.waste) + need.spareSi;
            line.uses.push_back({Id{}, point, pieces(item, si), false});
        }
    }
}

int packsFor(const SupplyItem &item, double needed, double onHand)
{
    const double missing = (needed - onHand) / (item.packSi * item.fill);
    return missing > 0.0 ? static_cast<int>(std::min(1e6, std::ceil(missing - 1e-9))) : 0;
}

double usedSince(const SupplyList &list, const SupplyItem &item, const RigHistory &history, Instant counted,
                 Instant now)
{
    double used = 0.0;
    for (const Mend &mend : history.mends) {
        if (mend.at.instant <= counted || mend.at.instant > now)
            continue;
        for (const MendPart &part : mend.parts) {
            const SupplyItem *meant = list.named(part.name);
            if (meant != nullptr && meant->slug == item.slug)
                used += amountOf(item, part.quantity, part.unit).value_or(0.0);
        }
    }
    return used;
}

} // namespace

std::vector<OnHand> onHandOf(const SupplyList &list, const RigHistory &history, LocalTime now)
{
    std::vector<OnHand> out;
    for (const SupplyItem &item : list.items()) {
        const Stock *last = nullptr;
        for (const Stock &stock : history.stocks) {
            const bool later = last == nullptr ||
                               std::pair(last->at.instant, last->id) < std::pair(stock.at.instant, stock.id);
            if (stock.item == item.slug && stock.at.instant <= now.instant && later)
                last = &stock;
        }
        if (last == nullptr)
            continue;
        const double used = usedSince(list, item, history, last->at.instant, now.instant);
        out.push_back({item.slug, std::max(0.0, last->si - used), last->at});
    }
    return out;
}

std::vector<SupplyLine> suppliesFor(const SupplyList &list, const RigHistory &history,
                                    const std::vector<DueBand> &bands, LocalTime now, int days)
{
    const std::vector<OnHand> onHand = onHandOf(list, history, now);
    const CivilDate horizon = addDays(civilDate(now), days);
    std::vector<SupplyLine> lines;
    for (const SupplyItem &item : list.items()) {
        SupplyLine line{item.slug, item.dimension, 0.0, 0.0, item.packSi, 0, {}};
        addFindings(item, list, history, now, line);
        addDue(item, list, history, bands, horizon, line);
        if (line.uses.empty())
            continue;
        std::sort(line.uses.begin(), line.uses.end(), [](const SupplyUse &a, const SupplyUse &b) {
            return std::tie(a.point, a.finding) < std::tie(b.point, b.finding);
        });
        for (const SupplyUse &use : line.uses)
            line.neededSi += use.si;
        for (const OnHand &have : onHand)
            line.onHandSi += have.item == item.slug ? have.si : 0.0;
        line.packs = packsFor(item, line.neededSi, line.onHandSi);
        lines.push_back(std::move(line));
    }
    return lines;
}

} // namespace snugwalk
