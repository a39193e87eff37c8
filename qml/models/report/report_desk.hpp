// SPDX-License-Identifier: Apache-2.0
// What the app asks of whoever writes reports: pages to look at, and files to keep or hand over.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include <QImage>
#include <QString>

#include "report/document.hpp"
#include "report/plot/plot.hpp"
#include "snapshot.hpp"

namespace snugwalk {

struct ReportWish {
    std::string kind;                    ///< slug of `kinds`
    std::string sheet = "a4";            ///< a4 or letter
    std::string place = "left_out";      ///< left_out, coarse or exact
    bool ownData = false;                ///< whether photos keep what the camera wrote into them
    std::string by;                      ///< who hands it over, may be empty
    std::optional<Id> walk;              ///< instead of the last that suits
    std::optional<Id> other;             ///< the earlier one of two
    std::vector<Id> findings;            ///< empty: all that suit
    std::string access;                  ///< where the rig stands and how to get there, as typed
    std::string power;                   ///< there
    std::string key;                     ///< and who has it
    std::map<int, Signature> signatures; ///< by the line to sign on, from 0
};

/// What a kind may be told to be about, each list in the order it is offered.
struct ReportChoices {
    struct One {
        Id id;
        QString name;
    };
    std::vector<One> walks;
    std::vector<One> earlier; ///< of a kind that tells of two walks
    std::vector<One> findings;
    bool access = false; ///< it says how to get at the rig
};

struct ReportKind {
    std::string slug;
    std::string name; ///< in the person's language
};

/// What a report looks like before it is written.
struct ReportLook {
    QString title;
    QString words;             ///< all of it in reading order, for who does not see the pages
    std::vector<QImage> pages; ///< the first ones
    int pageCount = 0;
    std::vector<QString> signers; ///< a line to sign on each
};

class ReportDesk {
public:
    ReportDesk() = default;
    ReportDesk(const ReportDesk &) = delete;
    ReportDesk &operator=(const ReportDesk &) = delete;
    virtual ~ReportDesk() = default;

    /// In the order they are offered; reads nothing.
    [[nodiscard]] virtual std::vector<ReportKind> kinds(const Texts &texts) const = 0;
    /// Endings of the files that can be made: pdf, html, csv, geojson, ics.
    [[nodiscard]] virtual std::vector<std::string> endings() const = 0;

    /// From what is shown alone; reads nothing.
    [[nodiscard]] virtual ReportChoices choices(const Shown &shown, const std::string &kind) const = 0;

    /// On the worker's thread. \param width of a page, pixels
    /// \returns `NotFound` when the logbook holds nothing that such a report could tell of.
    [[nodiscard]] virtual Result<ReportLook> look(Logbook &book, const Shown &shown, const ReportWish &wish,
                                                  int width) const = 0;
    /// The bytes of a file, on the worker's thread. \returns as `look`; `Unsupported` for another ending.
    [[nodiscard]] virtual Result<std::string> bytes(Logbook &book, const Shown &shown, const ReportWish &wish,
                                                    const std::string &ending) const = 0;
    /// A plot as a file of its own: png, svg or csv. On the worker's thread.
    /// \returns `Unsupported` for another ending.
    [[nodiscard]] virtual Result<std::string> plotBytes(const Plot &plot,
                                                        const std::string &ending) const = 0;
};

} // namespace snugwalk
