// SPDX-License-Identifier: Apache-2.0
// A document while it is written: blocks one after another, and who looked at what it tells.
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "papers/papers.hpp"
#include "report/report.hpp"

namespace snugwalk::papers {

class Paper {
public:
    Paper(const PaperSource &source, const PaperOptions &options);

    [[nodiscard]] const PaperSource &source() const { return m_source; }
    [[nodiscard]] const PaperOptions &options() const { return m_options; }
    [[nodiscard]] const Texts &texts() const { return m_source.texts; }
    [[nodiscard]] const RigHistory &history() const { return m_source.standing.history; }
    [[nodiscard]] const Rig &rig() const { return history().rig; }
    /// The state's findings, due points and comparison, chosen once.
    [[nodiscard]] const Report &report() const { return m_report; }

    /// The phrase `paper_<slug>`.
    [[nodiscard]] std::string say(std::string_view slug,
                                  const std::vector<std::string> &arguments = {}) const;
    [[nodiscard]] std::string title(std::string_view point) const { return texts().point(point).title; }
    /// "Belly pan, Tread depth".
    [[nodiscard]] std::string titles(const std::vector<std::string> &points) const;
    [[nodiscard]] std::string amount(Dimension dimension, double si) const;

    [[nodiscard]] std::size_t size() const { return m_document.blocks.size(); }
    void add(Block block) { m_document.blocks.push_back(std::move(block)); }
    /// A heading of level 2 from the phrase `paper_<slug>`.
    void heading(std::string_view slug) { add(HeadingBlock{2, say(slug)}); }
    void text(std::string words, TextTone tone = TextTone::Plain);
    /// Only where it has a row; returns whether it had.
    bool table(std::vector<std::string> head, std::vector<std::vector<std::string>> rows,
               std::vector<bool> numeric = {});

    /// Names who looked, for the footer; the empty name is left out.
    void lookedBy(const std::string &name);
    void lookedBy(const WalkRecord &record);
    void lookedBy(const FindingHistory &finding);

    /// The day it was taken, the camera's own words where it has no zone, else when it was added.
    [[nodiscard]] std::string takenWords(const Photo &photo) const;
    /// A photo as it may leave: its place left out or coarsened, its drawing over it.
    [[nodiscard]] PhotoPicture picture(const Photo &photo, const std::string &before = {}) const;

    [[nodiscard]] Document finish(std::string title) &&;

private:
    const PaperSource &m_source;
    const PaperOptions &m_options;
    Report m_report;
    Document m_document;
    std::vector<std::string> m_lookers; ///< in the order they come up
};

/// "2026-11-24 08:10 (UTC+13)"; with minutes only where the zone has some.
[[nodiscard]] std::string timeWithZone(const LocalTime &time);
/// "2026-11-24".
[[nodiscard]] std::string dayOf(const LocalTime &time);

} // namespace snugwalk::papers
