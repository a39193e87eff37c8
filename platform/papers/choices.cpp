// SPDX-License-Identifier: Apache-2.0
// One row a kind: the kinds of walk it tells of, and whether it is about findings.
#include "papers/choices.hpp"

#include <algorithm>
#include <string_view>

namespace snugwalk::papers {
namespace {

enum class About { Nothing, OpenFindings, AllFindings };

struct Row {
    std::vector<std::string_view> walks; ///< slugs of kinds of walk
    bool anyWalk = false;
    About about = About::Nothing;
};

Row rowOf(PaperKind kind)
{
    switch (kind) {
    case PaperKind::Walk:
    case PaperKind::ThenAndNow:
        return {{}, true, About::Nothing};
    case PaperKind::RoadSlip:
        return {{"before_road"}, false, About::Nothing};
    case PaperKind::WorkOrder:
        return {{}, false, About::OpenFindings};
    case PaperKind::WorkDone:
    case PaperKind::Damage:
        return {{}, false, About::AllFindings};
    case PaperKind::OutAndBack:
        return {{"handing_out", "taking_back"}, false, About::Nothing};
    case PaperKind::LayingUp:
        return {{"laying_up"}, false, About::Nothing};
    case PaperKind::Survey:
        return {{"buying", "full_round"}, false, About::Nothing};
    case PaperKind::SealsAndDamp:
    case PaperKind::Weights:
    case PaperKind::Dates:
    case PaperKind::Shopping:
        break;
    }
    return {};
}

std::vector<Id> walksOf(const Row &row, const RigHistory &history)
{
    std::vector<const Walk *> walks;
    for (const WalkRecord &record : history.walks) {
        if (row.anyWalk || std::find(row.walks.begin(), row.walks.end(), record.walk.kind) != row.walks.end())
            walks.push_back(&record.walk);
    }
    std::sort(walks.begin(), walks.end(), [](const Walk *a, const Walk *b) {
        return a->started.instant != b->started.instant ? a->started.instant > b->started.instant
                                                        : a->id < b->id;
    });
    std::vector<Id> ids;
    ids.reserve(walks.size());
    for (const Walk *walk : walks)
        ids.push_back(walk->id);
    return ids;
}

std::vector<Id> findingsOf(About about, const RigHistory &history, const RigState &state)
{
    std::vector<Id> ids;
    for (const OpenFinding &open : state.open) {
        if (about == About::AllFindings || open.status == FindingStatus::Open)
            ids.push_back(open.id);
    }
    if (about != About::AllFindings)
        return ids;
    std::vector<const Finding *> closed;
    for (const FindingHistory &finding : history.findings) {
        if (std::find(ids.begin(), ids.end(), finding.finding.id) == ids.end())
            closed.push_back(&finding.finding);
    }
    std::sort(closed.begin(), closed.end(), [](const Finding *a, const Finding *b) { return b->id < a->id; });
    for (const Finding *finding : closed)
        ids.push_back(finding->id);
    return ids;
}

} // namespace

PaperChoices choicesFor(PaperKind kind, const RigHistory &history, const RigState &state)
{
    const Row row = rowOf(kind);
    PaperChoices choices;
    choices.walks = walksOf(row, history);
    if (kind == PaperKind::ThenAndNow && !choices.walks.empty()) {
        choices.earlier.assign(choices.walks.begin() + 1, choices.walks.end());
        choices.walks.pop_back(); // nothing stands before the first
    }
    if (row.about != About::Nothing)
        choices.findings = findingsOf(row.about, history, state);
    choices.access = kind == PaperKind::WorkOrder;
    return choices;
}

} // namespace snugwalk::papers
