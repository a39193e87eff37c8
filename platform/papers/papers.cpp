// SPDX-License-Identifier: Apache-2.0
// Which kinds there are, and who composes each.
#include "papers/papers.hpp"

#include "papers/decimal_marks.hpp"
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

namespace {

Result<Document> composed(PaperKind kind, Paper paper)
{
    switch (kind) {
    case PaperKind::Walk:
        return walkPaper(std::move(paper));
    case PaperKind::ThenAndNow:
        return thenAndNowPaper(std::move(paper));
    case PaperKind::RoadSlip:
        return roadSlipPaper(std::move(paper));
    case PaperKind::WorkOrder:
        return workOrderPaper(std::move(paper));
    case PaperKind::WorkDone:
        return workDonePaper(std::move(paper));
    case PaperKind::Survey:
        return surveyPaper(std::move(paper));
    case PaperKind::Damage:
        return damagePaper(std::move(paper));
    case PaperKind::OutAndBack:
        return outAndBackPaper(std::move(paper));
    case PaperKind::SealsAndDamp:
        return sealsAndDampPaper(std::move(paper));
    case PaperKind::Weights:
        return weightsPaper(std::move(paper));
    case PaperKind::Dates:
        return datesPaper(std::move(paper));
    case PaperKind::Shopping:
        return shoppingPaper(std::move(paper));
    case PaperKind::LayingUp:
        return layingUpPaper(std::move(paper));
    }
    return walkPaper(std::move(paper));
}

} // namespace

Result<Document> compose(PaperKind kind, const PaperSource &source, const PaperOptions &options)
{
    Result<Document> document = composed(kind, Paper(source, options));
    if (document)
        putDecimalMarks(*document);
    return document;
}

void signDocument(Document &document, const std::map<int, Signature> &signatures)
{
    int line = 0;
    for (Block &block : document.blocks) {
        auto *space = std::get_if<SignatureBlock>(&block);
        if (space == nullptr)
            continue;
        const auto drawn = signatures.find(line++);
        if (drawn != signatures.end() && !drawn->second.lines.empty())
            space->drawn = drawn->second;
    }
}

std::vector<std::string> signersOf(const Document &document)
{
    std::vector<std::string> signers;
    for (const Block &block : document.blocks) {
        if (const auto *space = std::get_if<SignatureBlock>(&block))
            signers.push_back(space->who);
    }
    return signers;
}

} // namespace snugwalk::papers
