// SPDX-License-Identifier: Apache-2.0
// Which kinds there are, and who composes each.
#include "papers/papers.hpp"

#include "papers/kinds/kinds.hpp"

namespace snugwalk::papers {

std::string_view slug(PaperKind kind)
{
    switch (kind) {
    case PaperKind::Walk:
        return "walk";
    case PaperKind::ThenAndNow:
        return "then_and_now";
    case PaperKind::RoadSlip:
        return "road_slip";
    case PaperKind::WorkOrder:
        return "work_order";
    case PaperKind::WorkDone:
        return "work_done";
    case PaperKind::Survey:
        return "survey";
    case PaperKind::Damage:
        return "damage";
    case PaperKind::OutAndBack:
        return "out_and_back";
    case PaperKind::SealsAndDamp:
        return "seals_and_damp";
    case PaperKind::Weights:
        return "weights";
    case PaperKind::Dates:
        return "dates";
    case PaperKind::Shopping:
        return "shopping";
    case PaperKind::LayingUp:
        return "laying_up";
    }
    return "walk";
}

const std::vector<PaperKind> &allPaperKinds()
{
    static const std::vector<PaperKind> kinds = {
        PaperKind::Walk,         PaperKind::ThenAndNow, PaperKind::RoadSlip, PaperKind::WorkOrder,
        PaperKind::WorkDone,     PaperKind::Survey,     PaperKind::Damage,   PaperKind::OutAndBack,
        PaperKind::SealsAndDamp, PaperKind::Weights,    PaperKind::Dates,    PaperKind::Shopping,
        PaperKind::LayingUp};
    return kinds;
}

std::optional<PaperKind> parsePaperKind(std::string_view text)
{
    for (const PaperKind kind : allPaperKinds()) {
        if (slug(kind) == text)
            return kind;
    }
    return std::nullopt;
}

std::string paperTitle(PaperKind kind, const Texts &texts)
{
    return texts.phrase("paper_title_" + std::string(slug(kind)));
}

Result<Document> compose(PaperKind kind, const PaperSource &source, const PaperOptions &options)
{
    Paper paper(source, options);
    switch (kind) {
    case PaperKind::Walk:
        return walkPaper(std::move(paper));
    default:
        return Error{Errc::Unsupported, "this kind of document is not composed yet", std::string(slug(kind)),
                     "choose another kind"};
    }
}

} // namespace snugwalk::papers
