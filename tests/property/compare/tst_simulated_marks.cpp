// SPDX-License-Identifier: Apache-2.0
// Marks and graded findings of simulated histories: what the comparison tells is what was true, without
// an exception. The confusion tables are printed; the truth is the simulator's own, see simulated_rig.hpp.
#include <doctest/doctest.h>

#include <cstdio>
#include <map>

#include "compare/compare.hpp"
#include "simulated_rig.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

constexpr unsigned seeds = 10;

/// Rows: true; columns: told. The last of either is "not told".
class Confusion {
public:
    void add(const std::optional<Change> &truth, const std::optional<Change> &told)
    {
        ++m_counts[{index(truth), index(told)}];
    }
    [[nodiscard]] long offDiagonal() const
    {
        long off = 0;
        for (const auto &[cell, count] : m_counts)
            off += cell.first != cell.second ? count : 0;
        return off;
    }
    [[nodiscard]] long of(Change change) const { return cell(index(change), index(change)); }
    void print(const char *title) const
    {
        std::printf("%-12s", title);
        for (std::size_t told = 0; told <= allChanges.size(); ++told)
            std::printf(" %11s", name(told).c_str());
        for (std::size_t truth = 0; truth <= allChanges.size(); ++truth) {
            std::printf("\n%-12s", name(truth).c_str());
            for (std::size_t told = 0; told <= allChanges.size(); ++told)
                std::printf(" %11ld", cell(truth, told));
        }
        std::printf("\n");
    }

private:
    static std::size_t index(const std::optional<Change> &change)
    {
        return change ? static_cast<std::size_t>(*change) : allChanges.size();
    }
    static std::string name(std::size_t i)
    {
        return i < allChanges.size() ? std::string(slug(allChanges.at(i))) : "not_told";
    }
    [[nodiscard]] long cell(std::size_t truth, std::size_t told) const
    {
        const auto found = m_counts.find({truth, told});
        return found == m_counts.end() ? 0 : found->second;
    }
    std::map<std::pair<std::size_t, std::size_t>, long> m_counts;
};

void compare(const SimulatedRig &rig, const RigHistory &history, int i, int j, Confusion &points,
             Confusion &findings)
{
    const Comparison c = compareWalks(realCatalogue(), history, rig.walkId(i), rig.walkId(j));
    std::map<std::string, Change> toldPoints;
    std::map<Id, Change> toldFindings;
    for (const PointChange &p : c.points) {
        toldPoints[p.point] = p.change;
        for (const FindingChange &f : p.findings)
            toldFindings[f.finding] = f.change;
    }
    const auto slugs = rig.points();
    for (std::size_t p = 0; p < slugs.size(); ++p) {
        const auto told = toldPoints.find(slugs[p]);
        points.add(rig.pointTruth(p, i, j),
                   told == toldPoints.end() ? std::nullopt : std::optional(told->second));
        for (const Id &id : rig.findings(p)) {
            const auto finding = toldFindings.find(id);
            findings.add(rig.findingTruth(p, id, i, j),
                         finding == toldFindings.end() ? std::nullopt : std::optional(finding->second));
        }
    }
}

} // namespace

TEST_CASE("thirty walks, ten rigs: every mark and every finding is told as it was")
{
    Confusion points;
    Confusion findings;
    for (unsigned seed = 0; seed < seeds; ++seed) {
        const SimulatedRig rig(seed);
        const RigHistory history = rig.history();
        for (int j = 1; j < SimulatedRig::walkCount; ++j) {
            compare(rig, history, j - 1, j, points, findings);
            compare(rig, history, (j * 7 + static_cast<int>(seed)) % j, j, points, findings); // any two
        }
    }
    points.print("points");
    findings.print("findings");
    CHECK(points.offDiagonal() == 0);
    CHECK(findings.offDiagonal() == 0);
    for (const Change change : allChanges) { // every row is reached often enough to mean something
        CAPTURE(slug(change));
        CHECK(points.of(change) > 100);
        if (change != Change::FirstLook && change != Change::NotFitted)
            CHECK(findings.of(change) > 100);
    }
}
