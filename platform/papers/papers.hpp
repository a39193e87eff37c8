// SPDX-License-Identifier: Apache-2.0
// Every kind of report as a document in words, to be drawn by whoever lays out pages. No Qt.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "catalogue/catalogue.hpp"
#include "catalogue/supplies.hpp"
#include "catalogue/texts.hpp"
#include "logbook/chain_heads.hpp"
#include "map/gazetteer.hpp"
#include "report/document.hpp"
#include "report/rough_place.hpp"
#include "round/state.hpp"

namespace snugwalk::papers {

enum class PaperKind {
    Walk,         ///< how the rig stands and the last walk
    ThenAndNow,   ///< two walks compared
    RoadSlip,     ///< what was looked at before the road, with acceptances
    WorkOrder,    ///< what is asked of who mends
    WorkDone,     ///< their answer
    Survey,       ///< for a buyer: history, and hashes that prove it later
    Damage,       ///< for an insurer
    OutAndBack,   ///< handing out and taking back, both signatures twice
    SealsAndDamp, ///< seals looked at and mended, moisture over time
    Weights,      ///< ratings and kept weighings
    Dates,        ///< due bands
    Shopping,     ///< what to get
    LayingUp      ///< before the winter, with the emergency card
};
/// walk, then_and_now, road_slip, work_order, work_done, survey, damage, out_and_back, seals_and_damp,
/// weights, dates, shopping, laying_up.
[[nodiscard]] std::string_view slug(PaperKind kind);
[[nodiscard]] std::optional<PaperKind> parsePaperKind(std::string_view slug);
[[nodiscard]] const std::vector<PaperKind> &allPaperKinds();
/// What people choose it by: "Work order".
[[nodiscard]] std::string paperTitle(PaperKind kind, const Texts &texts);

/// How to get at the rig, as typed; what is empty is a line to fill in by hand.
struct SiteWords {
    std::string access; ///< where it stands, how to get there
    std::string power;  ///< what there is at the place
    std::string key;    ///< and who has it
};

struct PaperOptions {
    UnitSystem units = UnitSystem::Si;
    std::string language = "en"; ///< that of `PaperSource::texts`
    PlaceDetail place = PlaceDetail::LeftOut;
    std::optional<Id> walk;   ///< instead of the last one that suits; the later one of a comparison
    std::optional<Id> other;  ///< the earlier one of a comparison
    std::vector<Id> findings; ///< of work orders, work done and damage; empty: all that suit
    std::string by;           ///< who hands it over, may be empty
    int days = 90;            ///< how far ahead dates and shopping look
    SiteWords site = {};      ///< of a work order
};

/// What a document is composed from. The references must outlive the call alone: a document holds copies.
struct PaperSource {
    const Catalogue &catalogue; ///< the rig's own
    const Texts &texts;         ///< the same, in the document's language
    const SupplyList &supplies;
    const Standing &standing;
    std::vector<Photo> photos;         ///< of the whole rig, as `photosOf`; for survey and damage
    std::vector<ChainHead> chains;     ///< as `chainHeads`; for survey
    const Gazetteer *places = nullptr; ///< to name places by; may be null
};

/// \returns `NotFound` when the logbook holds nothing such a document could tell of (no second walk to
///          compare, a walk or a finding that is not this rig's), saying what to do first.
[[nodiscard]] Result<Document> compose(PaperKind kind, const PaperSource &source,
                                       const PaperOptions &options);

/// Puts each on its line to sign on, counted from 0 in reading order; the others stay empty lines.
void signDocument(Document &document, const std::map<int, Signature> &signatures);
/// Who is to sign, a line each, in that order.
[[nodiscard]] std::vector<std::string> signersOf(const Document &document);

} // namespace snugwalk::papers
