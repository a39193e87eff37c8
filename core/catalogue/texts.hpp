// SPDX-License-Identifier: Apache-2.0
// The catalogue's words in one language.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"
#include "base/value.hpp"

namespace snugwalk {

struct PointText {
    std::string title;
    std::string look; ///< what to do
    std::string pass; ///< when it passes
};

struct OwnChoices;

/// Looks words up by slug; an unknown slug reads as the slug itself, so that nothing is ever blank.
class Texts {
public:
    /// From the bytes of texts/<language>.json, of texts/<language>/<zone>.json, one a zone, and of
    /// texts/bench/<language>/<subject>.json, one a subject; `Corrupt` when one is not such a file.
    [[nodiscard]] static Result<Texts> load(std::string_view words,
                                            const std::vector<std::string_view> &pointWords,
                                            const std::vector<std::string_view> &benchWords = {});

    /// With the words of the owner's own points, as typed, in every language.
    [[nodiscard]] Texts withOwn(const OwnChoices &choices) const;

    /// The second look of a walk ("…-again") says so in its title.
    [[nodiscard]] PointText point(std::string_view slug) const;
    /// `grade` 1 to 5.
    [[nodiscard]] std::string grade(std::string_view point, int grade) const;
    /// `group` is a member of the file: zones, defects, reasons, events …
    [[nodiscard]] std::string word(std::string_view group, std::string_view slug) const;
    [[nodiscard]] std::string standName(std::string_view slug) const;
    [[nodiscard]] std::string standInstruction(std::string_view slug) const;
    [[nodiscard]] std::string kindName(std::string_view slug) const;
    [[nodiscard]] std::string kindAbout(std::string_view slug) const;
    [[nodiscard]] std::string cautionShort(std::string_view code) const;
    [[nodiscard]] std::string cautionFull(std::string_view code) const;
    /// A sentence part of the group "phrases", with %1, %2 … filled in.
    [[nodiscard]] std::string phrase(std::string_view slug,
                                     const std::vector<std::string> &arguments = {}) const;
    /// Words of the bench: "title" or "about" of a question, or with `group` ("inputs", "figures", "lines")
    /// those of `slug` in it. Warnings, cautions, words to choose from and subjects are words of
    /// bench_warnings and so on.
    [[nodiscard]] std::string benchWord(std::string_view question, std::string_view slug,
                                        std::string_view group = {}) const;
    /// An estimate's sources, parted by semicolons, as people read them; none for facts of the trade alone
    /// ("CP").
    [[nodiscard]] std::string benchSources(std::string_view sources) const;
    /// A top-level text such as report_footer.
    [[nodiscard]] std::string text(std::string_view slug) const;

private:
    [[nodiscard]] std::string at(std::string_view group, std::string_view slug, std::string_view part) const;
    [[nodiscard]] bool knows(std::string_view point) const { return m_root["points"][point].isMap(); }
    Value m_root;
};

} // namespace snugwalk
