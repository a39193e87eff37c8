// SPDX-License-Identifier: Apache-2.0
// A rig with a history that every kind of document has something to tell of.
#pragma once

#include "papers/papers.hpp"
#include "support/actions.hpp"

namespace snugwalk::test {

/// Two walks before the road by W. Tester and P. Second, at one place on earth: on the first an open finding
/// on a gas point with two photos, a finding mended and confirmed, a point not reached and moved on one's own
/// decision; a full round with moisture, torque and a weighing; a hidden point of the road; a trip.
class PaperBook {
public:
    PaperBook();

    [[nodiscard]] papers::PaperSource source(const std::string &language = "en") const;
    [[nodiscard]] Document compose(papers::PaperKind kind, const papers::PaperOptions &options = {},
                                   const std::string &language = "en") const;

    Walker walker;
    std::string gasPoint;    ///< carries caution c
    std::string missedPoint; ///< on the hold list, not reached
    std::string hiddenPoint; ///< of the road
    Id gasFinding;
    Id mendedFinding;
    Standing standing;
    Catalogue catalogue;
    SupplyList supplies;
    std::vector<Photo> photos;
    std::vector<ChainHead> chains;

private:
    void firstWalk();
    void roundInBetween();
    void lastWalk();
    void takeStanding();
    Id photoOf(const Id &finding, const Id &look, char digit);
};

/// All its words, as plain text without line breaks.
[[nodiscard]] std::string wordsOf(const Document &document, const Texts &texts);

} // namespace snugwalk::test
