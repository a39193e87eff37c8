// SPDX-License-Identifier: Apache-2.0
// What a finding takes on the command line, for marks and for findings alike.
#pragma once

#include "cli/app.hpp"
#include "cli/session.hpp"

namespace snugwalk::cli {

struct FindingOptions {
    std::string note;
    std::vector<std::string> readings;
    std::string tool;
    std::string same;
    bool isNew = false;
    bool gone = false;
    std::string defect;
    int grade = 0;
    std::string place;
    std::string face, x, y, z;
    std::string extent;
    std::vector<std::string> photos;
};

inline constexpr const char *gradeHelp =
    "1 dulled, 2 hairline, 3 open or loose, 4 through or moving, 5 a hold";

/// --defect, --place, --face, --x, --y, --z: what it is and where; for a new finding.
void addSpotOptions(CLI::App &sub, FindingOptions &options);
/// --extent, --reading, --note, --photo: what is seen of it, each time.
void addLookOptions(CLI::App &sub, FindingOptions &options);

[[nodiscard]] Result<std::vector<TypedReading>> readingsFrom(const FindingOptions &options);
[[nodiscard]] Result<FindingDraft> findingFrom(Logbook &book, const FindingOptions &options);

/// Two attentions on one point are one finding only if the person says so: `Conflict` with the open ones,
/// those within 0.3 m first, unless --same or --new was given.
[[nodiscard]] Status askWhichFinding(Logbook &book, const Rig &rig, const std::string &point,
                                     const FindingOptions &options);

/// Keeps the photos of --photo with the finding of the receipt.
[[nodiscard]] Result<std::vector<Photo>> importAll(Session &session, const std::vector<std::string> &files,
                                                   const Rig &rig, const MarkReceipt &receipt,
                                                   const Doer &doer);

/// Ids, photos and readings outside their limits, as members and as lines.
void tellReceipt(Session &session, const MarkReceipt &receipt, const std::vector<Photo> &photos,
                 Answer &answer);

} // namespace snugwalk::cli
